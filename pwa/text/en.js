// The app's own words in English, by screen. Reasons, cautions and names of foods come from the catalogue's word table.

/** @param {number} n @param {string} one @param {string} [many] */
const count = (n, one, many = `${one}s`) => `${n} ${n === 1 ? one : many}`;
/** How long something is, in the largest unit that fits it. @param {number} min */
const span = (min) => {
  if (min < 120) return count(Math.round(min), 'minute');
  return min < 2880 ? count(Math.round(min / 60), 'hour') : count(Math.round(min / 1440), 'day');
};

export const t = {
  name: 'Broodshelf',
  close: 'Close',
  saved: 'Saved on this phone',
  taken_back: 'Taken back',
  loading: 'One moment…',
  missing: 'This part of the app could not be loaded. Reload it; nothing that you logged is lost.',
  nav: { round: 'Round', shelf: 'Shelf', larder: 'Larder', handover: 'Hand over', settings: 'House' },
  screens: 'Screens',
  state: { synced: 'Synced', saved: 'Saved on this phone', attention: 'Needs attention' },
  due: {
    never: 'not due',
    now: 'due now',
    since: (/** @type {number} */ d) => `due for ${count(d, 'day')}`,
    hours: (/** @type {number} */ h) => `due in ${count(h, 'hour')}`,
    days: (/** @type {number} */ d) => `due in ${count(d, 'day')}`,
  },
  saving: {
    waiting: (/** @type {number} */ n) => `${n} saved on this phone`,
    attention: (/** @type {number} */ n) => `${n} ${n === 1 ? 'needs' : 'need'} attention`,
    synced: 'All synced',
    joining: 'Fetching your shelf',
    offline: 'No connection',
    syncing: 'Syncing…',
    many: (/** @type {number} */ n) => `${n} saved on this phone`,
    told: /** @type {Record<string, (ms?: number) => string>} */ ({
      database_damaged: () =>
        "The server's daily look found its database damaged. Tell whoever runs the server: a backup must be put back.",
      backup_old: (ms) =>
        `The server's last backup is of ${new Date(ms ?? 0).toLocaleDateString()}. ` +
        'Tell whoever runs the server, or say in House how old it may be.',
    }),
    problem: /** @type {Record<string, string>} */ ({
      disk_full: "The server's disk is full. What you log stays on this phone; tell whoever runs the server.",
      database_locked: 'The server is held up. What you log stays on this phone and is sent later.',
      database_away: 'The server cannot reach its data. What you log stays on this phone and is sent later.',
      database_read_only: 'The server cannot write. What you log stays on this phone; tell whoever runs the server.',
      database_damaged:
        'The server has lost a part of its data. What you log stays on this phone; tell whoever runs the server.',
    }),
  },
  banner: {
    unsent: 'Unsent logs',
    update: 'A new version is ready.',
    use_it: 'Use it now',
    emptied:
      'The browser had emptied its storage on this phone, so the shelf was fetched from the server again. What was ' +
      'logged here and not sent before is lost: please look through the diary, and log again what is missing.',
    understood: 'I have read it',
    signed_out: 'This phone is signed out. What it has not sent stays here.',
    clock: (/** @type {number} */ min) =>
      `This phone's clock is ${span(Math.abs(min))} ${min > 0 ? 'ahead' : 'behind'}. What is due, and when you log ` +
      `something, goes by the server's.`,
    ended: /** @type {Record<string, string>} */ ({
      pass_revoked: 'The keeper has taken this pass back. What this phone has not sent stays here for export.',
      pass_ended: 'This pass has ended. Thank you. What this phone has not sent stays here for export.',
      device_revoked: 'A keeper has signed this phone out. What it has not sent stays here for export.',
    }),
  },
  round: {
    title: 'The round',
    now: 'Now',
    today: 'Later today',
    next: 'Next days',
    done: 'Done',
    quiet: 'Nothing is due now.',
    next_at: (/** @type {string} */ day) => `Nothing until ${day}.`,
    calm: 'Every tube is full enough. Leave them their quiet.',
    as_suggested: 'Done as suggested',
    done_short: 'Done',
    offered: 'New nest offered',
    not_moved: 'Not moved yet',
    moved: 'They have moved',
    other: 'Other',
    count: 'Count',
    change: 'Change the colony',
    later: 'Later',
    resolved: 'It is mended',
    urgent: 'urgent',
    why: 'Why',
    all: (/** @type {number} */ n) => (n === 1 ? 'Done as suggested' : `All ${n} done as suggested`),
    by: (/** @type {string} */ who) => `by ${who}`,
    undo: 'Undo',
    empty_shelf: 'The shelf is empty. Add the first colony.',
    joining: 'Your shelf is on its way to this phone.',
    joined: (/** @type {number} */ n) => (n ? `${count(n, 'entry', 'entries')} so far` : 'The first entries come now.'),
    progress: (/** @type {number} */ part, /** @type {number} */ whole) => `${part} of ${whole} done`,
    finished: 'The round is done.',
    many: 'Several at once',
    add: 'Add a colony',
  },
  many: {
    title: 'Several at once',
    what: 'What they got',
    who: 'Which colonies',
    none: 'Choose at least one colony.',
    water: 'Filled up',
    look: 'Looked in, all calm',
    go: (/** @type {number} */ n) => `Log it for ${count(n, 'colony', 'colonies')}`,
  },
  later: {
    title: 'Later, or not this time',
    when: 'Remind the round',
    hour: 'In an hour',
    evening: 'This evening',
    tomorrow: 'Tomorrow',
    skip: 'Or skip it this time, because',
    skipped: 'Skipped this time',
    put_off: 'Put off',
    why: /** @type {Array<[string, string]>} */ ([
      ['still food', 'There is still food'],
      ['leave quiet', 'Leave them quiet'],
      ['nothing in the house', 'Nothing in the house'],
      ['other', 'Another reason'],
    ]),
    own: 'Your reason',
    go: 'Skip it',
    cannot_wait: 'This can wait over night at most: somebody has to look.',
  },
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
  event: {
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
  },
  outcomes: { all: 'All taken', some: 'Some taken', ignored: 'Ignored' },
  readings: { full: 'Full', three_quarters: '¾', half: '½', quarter: '¼', empty: 'Empty' },
  tints: { blue: 'Blue', green: 'Green', yellow: 'Yellow', red: 'Red' },
  colour_seen: { gasters: 'In gasters: workers drank', brood: 'In brood: it was passed on' },
  coarse: { none: 'None', few: 'Few', some: 'Some', many: 'Many' },
  stages: { founding: 'Founding queen', nanitics: 'Nanitics', growing: 'Growing', mature: 'Mature' },
  conditions: {
    well: 'Well',
    settling: 'Settling',
    resting: 'Resting',
    queenless_suspected: 'Queen in doubt',
    quarantine: 'Quarantine',
    given_away: 'Given away',
    dead: 'Dead',
  },
  units: /** @type {Record<string, (n: number) => string>} */ ({
    drop: (n) => (n === 1 ? 'drop' : 'drops'),
    ml: () => 'mL',
    piece: (n) => (n === 1 ? 'piece' : 'pieces'),
    leg: (n) => (n === 1 ? 'leg' : 'legs'),
    slice: (n) => (n === 1 ? 'slice' : 'slices'),
    mg: () => 'mg',
    seed: (n) => (n === 1 ? 'seed' : 'seeds'),
    leaf: (n) => (n === 1 ? 'leaf' : 'leaves'),
  }),
};

export { count };
