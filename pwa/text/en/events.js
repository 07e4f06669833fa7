// What a log of the diary says.

export const eventText = {
  kinds: {
    feeding: 'Feeding',
    check: 'Check',
    water: 'Water',
    fault: 'Something is wrong',
    count: 'Count',
    move: 'Nest move',
    boost: 'Brood added',
    note: 'Note',
    climate: 'Climate',
    photo: 'Photo',
    later: 'Put off',
  },
  boost: (/** @type {number | null} */ n, /** @type {string} */ brood) =>
    `Brood added: ${n === null ? '' : `${n} `}${brood}`,
  colony: 'A colony',
  repeat: ' (possible repeat, not counted)',
  leftovers: 'Leftovers taken out',
  mended: ' (mended)',
  read: (/** @type {string} */ level) => `Water read: ${level}`,
  feeder: (/** @type {string} */ level) => `Feeder: ${level}`,
  colour: (/** @type {string} */ where) => `Colour looked for: ${where}`,
  colour_nowhere: 'nowhere',
  water: { refill: 'Water filled up', new_tube: 'New tube offered', hydrate: 'Nest watered' },
  counted: (/** @type {string | number | null} */ n) => (n === null ? 'Counted: brood' : `Counted: ${n} workers`),
  larvae: (/** @type {string} */ n) => `, larvae: ${n.toLowerCase()}`,
  outcomes: { all: 'All taken', some: 'Some taken', ignored: 'Ignored' },
  readings: { full: 'Full', three_quarters: '¾', half: '½', quarter: '¼', empty: 'Empty' },
  colour_seen: { gasters: 'In gasters: workers drank', brood: 'In brood: it was passed on' },
  coarse: { none: 'None', few: 'Few', some: 'Some', many: 'Many' },
};
