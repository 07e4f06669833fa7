// What is printed: the sheet of a pass, the record of a colony.

export const paperText = {
  sheet: (/** @type {string} */ who) => `Looking after the shelf: ${who}`,
  record: (/** @type {string} */ name) => `Record of ${name}`,
  print: 'Print',
  colony: 'Colony',
  what: 'What to do',
  done: 'Done',
  nothing: 'Nothing to do.',
  over: 'The last day of this pass is over.',
  ahead:
    'The days were reckoned today. What you do or log until the pass begins moves them: print the sheet again on ' +
    'the evening before.',
  colonies: 'The colonies',
  call: 'Call',
  made: (/** @type {string} */ day) => `Printed ${day}`,
  gone: 'There is nothing to print here.',
  species: 'Species',
  lives: 'Lives in',
  count: 'Last count',
  when: 'When',
  event: 'What',
  by: 'By',
};
