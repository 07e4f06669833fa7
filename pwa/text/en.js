// The app's own words in English. Reasons, cautions and names of foods come from the catalogue's word table.

/** @param {number} n @param {string} one @param {string} [many] */
const count = (n, one, many = `${one}s`) => `${n} ${n === 1 ? one : many}`;

export const t = {
  name: 'Broodshelf',
  nav: { round: 'Round', shelf: 'Shelf', larder: 'Larder', handover: 'Hand over', settings: 'House' },
  state: { synced: 'Synced', saved: 'Saved on this phone', attention: 'Needs attention' },
  due: {
    never: 'not due', now: 'due now',
    since: (/** @type {number} */ d) => `due for ${count(d, 'day')}`,
    hours: (/** @type {number} */ h) => `due in ${count(h, 'hour')}`,
    days: (/** @type {number} */ d) => `due in ${count(d, 'day')}`,
  },
  saving: {
    waiting: (/** @type {number} */ n) => `${n} saved on this phone`,
    attention: (/** @type {number} */ n) => `${n} ${n === 1 ? 'needs' : 'need'} attention`,
    synced: 'All synced', offline: 'No connection', syncing: 'Syncing…',
  },
  round: {
    title: 'The round', now: 'Now', today: 'Later today', next: 'Next days', done: 'Done',
    quiet: 'Nothing is due now.', next_at: (/** @type {string} */ day) => `Nothing until ${day}.`,
    as_suggested: 'Done as suggested', other: 'Other', later: 'In an hour', resolved: 'It is mended',
    all: (/** @type {number} */ n) => (n === 1 ? 'Done as suggested' : `All ${n} done as suggested`),
    by: (/** @type {string} */ who) => `by ${who}`, undo: 'Undo', empty_shelf: 'The shelf is empty. Add the first colony.',
  },
  kinds: {
    feeding: 'Feeding', check: 'Check', water: 'Water', fault: 'Something is wrong', count: 'Count', move: 'Nest move',
    note: 'Note', climate: 'Climate', photo: 'Photo', later: 'Put off',
  },
  outcomes: { all: 'All taken', some: 'Some taken', ignored: 'Ignored' },
  readings: { full: 'Full', three_quarters: '¾', half: '½', quarter: '¼', empty: 'Empty' },
  guilds: { omnivore: 'Sugar and insects', predator: 'Mostly insects', harvester: 'Seeds', honeypot: 'Stores sugar in repletes', fungus_grower: 'Leaves for its fungus' },
  foundings: { claustral: 'Alone, without food', semi_claustral: 'Goes out for food', parasitic: 'With host workers' },
  coarse: { none: 'None', few: 'Few', some: 'Some', many: 'Many' },
  stages: { founding: 'Founding queen', nanitics: 'Nanitics', growing: 'Growing', mature: 'Mature' },
  fields: {
    name: 'Name', stage: 'Stage', condition: 'Condition', number: 'Number', species_code: 'Species', queens: 'Queens', gone: 'Deleted',
    worker_length_mm: 'Worker length in mm', guild: 'What it eats', founding_mode: 'How its queen founds', stings: 'Stings', vessel_id: 'Vessel', amount: 'Amount', text: 'Text', zone: 'Time zone', care_hours: 'Care hours',
  },
  conditions: {
    well: 'Well', settling: 'Settling', resting: 'In winter rest', queenless_suspected: 'Queen in doubt',
    quarantine: 'Quarantine', given_away: 'Given away', dead: 'Dead',
  },
  photos: {
    title: 'Pictures', take: 'Take a picture', busy: 'One moment…', remove: 'Take this picture out',
    unreadable: 'This picture could not be read. Try another, or take it again.',
    of: (/** @type {string} */ name, /** @type {string} */ day) => `${name} on ${day}`,
  },
};
