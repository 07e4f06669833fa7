### El calendario: un evento por ronda, en una casilla pequeña de la semana.

calendar-summary = { $needs } para { $colony }
calendar-summary-many = { $needs } para { $n } colonias
calendar-now = Ahora: { $what }
calendar-line = { $colony }: { $needs }
