calendar-summary = { $needs } pour { $colony }
calendar-summary-many = { $n ->
    [one] { $needs } pour { $n } colonie
   *[other] { $needs } pour { $n } colonies
  }
calendar-now = Maintenant : { $what }
calendar-line = { $colony } : { $needs }
