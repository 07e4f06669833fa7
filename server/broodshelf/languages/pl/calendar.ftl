calendar-summary = { $needs }: { $colony }
calendar-summary-many = { $n ->
    [one] { $needs }: { $n } kolonia
    [few] { $needs }: { $n } kolonie
    [many] { $needs }: { $n } kolonii
   *[other] { $needs }: { $n } kolonii
  }
calendar-now = Teraz: { $what }
calendar-line = { $colony }: { $needs }
