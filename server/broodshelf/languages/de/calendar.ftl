### Der Kalender: ein Eintrag je Runde, in einem kleinen Kästchen einer Woche.

calendar-summary = { $needs } für { $colony }
calendar-summary-many = { $needs } für { $n } Kolonien
calendar-now = Jetzt: { $what }
calendar-line = { $colony }: { $needs }
