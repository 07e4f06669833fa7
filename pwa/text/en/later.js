// Putting a task off, or skipping it with a reason.

export const laterText = {
  title: 'Later, or not this time',
  when: 'Remind the round',
  hour: 'In an hour',
  evening: 'This evening',
  tomorrow: 'Tomorrow',
  skip: 'Or skip it this time, because',
  was_skipped: (/** @type {string} */ need, /** @type {string} */ why) => `${need}: Skipped this time (${why})`,
  was_put_off: (/** @type {string} */ need) => `${need}: Put off`,
  why: /** @type {Array<[string, string]>} */ ([
    ['still food', 'There is still food'],
    ['leave quiet', 'Leave them quiet'],
    ['nothing in the house', 'Nothing in the house'],
    ['other', 'Another reason'],
  ]),
  own: 'Your reason',
  go: 'Skip it',
  cannot_wait: 'This can wait over night at most: somebody has to look.',
};
