// The words of the screens that are fetched when they are first shown.
import { count } from './en.js';

export const m = {
  shelf: {
    title: 'The shelf', search: 'Find a colony', none: 'No colony has this in its name or species.', labels: 'Tube labels', scan: 'Scan a label', species_unknown: 'Species not given', no_plan: 'The plan comes with the next connection.',
  },
  colony: {
    gone: 'Not here', gone_why: 'This colony is not on this phone. It may have been deleted, or this phone has not synced yet.', change: 'Change', new: 'A new colony',
    log: 'Log', plan: 'The plan', diary: 'Diary', charts: 'Over the months', paper: 'Print its record', past: 'Its history', no_plan: 'The plan comes with the next connection to the server. Logging works at once.',
  },
  plan: {
    own: 'Your own interval', set: 'Set your own interval', every: (/** @type {number} */ d) => `You set this to every ${count(d, 'day')}.`, keep: 'Keep this interval', clear: 'Let the plan decide',
    days: (/** @type {number} */ d) => (d === 1 ? 'day' : 'days'), spread: (/** @type {number} */ low, /** @type {number} */ high) => `Likely due in ${low} to ${count(high, 'day')}.`, kept: 'Your interval is set', cleared: 'The plan decides again',
  },
  rhythm: {
    open: 'Days, hour or a pause', title: 'days and hour', days: 'On these days', hour: 'At this hour', until: 'Pause until', daily: 'Every day', at: (/** @type {string} */ hour) => `at ${hour}`, paused: (/** @type {string} */ day) => `Paused until ${day}.`,
    urgent: 'Without a choice the plan decides. What is urgent, like a leak, is told all the same.',
  },
  fields: /** @type {Record<string, string>} */ ({
    resting_since: 'Resting since', condition_until: 'Until', came_from: 'Came from', went_to: 'Went to', died_of: 'Died of', host_species_code: 'Host',
    name: 'Name', stage: 'Stage', condition: 'Condition', number: 'Number', species_code: 'Species', species_name: 'Species', queens: 'Queens', gone: 'Deleted',
    worker_length_mm: 'Worker length in mm', guild: 'What it eats', founding_mode: 'How its queen founds', stings: 'Stings', vessel_id: 'Vessel', place_id: 'Place', interval_days: 'Your own intervals',
    amount: 'Amount', unit: 'Unit', text: 'Text', zone: 'Time zone', care_hours: 'Care hours', remark: 'Remark', happened_at: 'When', need: 'What for', food_code: 'Food', lot_id: 'Lot', origin: 'Where it comes from',
    size_class: 'Size', feeding_id: 'Feeding', outcome: 'What became of it', leftovers_removed: 'Leftovers taken out', level: 'Feeder level', colour_seen: 'Where the colour shows', tint: 'Food colour', action: 'What was done', reading: 'Level', level_mm: 'Level in mm', workers: 'Workers',
    workers_coarse: 'Workers, roughly', fault: 'What is wrong', resolved_at: 'Mended', colony_ids: 'Colonies', food_codes: 'Foods', started_on: 'First day', ended_on: 'Ended', use_by: 'Use by', got_on: 'Since', tasting_id: 'Tasting', despite: 'Logged despite',
    until: 'Put off until', why: 'Reason', day_temp_c: 'By day', night_temp_c: 'At night', temperature_c: 'Temperature', humidity_pct: 'Humidity, %', place_type: 'What it is', vessel_code: 'Vessel', has_outworld: 'Outworld', founded_on: 'Founded', acquired_on: 'With you since', finished_on: 'Used up', starts_on: 'First day', ends_on: 'Last day',
  }),
  registers: /** @type {Record<string, string>} */ ({ household: 'The house', person: 'Person', colony: 'Colony', vessel: 'Vessel', place: 'Place', lot: 'Food in the larder', rule: 'Own rhythm', tasting: 'Tasting', pass: 'Pass' }),
  values: { empty: 'empty', yes: 'yes', no: 'no', elsewhere: 'not on this phone', every: (/** @type {string} */ need, /** @type {number} */ d) => `${need} every ${count(d, 'day')}`, read: 'Read' },
  attention: {
    title: 'For your attention', none: 'Everything on this phone has been sent.', export: 'Export all of these', met: (/** @type {string} */ name) => `${name}: changed on two phones`,
    here: (/** @type {string} */ value) => `here “${value}”`, there: (/** @type {string} */ who, /** @type {string} */ value) => `${who} “${value}”`, other_phone: 'another phone',
    theirs: 'The other one was later and stands.', mine: 'Yours was later and stands.', leave: 'Leave it so', bring: 'Bring mine back',
    damaged: 'Damaged entry', drop: 'Drop it', sure: 'Drop this for good? Export it first if you are not sure.', mend: 'Send it again', again: 'Send again',
    again_why: 'If what it belongs to was taken back meanwhile, it can be sent again.',
    codes: /** @type {Record<string, string>} */ ({
      not_allowed: 'This phone may not do this.', outside_pass: 'This lies outside the pass: another colony, or another day.',
      missing_field: 'Something is missing.', unknown_field: 'The server does not know this field.', unknown_kind: 'The server does not know this kind of log.',
      kind_differs: 'The server has something else under this id.', too_large: 'This is too long.',
      purged: 'This was deleted long ago and is not kept any more.', parent_missing: 'What this belongs to is not on the server any more.',
    }),
  },
  past: {
    title: 'History', offline: 'The history is kept on the server, so this needs a connection.', again: 'Try again',
    unsent: 'Not sent yet. Its history begins with the next connection.', somebody: 'Somebody', made: 'noted it', changed: 'changed it', out: 'deleted it', back: 'brought it back',
    was: (/** @type {string} */ value) => `before: ${value}`, not_stood: (/** @type {string} */ value) => `“${value}” did not stand: a change on another phone was later.`, bring: (/** @type {string} */ value) => `Bring “${value}” back`, clear: 'Leave it empty again', brought: 'Brought back',
  },
  gone: {
    title: 'What went', about: 'What was deleted or voided last. Each can be taken back, with all that was in it.', none: 'Nothing was deleted.', take_back: 'Take it back', back: (/** @type {string} */ what) => `${what} is back`, link: 'What went',
    by: (/** @type {string} */ who, /** @type {string} */ when) => `${who}, ${when}`,
  },
  tasting: {
    title: 'What they like', about: 'A tasting finds out which food they like best: the round offers them in turn, you say what became of it. One new food a week, never while they found or settle.',
    not_now: (/** @type {string} */ state) => `Not now (${state}): a refusal would mean nothing.`, kind: 'Kind of food', foods: 'Foods, 2 to 5', pick: 'Choose 2 to 5 foods.', go: 'Start the tasting', started: 'The tasting has begun', none: 'There are no two foods to compare for what they eat.',
    since: (/** @type {string} */ day) => `Since ${day}`, told: 'What it has told so far', wait: 'The plan chooses the first food with the next connection.', not_offered: 'Not offered yet', next: (/** @type {string} */ food, /** @type {string} */ due) => `Next: ${food}, ${due}.`,
    taken: (/** @type {number} */ mean, /** @type {number} */ low, /** @type {number} */ high) => `Taken in about ${mean} %, ${low} to ${high}`, offers: (/** @type {number} */ n) => count(n, 'offer'), likes: (/** @type {number} */ n) => ` and what ${count(n, 'colony', 'colonies')} like it took`,
    best: (/** @type {number} */ n) => `${n} % likely their favourite`, range: 'The bar is the estimate, the line its range.', food: 'Food', offered: 'Offers', share: 'Taken', spread: 'Range', favourite: 'Favourite',
    end: 'End the tasting', ended: 'The tasting has ended', part: (/** @type {string} */ name) => `Part of the tasting: ${name}`, here: 'This counts for the running tasting.', earlier: 'Earlier tastings', days: (/** @type {string} */ from, /** @type {string} */ to) => `${from} to ${to}`,
    tally: (/** @type {string} */ food, /** @type {number} */ taken, /** @type {number} */ checked) => `${food}: taken ${taken} of ${count(checked, 'time')}`, unchecked: (/** @type {string} */ food) => `${food}: never checked`,
  },
  countdown: {
    first: 'The first workers', next: 'New workers', days: (/** @type {number} */ low, /** @type {number} */ high) => (low === high ? `in about ${count(high, 'day')}` : `in ${low} to ${count(high, 'day')}`), by: (/** @type {number} */ d) => `any day now, at the latest in ${count(d, 'day')}`, any: 'any day now',
    between: (/** @type {string} */ from, /** @type {string} */ to) => `Between ${from} and ${to}`, warm: (/** @type {number} */ c) => `at ${c} °C`, seen: (/** @type {string} */ stage) => `oldest brood seen: ${stage}`,
  },
  figures: { table: 'The figures in a table' },
  diary: {
    empty: 'Nothing logged yet.', earlier: 'Earlier', void: 'Void', search: 'Find in the diary', kinds: 'Show', all: 'Everything', none: 'Nothing like this in the diary.', looking: (/** @type {string} */ day) => `Looking back to ${day} …`, today: 'Today', yesterday: 'Yesterday',
  },
  log: {
    food: 'Food', more: 'More foods', amount: 'Amount', size: 'Size', from: 'Where it comes from', lot: 'Which lot', no_lot: 'From elsewhere', go: 'Log the feeding', despite: 'It already happened: log it all the same',
    stops: /** @type {Record<string, string>} */ ({ refuse: 'Do not offer this.', wait: 'Not yet.', hold: 'Hold it first.' }),
    outcome_later: (/** @type {number} */ h) => `What became of it can wait: the round asks for the leftovers after about ${h} hours.`,
    which_feeding: 'Which feeding', feeder_level: 'How full is the feeder', offered_in: 'Offered as', vessels: { drop: 'Drops', feeder: 'In a feeder' }, colour_seen: 'Where the colour shows', colour_only: 'Log only where it shows', colour_when: 'Look after 1, 8, 24 and 72 hours, through pale stretched gasters and into the brood. Dark ants hide it (common practice).', what_became: 'What became of it', leftovers: 'Leftovers taken out', calm: 'Looked in, all calm', barrier_good: 'The barrier is good',
    level: 'Water level', drag: 'Drag the level until it matches the real tube, or use the arrow keys.', bubble: 'In a lying tube a bubble floats over the water: read the end at the cotton.', mm: 'Or type it, in mm', read: 'Log this level', filled: 'Filled up', new_tube: 'New tube offered', hydrate: 'Nest watered',
    wrong: 'What is wrong', report: 'Report it', workers: 'Workers seen', guess: '(a guess is fine)', larvae: 'Larvae', eggs: 'Eggs', pupae: 'Pupae', count: 'Log the count', more_brood: 'Eggs and pupae',
    move_words: 'Offer the new tube beside the old one, darken it and light the old. Give them 1 to 4 weeks (common practice). Never shake them out unless the old one is flooded or dry.', offered: 'New nest offered', moved: 'They have moved', note: 'Note', keep_note: 'Keep the note',
    mould_where: 'Where is it', mould: { far: 'Spots away from the brood', near: 'Near the brood, or a third of the cotton (common practice)' },
    males_only: 'Only males came out', donor: 'From which colony', from_elsewhere: 'From elsewhere', which_brood: 'What was added', how_many: 'How many', boost: 'Log the brood',
    boost_words: 'Only brood of the same species (a parasitic queen: of her host), from a colony that is healthy. Pupae are taken best (common practice).',
  },
  larder: {
    title: 'The larder', empty: 'No food is noted. Note what is in the house, and logging a feeding offers it first.', used: 'Used up', left_now: 'How much is left', by_logs: (/** @type {number} */ left, /** @type {string} */ whole) => `about ${left} left of ${whole}, by the feedings logged`, how_much: (/** @type {string} */ unit) => `How much, in ${unit}`, no_amount: 'Type a number.', used_up: 'Marked as used up', use_by: (/** @type {string} */ day) => `use by ${day}`, got: (/** @type {string} */ day) => `since ${day}`,
    never: 'Never offer this.', held: (/** @type {string} */ day, /** @type {number} */ d) => `On hold until ${day}, ${count(d, 'more day')}.`, over: 'Past its day: throw it away.', left: (/** @type {number} */ d) => (d === 0 ? 'Use it today.' : `Good for ${count(d, 'more day')}.`),
    add: 'Add a food', mix: 'Mix sugar water', size: 'Size', size_open: 'Mixed or not known', tint: 'Food colour in it', no_tint: 'None', tint_why: 'To see who drank: a blue food colour without carmine, the weakest tint that shows, one colony, one day, with undyed sugar water beside it. Common practice: no published strength, fading time or safety test for ants was found; keepers tell of deaths with a red one.', food: 'Food', origin: 'Where it comes from', name: 'Name', optional: '(optional)', use_by_field: 'Use by', refused: 'This does not go into the larder.', go: 'Add it', percent: 'Sugar', of_weight: '% sugar by weight', water: 'Water', ml_water: 'mL of water',
    recipe: (/** @type {string} */ sugar, /** @type {string} */ water, /** @type {string} */ total) => `Stir ${sugar} g of sugar into ${water} mL of warm water: about ${total} mL.`,
    cool: 'Let it cool until it feels cold on your wrist. Warm water can scald: keep it away from children.', keeps: 'In the fridge about 7 days (common practice); throw it away when it is cloudy.', batch: 'Keep this batch in the larder', batch_name: (/** @type {number} */ p) => `sugar water ${p} %`, lots: 'In the house',
  },
  ahead: { needs_server: 'This needs the server, and there is no connection just now.', again: 'Try again' },
  get: { title: 'What to get', today: 'Get it today.', by: (/** @type {string} */ day) => `Get it by ${day}.`, spoils: 'Spoils first' },
  reckon: {
    title: 'Calculators', about: 'Each one says how it reckons, where that comes from, and where it stops being true.', without: 'Sugar water can be mixed in the larder without a connection.', back: 'All calculators', back_larder: 'Back to the larder',
    go: 'Work it out', result: 'What comes out', how: 'How it is reckoned', formula: 'Formula:', source: 'Source:', limits: 'Limits:', open: 'Leave it open', in_unit: (/** @type {string} */ unit) => `in ${unit}`,
    range: (/** @type {string} */ low, /** @type {string} */ high) => `${low} to ${high}`, up_to: (/** @type {string} */ high) => `up to ${high}`, left_out: (/** @type {string} */ usual) => `left empty: ${usual}`, may_be_empty: 'may stay empty',
  },
  holiday: {
    title: 'Before you go away', about: 'Two dates tell which colonies need nobody, and what to top up on the last day.', leave: 'You leave', back: 'You are back', go: 'Look ahead', none: 'No colony has a plan yet.',
    verdict: { nobody: 'Needs nobody.', nobody_after_top_up: 'Needs nobody after a top-up.' }, visit: (/** @type {number} */ d) => (d === 1 ? 'Needs a visit every day.' : `Needs a visit every ${d} days.`),
    top_up: 'On your last day:', full: 'fill it up', travel: 'If a colony travels with you', pass: 'Make a pass for the visits',
  },
  mail: {
    title: 'Nudges by mail', about: 'For whoever has no phone that takes nudges. An address counts once its code was typed in here.', address: 'Address', send: 'Send a code', asked: 'A code went there. It holds for an hour.', code: 'The code from the mail', confirm: 'Confirm',
    anew: 'Send another code', comes: 'Nudges come here.', remove: 'Take it away', on: 'Nudges go there from now on', removed: 'No more mail goes there', not_sent: (/** @type {string} */ why) => `The mail could not be sent: ${why.replaceAll('_', ' ')}.`,
  },
  handover: {
    title: 'Hand over', about: 'A pass lets a family member or friend look after some colonies for some days, without an account.', state: { back: 'taken back', ended: 'ended', now: 'on duty now', from: (/** @type {string} */ day) => `from ${day}` },
    to: 'to', done_by: (/** @type {string} */ who) => `Done by ${who}`, nothing: 'Nothing was logged.', link_once: 'Send this link, or let them scan it. It is shown once.', by_code: 'Or by code:', share: 'Share', share_title: (/** @type {string} */ who) => `Pass for ${who}`, make_link: 'Make the link', new_link: 'Make a new link', take_back: 'Take it back',
    sure: (/** @type {string} */ who) => `Take the pass of ${who} back? Their phone stops at once.`, print: 'Print the sheet', preview: 'See it as they will', preview_title: (/** @type {string} */ who) => `As ${who} sees it`, new: 'A new pass', who: 'Who', colonies: 'Colonies', all: 'All of them', stings: 'stings', first: 'First day', last: 'Last day',
    know: 'What they should know', call: 'Whom to call', none: 'Choose at least one colony.', backwards: 'The last day lies before the first.', go: 'Make the pass', calendar: 'Calendar of the whole shelf', stings_words: 'You chose a colony that stings. Ask first whether anyone there is allergic; only hand it over if they are sure.',
  },
  calendar: {
    title: 'Show the rounds in a calendar', about: 'Calendars look every 1 to 24 hours, and many leave our alarms out: set an alert of your own there. Whoever has the address can read the rounds. It ends after a year; a new one ends the old.',
    once: 'Add this address as a calendar subscription. It is shown once.', copy: 'Copy the address', copied: 'Copied.', make: 'Make the address', anew: 'Make a new address', end: 'End the address', ended: 'The calendar address has ended.',
  },
  standin: {
    from: (/** @type {string} */ day) => `From ${day}`, today: (/** @type {number} */ n) => `Today: ${count(n, 'thing')}, about ${count(n * 2, 'minute')}`, nothing: 'Nothing today', calm: 'A missed day is fine. Do not open the nest, shake, or give extra.', from_keeper: 'From the keeper', call: (/** @type {string} */ who) => `Call ${who}`, yours: 'Your colonies',
  },
  paper: {
    sheet: (/** @type {string} */ who) => `Looking after the shelf: ${who}`, record: (/** @type {string} */ name) => `Record of ${name}`, print: 'Print', what: 'What to give', done: 'Done', call: 'Call', made: (/** @type {string} */ day) => `Printed ${day}`, gone: 'There is nothing to print here.', species: 'Species', lives: 'Lives in', count: 'Last count', when: 'When', event: 'What', by: 'By',
  },
  welcome: {
    title: (/** @type {string} */ name) => `${name} is on the shelf`, plan: 'The plan', wait: 'The plan comes with the next connection.', nothing: 'Nothing is due. Leave them their quiet.', install: 'Put it on your home screen', why_install: 'It then opens like any app, works at the shelf without a signal, and keeps your logs safe from tidying browsers.', installed: 'It is on this home screen already.', go: 'Go to the round', again: 'Add another colony',
    ios: ['Tap the share button of Safari (the square with the arrow).', 'Choose “Add to Home Screen”, then “Add”.', 'Open Broodshelf from there. It keeps a memory of its own: claim or join in it, or let it in from Safari with House, “Let a new phone in”.'],
    android: ['Open the menu of the browser (three dots).', 'Choose “Install app” or “Add to Home screen”.', 'Open Broodshelf from there.'],
    desktop: ['Chrome or Edge: the install button at the end of the address bar.', 'Safari on a Mac: File, then “Add to Dock”.', 'Firefox on a desk: a bookmark does it.'],
    now: 'Install it now',
  },
  places: {
    title: 'Places', about: 'Cabinet, room, cellar or fridge: their warmth and dryness move food, water and brood in every plan.', empty: 'No place is noted. Without one a room of 22 °C is assumed (common practice).',
    add: 'Add a place', change: 'Change', reading: 'Log a reading', log: 'Log the reading', open: 'See the places', name: 'Name of the place', type: 'What it is',
    types: /** @type {Record<string, string>} */ ({ cabinet: 'Cabinet', room: 'Room', cellar: 'Cellar', fridge: 'Fridge' }), nobody: 'No colony stands here yet: choose it in the colony under Change.',
    day_temp: 'By day, °C', night_temp: 'At night, °C', humidity: 'Humidity, %', temperature: 'Temperature, °C', stands: 'Stands in', nowhere: 'not said', none_yet: 'Add a place first, under House.',
    day: (/** @type {string} */ warm) => `${warm} by day`, night: (/** @type {string} */ warm) => `${warm} at night`, moist: (/** @type {number} */ n) => `${n} % humidity`,
    last: (/** @type {string} */ what, /** @type {string} */ when) => `Last read: ${what} (${when})`,
    bad_temp: 'This temperature cannot be: type °C.', bad_moist: 'Humidity lies between 0 and 100 %.', nothing: 'Type a temperature or a humidity.',
  },
  fate: {
    rests_since: 'Resting since', wakes_on: 'Wake it up on', went_to: 'To whom it went', died_of: 'What it died of, if known', came_from: 'Where it came from', host: 'Species of the host',
  },
  own: {
    species: 'Your own species', eats: 'It eats', founds: 'Its queen founds', stings: 'It stings',
    guilds: { omnivore: 'Sugar and insects', predator: 'Mostly insects', harvester: 'Seeds', honeypot: 'Stores sugar in repletes', fungus_grower: 'Leaves for its fungus' },
    foundings: { claustral: 'Alone, without food', semi_claustral: 'Goes out for food', parasitic: 'With host workers' },
    vessel: 'Your own vessel', bore: 'Inner width or bore in mm', vessel_length: 'Length in mm',
  },
  form: {
    change: (/** @type {string} */ name) => `Change ${name}`, name: 'Name', number: 'Number on the vessel', optional: '(optional)', species: 'Species', species_hint: 'from the list, or your own words', length: 'Worker length in mm', length_hint: '(needed only for a species that is not in the list)', lives: 'Lives in', not_listed: 'not in the list', outworld: 'It has an outworld', stage: 'Stage', condition: 'Condition', roughly: 'Workers, roughly',
    few: 'Few (under 20)', some: 'Some (20 to 100)', many: 'Many', larvae: 'Larvae', needed: 'Give the colony a name.', save: 'Save', add: 'Add the colony', more: 'Vessel, number and more', stings: 'This species stings. Allergic people need help from others here.',
  },
  look: {
    title: 'How it looks', about: 'Every part that the screens are made of, in the light that you choose.', gauge: 'The gauge', colour: 'Colour', type: 'Type', buttons: 'Buttons', chips: 'Chips', stepper: 'Stepper', states: 'Saved, synced, attention', empty: 'A calm state', skeleton: 'Before it is there', sheet: 'Sheet', toast: 'Toast', icons: 'Icons', open_sheet: 'Open a sheet', show_toast: 'Show a toast', light: 'Light', degrees: 'Temperatures in', as_phone: 'As the phone', day: 'Light', dark: 'Dark', red: 'Dim red',
    red_why: 'Dim red is for looking into a dark nest: ants hardly see deep red (common practice).', all_parts: 'See every part of the app',
  },
  photos: {
    title: 'Pictures', take: 'Take a picture', busy: 'One moment…', remove: 'Take this picture out',
    unreadable: 'This picture could not be read. Try another, or take it again.',
    of: (/** @type {string} */ name, /** @type {string} */ day) => `${name} on ${day}`, large: (/** @type {string} */ day) => `Look at the picture of ${day}`,
    older: 'Older', newer: 'Newer', elsewhere: 'This picture is still on the phone that took it.',
  },
  nudges: {
    title: 'Nudges on this phone', last: (/** @type {string} */ when) => `The last one came ${when}.`, none: 'None has come yet.', silent: (/** @type {string} */ name) => `${name} has not answered for a while: open the app on it.`, somebody: 'Somebody',
    elsewhere: /** @type {Record<string, (who: string, phone: string) => string>} */ ({
      unheard: (who, phone) => `Nudges do not reach ${who} (${phone}): ask them to open the app on it.`,
      unseen: (who, phone) => `${who} has not opened the app for a month (${phone}), so nudges may have stopped there.`,
    }),
    ask: 'Tell me when something is due', test: 'Send a test', stop: 'Turn off here',
    state: /** @type {Record<string, string>} */ ({
      unsupported: 'This browser cannot receive nudges. The round here is always up to date when you open the app.',
      install_first: 'On an iPhone or iPad put the app on the home screen first: Share, then Add to Home Screen. Open it there and come back to this page.',
      denied: 'Nudges are blocked for this app in the browser’s settings. Allow notifications there, then come back.',
      off: 'Nudges are off. When something is due at your care hours, this phone can tell you.', on: 'Nudges come to this phone.',
    }),
    tested: /** @type {Record<string, string>} */ ({ waiting: 'Sent; waiting for this phone to say that it came…', heard: 'It came. Nudges work on this phone.', silent: 'It did not come.' }),
  },
  house: {
    title: 'The house', look: 'Look', good_to_know: 'Good to know', build: 'Build',
    advice: 'Broodshelf gives general husbandry advice, not veterinary or medical advice.',
    never: 'Never release ants or feeder insects. Keeping and moving species is a matter of local law: ask the authority.',
    hours: 'Names and hours', shelf_name: 'Name of the shelf', zone: 'Time zone', first: 'First care hour', second: 'Second care hour', quiet_from: 'Quiet from', quiet_to: 'Quiet to', save: 'Save',
    phones: 'Phones', this_one: '(this one)', last_seen: 'last seen', sign_out: 'Sign out', sign_out_other: (/** @type {string} */ name) => `Sign out ${name}?`,
    new_phone: 'Let a new phone in', new_phone_hint: 'type the code that it shows', look_up: 'Find it', asks: 'asks to join. Whose is it?', somebody_new: 'Somebody new', new_keeper: 'Name of the new keeper', let_in: 'The phone is let in',
    on_this_phone: 'On this phone', this_phone: 'this phone', last_synced: (/** @type {string} */ when) => `Last synced ${when}.`, not_synced: 'Not synced yet.', not_sent: (/** @type {number} */ n) => `${n} not sent.`, nothing_waits: 'Nothing waits.',
    kept: 'The browser has promised to keep the data.', not_kept: 'The browser may clear data of apps that are not used; the server copy is the safety. Installing the app on the home screen helps.',
    sync_now: 'Sync now', export: 'Export unsent logs', leave: (/** @type {string} */ who) => `Sign ${who} out?`, leave_unsent: (/** @type {number} */ n) => `${n} logs are not sent yet and stay on this phone. Sign out all the same?`,
  },
};
