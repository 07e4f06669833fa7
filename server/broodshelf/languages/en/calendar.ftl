### The calendar feed: one event a round. The text is shown by other programs, in a small box of a week.

# $needs: a list of the messages `need-…` (the first as it stands alone, the others `.inside`). $colony: a name.
calendar-summary = { $needs } for { $colony }
# $n (number): 2 or more.
calendar-summary-many = { $needs } for { $n } colonies
# Where something is urgent. $what: one of the two above.
calendar-now = Now: { $what }
# One line for each colony.
calendar-line = { $colony }: { $needs }
