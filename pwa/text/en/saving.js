// Where a log stands: on this phone, on the server, in need of a person; and why the server cannot take it.

export const savingText = {
  saved: 'Saved on this phone',
  taken_back: 'Taken back',
  state: { synced: 'Synced', saved: 'Saved on this phone', attention: 'Needs attention' },
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
};
