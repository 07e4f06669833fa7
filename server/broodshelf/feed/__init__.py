"""The iCalendar feed of a household or a pass."""
