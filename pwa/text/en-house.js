// The words of the house: hours, phones, what this phone has stored.

export const h = {
  title: 'The house', look: 'Look', good_to_know: 'Good to know', build: 'Build',
  advice: 'Broodshelf gives general husbandry advice, not veterinary or medical advice.',
  never: 'Never release ants or feeder insects. Keeping and moving species is a matter of local law: ask the authority.',
  hours: 'Names and hours', shelf_name: 'Name of the shelf', zone: 'Time zone', first: 'First care hour', second: 'Second care hour', quiet_from: 'Quiet from', quiet_to: 'Quiet to', save: 'Save',
  phones: 'Phones', this_one: '(this one)', last_seen: 'last seen', sign_out: 'Sign out', sign_out_other: (/** @type {string} */ name) => `Sign out ${name}?`,
  new_phone: 'Let a new phone in', new_phone_hint: 'type the code that it shows', look_up: 'Look', asks: 'asks to join. Whose is it?', somebody_new: 'Somebody new', new_keeper: 'Name of the new keeper', let_in: 'The phone is let in',
  on_this_phone: 'On this phone', this_phone: 'this phone', last_synced: (/** @type {string} */ when) => `Last synced ${when}.`, not_synced: 'Not synced yet.', not_sent: (/** @type {number} */ n) => `${n} not sent.`, nothing_waits: 'Nothing waits.',
  kept: 'The browser has promised to keep the data.', not_kept: 'The browser may clear data of apps that are not used; the server copy is the safety. Installing the app on the home screen helps.',
  sync_now: 'Sync now', export: 'Export unsent logs', leave: (/** @type {string} */ who) => `Sign ${who} out?`, leave_unsent: (/** @type {number} */ n) => `${n} logs are not sent yet and stay on this phone. Sign out all the same?`,
};
