// The rounds in a calendar.

export const calendarText = {
  title: 'Show the rounds in a calendar',
  about:
    'Calendars look every 1 to 24 hours, and many leave our alarms out: set an alert of your own there. Whoever ' +
    'has the address can read the rounds. It ends after a year; a new one ends the old.',
  once: 'Add this address as a calendar subscription. It is shown once.',
  copy: 'Copy the address',
  copied: 'Copied.',
  make: 'Make the address',
  anew: 'Make a new address',
  end: 'End the address',
  ended: 'The calendar address has ended.',
};
