## The rounds in a calendar.

calendar-address-title = Show the rounds in a calendar
calendar-address-about = Calendars look every 1 to 24 hours, and many leave our alarms out: set an alert of your own there. Whoever has the address can read the rounds. It ends after a year; a new one ends the old.
calendar-address-once = Add this address as a calendar subscription. It is shown once.
calendar-address-copy = Copy the address
calendar-address-copied = Copied.
calendar-address-make = Make the address
calendar-address-anew = Make a new address
calendar-address-end = End the address
calendar-address-ended = The calendar address has ended.
