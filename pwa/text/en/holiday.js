// Before the keeper goes away.

export const holidayText = {
  title: 'Before you go away',
  about: 'Two dates tell which colonies need nobody, and what to top up on the last day.',
  leave: 'You leave',
  back: 'You are back',
  go: 'Look ahead',
  none: 'No colony has a plan yet.',
  verdict: { nobody: 'Needs nobody.', nobody_after_top_up: 'Needs nobody after a top-up.' },
  visit: (/** @type {number} */ d) => (d === 1 ? 'Needs a visit every day.' : `Needs a visit every ${d} days.`),
  top_up: 'On your last day:',
  full: 'fill it up',
  travel: 'If a colony travels with you',
  pass: 'Make a pass for the visits',
};
