// A colony: its screen, its stages and conditions.

export const colonyText = {
  gone: 'Not here',
  gone_why: 'This colony is not on this phone. It may have been deleted, or this phone has not synced yet.',
  change: 'Change',
  new: 'A new colony',
  log: 'Log',
  plan: 'The plan',
  diary: 'Diary',
  charts: 'Over the months',
  paper: 'Print its record',
  past: 'Its history',
  no_plan: 'The plan comes with the next connection to the server. Logging works at once.',
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
};
