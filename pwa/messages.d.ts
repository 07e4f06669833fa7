// What the app can say, and what each message is told: the messages of server/broodshelf/languages/en.
// Written by `python -m tests.support.message_types`; a test fails when it is stale.

/** What each message is told; null where it is told nothing. */
export interface Messages {
  'attention-again': null;
  'attention-again-why': null;
  'attention-bring': null;
  'attention-code-failed': null;
  'attention-code-kind-differs': null;
  'attention-code-last-keeper': null;
  'attention-code-missing-field': null;
  'attention-code-not-allowed': null;
  'attention-code-outside-pass': null;
  'attention-code-parent-missing': null;
  'attention-code-purged': null;
  'attention-code-too-large': null;
  'attention-code-unknown-field': null;
  'attention-code-unknown-kind': null;
  'attention-damaged': null;
  'attention-drop': null;
  'attention-export': null;
  'attention-leave': null;
  'attention-mend': null;
  'attention-met': { name: string | number };
  'attention-mine': null;
  'attention-none': null;
  'attention-other-phone': null;
  'attention-sure': null;
  'attention-theirs': null;
  'attention-title': null;
  'attention-values': {
    field: string | number;
    here: string | number;
    there: string | number;
    when: string | number;
    who: string | number;
  };
  'brood-any': null;
  'brood-any-by': { day: string | number };
  'brood-ask-by': { brood: string; day: string | number };
  'brood-ask-by-seen': { brood: string; day: string | number };
  'brood-ask-cannot-see': null;
  'brood-ask-early': null;
  'brood-ask-looked': { again: string | number; day: string | number };
  'brood-ask-not-yet': null;
  'brood-ask-now': { brood: string };
  'brood-ask-now-seen': { brood: string };
  'brood-ask-remark': { brood: string };
  'brood-ask-told': { brood: string; day: string | number };
  'brood-ask-waits': null;
  'brood-ask-yes': null;
  'brood-at-latest': { days: number };
  'brood-between': { from: string | number; to: string | number };
  'brood-days': { high: number; low: string | number };
  'brood-days-about': { days: number };
  'brood-first': null;
  'brood-likely': { best: string | number; days: number; high: string | number };
  'brood-line-about': { best: string | number; high: string | number; low: string | number };
  'brood-line-ahead': null;
  'brood-line-count-eggs': { count: number };
  'brood-line-count-large-larvae': { count: number };
  'brood-line-count-pupae': { count: number };
  'brood-line-count-small-larvae': { count: number };
  'brood-line-count-workers': { count: number };
  'brood-line-day': null;
  'brood-line-mark-band': null;
  'brood-line-mark-dot': null;
  'brood-line-mark-due': null;
  'brood-line-mark-hollow': null;
  'brood-line-mark-line': null;
  'brood-line-now': { number: string | number };
  'brood-line-reach-182': null;
  'brood-line-reach-56': null;
  'brood-line-scale': null;
  'brood-line-stage-eggs': null;
  'brood-line-stage-large-larvae': null;
  'brood-line-stage-pupae': null;
  'brood-line-stage-small-larvae': null;
  'brood-line-stage-workers': null;
  'brood-line-summary': {
    best: number;
    counts: string | number;
    day: string | number;
    high: string | number;
    low: string | number;
  };
  'brood-line-today': null;
  'brood-next': null;
  'brood-no-end': null;
  'brood-none': null;
  'brood-not-before': { day: string | number };
  'brood-on': { day: string | number };
  'brood-open': null;
  'brood-perhaps': { high: string | number };
  'brood-source-camponotus': null;
  'brood-source-formica': null;
  'brood-source-lasius': null;
  'brood-source-linepithema': null;
  'brood-source-messor': null;
  'brood-source-monomorium': null;
  'brood-source-myrmica': null;
  'brood-source-other': null;
  'brood-source-slow-hunters': null;
  'brood-source-solenopsis': null;
  'brood-source-tetramorium': null;
  'brood-warm': { mean_c: number };
  'brood-why-counted': { count: number };
  'brood-why-eight': null;
  'brood-why-larvae-census-fewer': null;
  'brood-why-larvae-census-more': null;
  'brood-why-line': { day: string | number; moved: string | number; seen: string | number };
  'brood-why-moved-census-fewer': null;
  'brood-why-moved-census-later': null;
  'brood-why-moved-census-more': null;
  'brood-why-moved-census-sooner': null;
  'brood-why-none': null;
  'brood-why-nothing': null;
  'brood-why-seen-few': { brood: string };
  'brood-why-seen-many': { brood: string };
  'brood-why-seen-none': { brood: string };
  'brood-why-seen-refused': null;
  'brood-why-seen-seen': { brood: string };
  'brood-why-seen-some': { brood: string };
  'brood-why-seen-taken': null;
  'brood-why-source': { source: string | number };
  'brood-why-title': null;
  'brood-why-unmeasured': null;
  'brood-why-workers': null;
  'calculator-about': null;
  'calculator-back': null;
  'calculator-back-larder': null;
  'calculator-choice-cup': null;
  'calculator-choice-drop': null;
  'calculator-choice-jar': null;
  'calculator-choice-mass': null;
  'calculator-choice-pan': null;
  'calculator-choice-small-glass': null;
  'calculator-choice-volume': null;
  'calculator-formula': null;
  'calculator-go': null;
  'calculator-how': null;
  'calculator-in-unit': { unit: string | number };
  'calculator-input-bore-mm': null;
  'calculator-input-day-c': null;
  'calculator-input-days': null;
  'calculator-input-dilute-food': null;
  'calculator-input-eggs': null;
  'calculator-input-first': null;
  'calculator-input-from-c': null;
  'calculator-input-humidity-pct': null;
  'calculator-input-hunts-by-sight': null;
  'calculator-input-in-tube': null;
  'calculator-input-later-c': null;
  'calculator-input-later-min': null;
  'calculator-input-length-mm': null;
  'calculator-input-majors': null;
  'calculator-input-ml': null;
  'calculator-input-mol-per-l': null;
  'calculator-input-night-c': null;
  'calculator-input-parts-by': null;
  'calculator-input-percent': null;
  'calculator-input-prey-food': null;
  'calculator-input-protein-mg': null;
  'calculator-input-reservoir-mm': null;
  'calculator-input-room-c': null;
  'calculator-input-slow': null;
  'calculator-input-species': null;
  'calculator-input-sugar-parts': null;
  'calculator-input-temp-c': null;
  'calculator-input-to-c': null;
  'calculator-input-vessel': null;
  'calculator-input-water-parts': null;
  'calculator-input-worker-mg': null;
  'calculator-input-worker-mm': null;
  'calculator-input-workers': null;
  'calculator-left-out': { usual: string | number };
  'calculator-limits': null;
  'calculator-may-be-empty': null;
  'calculator-open': null;
  'calculator-range': { high: string | number; low: string | number };
  'calculator-result': null;
  'calculator-source': null;
  'calculator-title': null;
  'calculator-unit-by-mass': null;
  'calculator-unit-d': null;
  'calculator-unit-eggs': null;
  'calculator-unit-mg-d': null;
  'calculator-unit-min': null;
  'calculator-unit-mol-l': null;
  'calculator-unit-parts': null;
  'calculator-unit-workers': null;
  'calculator-up-to': { high: string | number };
  'calculator-usual-night-c': null;
  'calculator-usual-protein-mg': null;
  'calculator-usual-worker-mg': null;
  'calculator-without': null;
  'calendar-address-about': null;
  'calendar-address-anew': null;
  'calendar-address-copied': null;
  'calendar-address-copy': null;
  'calendar-address-end': null;
  'calendar-address-ended': null;
  'calendar-address-make': null;
  'calendar-address-once': null;
  'calendar-address-title': null;
  'caution-bites': null;
  'caution-blade': null;
  'caution-dead-only': null;
  'caution-never-tilt': null;
  'caution-sprays': null;
  'caution-sting-allergy': null;
  'caution-sting-allergy.more': null;
  'caution-stings': null;
  'caution-stings.more': null;
  'caution-tint': null;
  'caution-tint.more': null;
  'chart-behind': { high: string | number; low: string | number };
  'chart-day': null;
  'chart-due-now': null;
  'chart-estimate': null;
  'chart-feeding': null;
  'chart-few': null;
  'chart-few-food': null;
  'chart-few-water': null;
  'chart-food-words': { count: number };
  'chart-growth': null;
  'chart-growth-ahead': { best: string | number; day: string | number; high: string | number; low: string | number };
  'chart-growth-words': { first: string | number; last: string | number };
  'chart-level': null;
  'chart-never': null;
  'chart-no-picture': null;
  'chart-protein': null;
  'chart-share': null;
  'chart-sugar': null;
  'chart-water': null;
  'chart-water-words': { days: number };
  'chart-week': null;
  'chart-which': null;
  'chart-workers': null;
  'climate-bad-line': { line: string | number; why: string | number };
  'climate-bad-rows': { rows: number };
  'climate-basis': null;
  'climate-basis-assumed': null;
  'climate-basis-measured': null;
  'climate-basis-typed': null;
  'climate-comfort': { high: string | number; low: string | number };
  'climate-date-form-dmy': null;
  'climate-date-form-iso': null;
  'climate-date-form-mdy': null;
  'climate-date-form-unix': null;
  'climate-dates': null;
  'climate-day': null;
  'climate-degree-days': {
    name: string | number;
    since: string | number;
    sum: string | number;
    threshold: string | number;
  };
  'climate-degree-days-assumed': {
    name: string | number;
    percent: string | number;
    since: string | number;
    sum: string | number;
    threshold: string | number;
  };
  'climate-file': null;
  'climate-file-hint': null;
  'climate-found': { from: string | number; rows: number; until: string | number };
  'climate-found-nothing': null;
  'climate-give-out': null;
  'climate-high': null;
  'climate-humidity': null;
  'climate-humidity-column': null;
  'climate-key': null;
  'climate-key-weeks': null;
  'climate-look': null;
  'climate-low': null;
  'climate-mean': null;
  'climate-measured': { days: number; measured: string | number };
  'climate-measured-all': null;
  'climate-new-hours': { hours: number; new: string | number };
  'climate-new-hours-all': { hours: number };
  'climate-no-column': null;
  'climate-no-comfort': null;
  'climate-nothing': null;
  'climate-range': { high: string | number; low: string | number };
  'climate-span': null;
  'climate-span-of-days': null;
  'climate-span-of-weeks': null;
  'climate-span-of-year': null;
  'climate-summary': { high: string | number; low: string | number; mean: string | number };
  'climate-take': null;
  'climate-taken': { hours: number };
  'climate-temperature': null;
  'climate-temperature-column': null;
  'climate-time-column': null;
  'climate-too-large': null;
  'climate-unit': null;
  'climate-week': null;
  'climate-which': null;
  'climate-zone': null;
  'climate-zone-of-household': null;
  'climate-zone-of-utc': null;
  'colony-change': null;
  'colony-charts': null;
  'colony-condition-dead': null;
  'colony-condition-given-away': null;
  'colony-condition-quarantine': null;
  'colony-condition-queenless-suspected': null;
  'colony-condition-resting': null;
  'colony-condition-settling': null;
  'colony-condition-well': null;
  'colony-diary': null;
  'colony-form-add': null;
  'colony-form-change': { name: string | number };
  'colony-form-condition': null;
  'colony-form-fate-came-from': null;
  'colony-form-fate-died-of': null;
  'colony-form-fate-host': null;
  'colony-form-fate-rests-since': null;
  'colony-form-fate-wakes-on': null;
  'colony-form-fate-went-to': null;
  'colony-form-few': null;
  'colony-form-larvae': null;
  'colony-form-length': null;
  'colony-form-length-hint': null;
  'colony-form-lives': null;
  'colony-form-many': null;
  'colony-form-more': null;
  'colony-form-name': null;
  'colony-form-needed': null;
  'colony-form-not-listed': null;
  'colony-form-number': null;
  'colony-form-optional': null;
  'colony-form-outworld': null;
  'colony-form-own-bore': null;
  'colony-form-own-eats': null;
  'colony-form-own-founding-claustral': null;
  'colony-form-own-founding-parasitic': null;
  'colony-form-own-founding-semi-claustral': null;
  'colony-form-own-founds': null;
  'colony-form-own-guild-fungus-grower': null;
  'colony-form-own-guild-harvester': null;
  'colony-form-own-guild-honeypot': null;
  'colony-form-own-guild-omnivore': null;
  'colony-form-own-guild-predator': null;
  'colony-form-own-species': null;
  'colony-form-own-stings': null;
  'colony-form-own-vessel': null;
  'colony-form-own-vessel-length': null;
  'colony-form-roughly': null;
  'colony-form-save': null;
  'colony-form-some': null;
  'colony-form-species': null;
  'colony-form-species-hint': null;
  'colony-form-stage': null;
  'colony-form-stings': null;
  'colony-gone': null;
  'colony-gone-why': null;
  'colony-log': null;
  'colony-new': null;
  'colony-no-plan': null;
  'colony-paper': null;
  'colony-past': null;
  'colony-plan': null;
  'colony-stage-founding': null;
  'colony-stage-growing': null;
  'colony-stage-mature': null;
  'colony-stage-nanitics': null;
  'counting-again': null;
  'counting-brood': { count: string | number };
  'counting-corner': { which: string };
  'counting-crowded': { high: string | number; least: string | number; low: string | number };
  'counting-dot': { at: string | number; count: string | number; sure: string; what: string };
  'counting-end': { which: string };
  'counting-failed': null;
  'counting-farther': null;
  'counting-few': null;
  'counting-film': null;
  'counting-growth': null;
  'counting-heic': null;
  'counting-hint-brood': null;
  'counting-hint-frame': null;
  'counting-hint-size': null;
  'counting-hint-worker': null;
  'counting-keep': null;
  'counting-kept': null;
  'counting-length': null;
  'counting-looking': null;
  'counting-making': null;
  'counting-nearer': null;
  'counting-next': null;
  'counting-open': null;
  'counting-pale': null;
  'counting-part': null;
  'counting-picture': { count: string | number };
  'counting-plain': null;
  'counting-previous': null;
  'counting-range': { high: string | number; least: string | number; low: string | number };
  'counting-sets-brood': null;
  'counting-sets-frame': null;
  'counting-sets-size': null;
  'counting-sets-worker': null;
  'counting-shown': null;
  'counting-spans': null;
  'counting-spans-bore': null;
  'counting-spans-length': null;
  'counting-spans-worker': null;
  'counting-still': null;
  'counting-strip': null;
  'counting-take-away': null;
  'counting-tap': null;
  'counting-whole': null;
  'diary-all': null;
  'diary-earlier': null;
  'diary-empty': null;
  'diary-kind': null;
  'diary-looking': { day: string | number };
  'diary-none': null;
  'diary-search': null;
  'diary-today': null;
  'diary-void': null;
  'diary-yesterday': null;
  'event-brood-added': { brood: string };
  'event-brood-added-some': { brood: string; count: number };
  'event-brood-seen-few': null;
  'event-brood-seen-many': null;
  'event-brood-seen-none': null;
  'event-brood-seen-seen': null;
  'event-brood-seen-some': null;
  'event-coarse-few': null;
  'event-coarse-many': null;
  'event-coarse-none': null;
  'event-coarse-some': null;
  'event-colony': null;
  'event-colour': { where: string | number };
  'event-colour-nowhere': null;
  'event-colour-seen-brood': null;
  'event-colour-seen-gasters': null;
  'event-counted': { seen: string | number };
  'event-counted-eggs': { amount: string };
  'event-counted-larvae': { amount: string };
  'event-counted-nothing': null;
  'event-counted-pupae': { amount: string };
  'event-feeder': { level: string | number };
  'event-kind-boost': null;
  'event-kind-check': null;
  'event-kind-climate': null;
  'event-kind-count': null;
  'event-kind-fault': null;
  'event-kind-feeding': null;
  'event-kind-later': null;
  'event-kind-move': null;
  'event-kind-note': null;
  'event-kind-photo': null;
  'event-kind-water': null;
  'event-leftovers': null;
  'event-males-only': null;
  'event-mended': { fault: string | number };
  'event-outcome-all': null;
  'event-outcome-ignored': null;
  'event-outcome-some': null;
  'event-queens': { count: number };
  'event-read': { level: string | number };
  'event-read-mm': { mm: string | number };
  'event-reading-empty': null;
  'event-reading-full': null;
  'event-reading-half': null;
  'event-reading-quarter': null;
  'event-reading-three-quarters': null;
  'event-repeat': { told: string | number };
  'event-stage-eggs': null;
  'event-stage-larvae': null;
  'event-stage-pupae': null;
  'event-water-hydrate': null;
  'event-water-new-tube': null;
  'event-water-refill': null;
  'event-workers': { count: number };
  'event-workers-at-least': { seen: string | number };
  'event-workers-roughly': { amount: string };
  'fault-escape': null;
  'fault-escape.inside': null;
  'fault-flood': null;
  'fault-flood.inside': null;
  'fault-heater': null;
  'fault-heater.inside': null;
  'fault-leak': null;
  'fault-leak.inside': null;
  'fault-many-dead': null;
  'fault-many-dead.inside': null;
  'fault-mites': null;
  'fault-mites.inside': null;
  'fault-mould': null;
  'fault-mould.inside': null;
  'food-canary-seed': null;
  'food-canary-seed.counted': { n: number };
  'food-canary-seed.of': null;
  'food-chia': null;
  'food-chia.counted': { n: number };
  'food-chia.of': null;
  'food-cricket': null;
  'food-cricket.counted': { n: number };
  'food-cricket.of': null;
  'food-dandelion-seed': null;
  'food-dandelion-seed.counted': { n: number };
  'food-dandelion-seed.of': null;
  'food-egg': null;
  'food-egg.counted': null;
  'food-egg.of': null;
  'food-fruit': null;
  'food-fruit-fly': null;
  'food-fruit-fly.counted': { n: number };
  'food-fruit-fly.of': null;
  'food-fruit.counted': null;
  'food-fruit.of': null;
  'food-honey': null;
  'food-honey-water': null;
  'food-honey-water.counted': null;
  'food-honey-water.of': null;
  'food-honey.counted': null;
  'food-honey.of': null;
  'food-hunting-spider': null;
  'food-hunting-spider.counted': { n: number };
  'food-hunting-spider.of': null;
  'food-jam': null;
  'food-jam.counted': null;
  'food-jam.of': null;
  'food-leaves': null;
  'food-leaves.counted': { n: number };
  'food-leaves.of': null;
  'food-maple-syrup': null;
  'food-maple-syrup.counted': null;
  'food-maple-syrup.of': null;
  'food-mealworm': null;
  'food-mealworm.counted': { n: number };
  'food-mealworm.of': null;
  'food-protein-jelly': null;
  'food-protein-jelly.counted': null;
  'food-protein-jelly.of': null;
  'food-roach-nymph': null;
  'food-roach-nymph.counted': { n: number };
  'food-roach-nymph.of': null;
  'food-seeds': null;
  'food-seeds.counted': { n: number };
  'food-seeds.of': null;
  'food-silkworm': null;
  'food-silkworm.counted': { n: number };
  'food-silkworm.of': null;
  'food-sugar-water': null;
  'food-sugar-water.counted': null;
  'food-sugar-water.of': null;
  'food-superworm': null;
  'food-superworm.counted': { n: number };
  'food-superworm.of': null;
  'food-waxworm': null;
  'food-waxworm.counted': { n: number };
  'food-waxworm.of': null;
  'food-web-spider': null;
  'food-web-spider.counted': { n: number };
  'food-web-spider.of': null;
  'food-white-sugar': null;
  'food-white-sugar.counted': null;
  'food-white-sugar.of': null;
  'form-crushed': null;
  'form-cut': null;
  'form-feeder': null;
  'form-live': null;
  'form-stunned': null;
  'form-whole-dead': null;
  'frame-banner-emptied': null;
  'frame-banner-ended-device-revoked': null;
  'frame-banner-ended-pass-ended': null;
  'frame-banner-ended-pass-revoked': null;
  'frame-banner-ended-session-old': null;
  'frame-banner-sign-in': null;
  'frame-banner-signed-out': null;
  'frame-banner-understood': null;
  'frame-banner-unsent': null;
  'frame-banner-update': null;
  'frame-banner-update-waits': null;
  'frame-banner-use-it': null;
  'frame-clock-ahead': { count: number; unit: string };
  'frame-clock-behind': { count: number; unit: string };
  'frame-close': null;
  'frame-description': null;
  'frame-loading': null;
  'frame-missing': null;
  'frame-name': null;
  'frame-nav-handover': null;
  'frame-nav-larder': null;
  'frame-nav-round': null;
  'frame-nav-settings': null;
  'frame-nav-shelf': null;
  'frame-opening': null;
  'frame-screens': null;
  'handover-about': null;
  'handover-all': null;
  'handover-backwards': null;
  'handover-by-code': null;
  'handover-calendar': null;
  'handover-call': null;
  'handover-colonies': null;
  'handover-days': { from: string | number; to: string | number };
  'handover-done-by': { who: string | number };
  'handover-first': null;
  'handover-go': null;
  'handover-know': null;
  'handover-last': null;
  'handover-link-once': null;
  'handover-make-link': null;
  'handover-new': null;
  'handover-new-link': null;
  'handover-none': null;
  'handover-nothing': null;
  'handover-preview': null;
  'handover-preview-title': { who: string | number };
  'handover-print': null;
  'handover-share': null;
  'handover-share-title': { who: string | number };
  'handover-state-back': null;
  'handover-state-ended': null;
  'handover-state-from': { day: string | number };
  'handover-state-now': null;
  'handover-stings': { colony: string | number };
  'handover-stings-words': null;
  'handover-sure': { who: string | number };
  'handover-take-back': null;
  'handover-title': null;
  'handover-who': null;
  'history-again': null;
  'history-back': { who: string | number };
  'history-bring': { value: string | number };
  'history-brought': null;
  'history-changed': { who: string | number };
  'history-clear': null;
  'history-field-acquired-on': null;
  'history-field-action': null;
  'history-field-after-h': null;
  'history-field-amount': null;
  'history-field-amount-ml': null;
  'history-field-at': null;
  'history-field-backup-patience-days': null;
  'history-field-bore-mm': null;
  'history-field-brood': null;
  'history-field-came-from': null;
  'history-field-care-hours': null;
  'history-field-colony-id': null;
  'history-field-colony-ids': null;
  'history-field-colour-seen': null;
  'history-field-condition': null;
  'history-field-condition-until': null;
  'history-field-confirmed': null;
  'history-field-day-temp-c': null;
  'history-field-degrees': null;
  'history-field-despite': null;
  'history-field-died-of': null;
  'history-field-donor-colony-id': null;
  'history-field-emergency-contact': null;
  'history-field-ended-on': null;
  'history-field-ends-on': null;
  'history-field-fault': null;
  'history-field-feeding-id': null;
  'history-field-finished-on': null;
  'history-field-food-code': null;
  'history-field-food-codes': null;
  'history-field-form': null;
  'history-field-founded-on': null;
  'history-field-founding-mode': null;
  'history-field-fresh-reservoir': null;
  'history-field-gone': null;
  'history-field-got-on': null;
  'history-field-guild': null;
  'history-field-happened-at': null;
  'history-field-has-outworld': null;
  'history-field-helper-hint': null;
  'history-field-helper-photo-id': null;
  'history-field-hold-until': null;
  'history-field-host-species-code': null;
  'history-field-how': null;
  'history-field-humidity-pct': null;
  'history-field-instructions': null;
  'history-field-interval-days': null;
  'history-field-language': null;
  'history-field-leftovers-removed': null;
  'history-field-length-mm': null;
  'history-field-level': null;
  'history-field-level-mm': null;
  'history-field-lot-id': null;
  'history-field-males-only': null;
  'history-field-mould-near-brood': null;
  'history-field-mould-share': null;
  'history-field-name': null;
  'history-field-need': null;
  'history-field-night-temp-c': null;
  'history-field-number': null;
  'history-field-origin': null;
  'history-field-outcome': null;
  'history-field-paused-until': null;
  'history-field-percent-ww': null;
  'history-field-photo-id': null;
  'history-field-place-id': null;
  'history-field-place-type': null;
  'history-field-queens': null;
  'history-field-quiet-from': null;
  'history-field-quiet-to': null;
  'history-field-reading': null;
  'history-field-remark': null;
  'history-field-resolution': null;
  'history-field-resolved-at': null;
  'history-field-resting-since': null;
  'history-field-size-class': null;
  'history-field-species-code': null;
  'history-field-species-name': null;
  'history-field-stage': null;
  'history-field-started-on': null;
  'history-field-starts-on': null;
  'history-field-stinging-ok-ids': null;
  'history-field-stings': null;
  'history-field-tasting-id': null;
  'history-field-temperature-c': null;
  'history-field-text': null;
  'history-field-tint': null;
  'history-field-unit': null;
  'history-field-until': null;
  'history-field-use-by': null;
  'history-field-vessel-code': null;
  'history-field-vessel-id': null;
  'history-field-volumes': null;
  'history-field-weekdays': null;
  'history-field-went-to': null;
  'history-field-why': null;
  'history-field-worker-length-mm': null;
  'history-field-workers': null;
  'history-field-workers-at-least': null;
  'history-field-workers-coarse': null;
  'history-field-workers-high': null;
  'history-field-workers-low': null;
  'history-field-zone': null;
  'history-gone-about': null;
  'history-gone-back': { what: string | number };
  'history-gone-by': { when: string | number; who: string | number };
  'history-gone-link': null;
  'history-gone-none': null;
  'history-gone-take-back': null;
  'history-gone-title': null;
  'history-made': { who: string | number };
  'history-not-stood': { field: string | number; value: string | number };
  'history-offline': null;
  'history-out': { who: string | number };
  'history-register-colony': null;
  'history-register-household': null;
  'history-register-lot': null;
  'history-register-pass': null;
  'history-register-person': null;
  'history-register-place': null;
  'history-register-rule': null;
  'history-register-tasting': null;
  'history-register-vessel': null;
  'history-somebody': null;
  'history-title': null;
  'history-unsent': null;
  'history-value-action-read': null;
  'history-value-degrees-c': null;
  'history-value-degrees-f': null;
  'history-value-elsewhere': null;
  'history-value-empty': null;
  'history-value-every': { days: number; need: string | number };
  'history-value-form-drop': null;
  'history-value-form-piece': null;
  'history-value-form-whole': null;
  'history-value-how-finished': null;
  'history-value-how-forced': null;
  'history-value-how-offered': null;
  'history-value-how-on-its-own': null;
  'history-value-no': null;
  'history-value-volumes-floz': null;
  'history-value-volumes-ml': null;
  'history-value-yes': null;
  'history-was': { value: string | number };
  'holiday-about': null;
  'holiday-back': null;
  'holiday-full': null;
  'holiday-go': null;
  'holiday-leave': null;
  'holiday-none': null;
  'holiday-pass': null;
  'holiday-title': null;
  'holiday-top-up': null;
  'holiday-travel': null;
  'holiday-verdict-nobody': null;
  'holiday-verdict-nobody-after-top-up': null;
  'holiday-visit': { days: number };
  'house-advice': null;
  'house-asks': { phone: string | number };
  'house-backup-patience': null;
  'house-backup-patience-hint': null;
  'house-build': { build: string | number };
  'house-door-export': null;
  'house-door-import': null;
  'house-door-link-made': { pass: string | number; who: string | number };
  'house-door-link-made-by-nobody': { pass: string | number };
  'house-door-new-phone': { phone: string | number; who: string | number };
  'house-door-new-phone-by-nobody': { phone: string | number };
  'house-door-pass-ended': { pass: string | number; who: string | number };
  'house-door-pass-ended-by-nobody': { pass: string | number };
  'house-door-pass-opened': { pass: string | number; phone: string | number };
  'house-door-person-removed': { name: string | number; who: string | number };
  'house-door-person-removed-by-nobody': { name: string | number };
  'house-door-phone-removed': { phone: string | number; who: string | number };
  'house-door-phone-removed-by-nobody': { phone: string | number };
  'house-door-restore': null;
  'house-door-way-back': { who: string | number };
  'house-door-way-back-by-nobody': null;
  'house-door-wrong-codes': { count: number; where: string; who: string | number };
  'house-door-wrong-codes-by-nobody': { count: number; where: string };
  'house-doors-about': null;
  'house-doors-all': { count: string | number };
  'house-doors-offline': null;
  'house-doors-title': null;
  'house-export': null;
  'house-first': null;
  'house-good-to-know': null;
  'house-hours': null;
  'house-kept': null;
  'house-language': null;
  'house-language-as-phone': null;
  'house-last-seen': { when: string | number };
  'house-last-synced': { when: string | number };
  'house-leave': { who: string | number };
  'house-leave-unsent': { count: number };
  'house-left': { count: string | number; who: string | number };
  'house-let-in': null;
  'house-look': null;
  'house-look-up': null;
  'house-mail-about': null;
  'house-mail-address': null;
  'house-mail-anew': null;
  'house-mail-asked': null;
  'house-mail-code': null;
  'house-mail-comes': null;
  'house-mail-confirm': null;
  'house-mail-not-sent': { why: string | number };
  'house-mail-on': null;
  'house-mail-remove': null;
  'house-mail-removed': null;
  'house-mail-send': null;
  'house-mail-title': null;
  'house-never': null;
  'house-new-keeper': null;
  'house-new-phone': null;
  'house-new-phone-hint': null;
  'house-not-kept': null;
  'house-not-sent': { count: string | number };
  'house-not-synced': null;
  'house-nothing-waits': null;
  'house-on-this-phone': null;
  'house-phones': null;
  'house-quiet-from': null;
  'house-quiet-to': null;
  'house-save': null;
  'house-second': null;
  'house-shelf-name': null;
  'house-sign-out': null;
  'house-sign-out-other': { name: string | number };
  'house-somebody-new': null;
  'house-sync-now': null;
  'house-this-one': { phone: string | number };
  'house-this-phone': null;
  'house-title': null;
  'house-zone': null;
  'label-about': null;
  'label-camera': null;
  'label-choose': null;
  'label-foreign': null;
  'label-no-camera': null;
  'label-open': null;
  'label-print': null;
  'label-scan': null;
  'label-scan-title': null;
  'label-several': null;
  'label-start': null;
  'label-title': null;
  'label-typed': null;
  'label-unknown': null;
  'larder-add': null;
  'larder-batch': null;
  'larder-batch-name': { percent: string | number };
  'larder-by-logs': { left: string | number; whole: string | number };
  'larder-cool': null;
  'larder-empty': null;
  'larder-food': null;
  'larder-get-by': { day: string | number };
  'larder-get-spoils': null;
  'larder-get-title': null;
  'larder-get-today': null;
  'larder-go': null;
  'larder-got': { day: string | number };
  'larder-held': { day: string | number; days: number };
  'larder-keeps': null;
  'larder-left': { days: number };
  'larder-left-now': null;
  'larder-lots': null;
  'larder-mix': null;
  'larder-name': null;
  'larder-never': null;
  'larder-no-amount': null;
  'larder-no-tint': null;
  'larder-of-water': { unit: string | number };
  'larder-of-weight': null;
  'larder-origin': null;
  'larder-over': null;
  'larder-percent': null;
  'larder-recipe': { sugar_g: string | number; total_ml: number; water_ml: number };
  'larder-refused': null;
  'larder-size': null;
  'larder-size-open': null;
  'larder-tint': null;
  'larder-tint-why': null;
  'larder-title': null;
  'larder-use-by': { day: string | number };
  'larder-use-by-field': null;
  'larder-used': null;
  'larder-used-up': null;
  'larder-water': null;
  'later-cannot-wait': null;
  'later-evening': null;
  'later-go': null;
  'later-hour': null;
  'later-own': null;
  'later-skip': null;
  'later-title': null;
  'later-tomorrow': null;
  'later-was-put-off': { need: string | number };
  'later-was-skipped': { need: string | number; why: string | number };
  'later-when': null;
  'later-why-leave-quiet': null;
  'later-why-nothing-in-the-house': null;
  'later-why-other': null;
  'later-why-still-food': null;
  'log-amount': null;
  'log-barrier-good': null;
  'log-boost': null;
  'log-boost-words': null;
  'log-bubble': null;
  'log-calm': null;
  'log-colour-only': null;
  'log-colour-seen': null;
  'log-colour-when': null;
  'log-count': null;
  'log-despite': null;
  'log-donor': null;
  'log-drag': null;
  'log-feeder-level': null;
  'log-filled': null;
  'log-food': null;
  'log-from': null;
  'log-from-elsewhere': null;
  'log-go': null;
  'log-guess': null;
  'log-how-many': null;
  'log-hydrate': null;
  'log-keep-note': null;
  'log-leftovers': null;
  'log-level': null;
  'log-lot': null;
  'log-males-only': null;
  'log-mm': null;
  'log-more': null;
  'log-more-brood': null;
  'log-mould-far': null;
  'log-mould-near': null;
  'log-mould-where': null;
  'log-move-words': null;
  'log-moved': null;
  'log-new-tube': null;
  'log-no-lot': null;
  'log-note': null;
  'log-offered': null;
  'log-offered-in': null;
  'log-outcome-later': { hours: number };
  'log-queens': null;
  'log-queens-hint': null;
  'log-read': null;
  'log-report': null;
  'log-size': null;
  'log-stop-hold': null;
  'log-stop-refuse': null;
  'log-stop-wait': null;
  'log-vessel-drop': null;
  'log-vessel-feeder': null;
  'log-what-became': null;
  'log-which-brood': null;
  'log-which-feeding': null;
  'log-workers': null;
  'log-wrong': null;
  'look-about': null;
  'look-all-parts': null;
  'look-as-phone': null;
  'look-buttons': null;
  'look-chips': null;
  'look-colour': null;
  'look-dark': null;
  'look-day': null;
  'look-degrees': null;
  'look-empty': null;
  'look-gauge': null;
  'look-icons': null;
  'look-light': null;
  'look-open-sheet': null;
  'look-red': null;
  'look-red-why': null;
  'look-sheet': null;
  'look-show-toast': null;
  'look-skeleton': null;
  'look-states': null;
  'look-stepper': null;
  'look-title': null;
  'look-toast': null;
  'look-type': null;
  'look-volumes': null;
  'measure-amount-drop': { count: number };
  'measure-amount-leaf': { count: number };
  'measure-amount-leg': { count: number };
  'measure-amount-mg': { count: string | number };
  'measure-amount-ml': { count: number };
  'measure-amount-piece': { count: number };
  'measure-amount-seed': { count: number };
  'measure-amount-slice': { count: number };
  'measure-ask-drop': null;
  'measure-ask-fl-oz': null;
  'measure-ask-leaf': null;
  'measure-ask-leg': null;
  'measure-ask-mg': null;
  'measure-ask-ml': null;
  'measure-ask-piece': null;
  'measure-ask-seed': null;
  'measure-ask-slice': null;
  'measure-fl-oz': null;
  'measure-mm': { mm: string | number };
  'measure-tint-blue': null;
  'measure-tint-green': null;
  'measure-tint-red': null;
  'measure-tint-yellow': null;
  'measure-unit-drop': { count: number };
  'measure-unit-leaf': { count: number };
  'measure-unit-leg': { count: number };
  'measure-unit-mg': null;
  'measure-unit-ml': null;
  'measure-unit-piece': { count: number };
  'measure-unit-seed': { count: number };
  'measure-unit-slice': { count: number };
  'need-barrier': null;
  'need-barrier.inside': null;
  'need-glance': null;
  'need-glance.inside': null;
  'need-leaves': null;
  'need-leaves.inside': null;
  'need-leftovers': null;
  'need-leftovers.inside': null;
  'need-protein': null;
  'need-protein.inside': null;
  'need-rest': null;
  'need-rest.inside': null;
  'need-room': null;
  'need-room.inside': null;
  'need-seeds': null;
  'need-seeds.inside': null;
  'need-sugar': null;
  'need-sugar.inside': null;
  'need-water': null;
  'need-water.inside': null;
  'notice-alone': { high: string | number; low: string | number };
  'notice-alone-fungus-grower': { high: string | number; low: string | number };
  'notice-alone-harvester': { high: string | number; low: string | number };
  'notice-brood-no-forecast': { high_c: number; low_c: number; value: number };
  'notice-census-fewer': { on: string | number; seen: string };
  'notice-census-later': { on: string | number; seen: string };
  'notice-census-more': { on: string | number; seen: string };
  'notice-census-sooner': { on: string | number; seen: string };
  'notice-claustral': null;
  'notice-claustral-fungus': null;
  'notice-cocoon-substrate': null;
  'notice-colder-than-set': { measured_c: number; set_c: number };
  'notice-colony-empty': null;
  'notice-coming-wide-flight': null;
  'notice-coming-wide-kind': null;
  'notice-coming-wide-look': null;
  'notice-eggs-too-cold': { weeks: string | number };
  'notice-eggs-without-larvae': { weeks: string | number };
  'notice-fed-queens-choice': null;
  'notice-first-food-now': { days: number };
  'notice-first-food-soon': { high: number; low: string | number };
  'notice-first-workers-in': { high: string | number; low: string | number; mean_c: number };
  'notice-founding-stalled': { days: number };
  'notice-gamergates': null;
  'notice-granary': null;
  'notice-keep-apart': { high: string | number; low: string | number };
  'notice-length-clamped': { given_mm: string | number; used_mm: string | number };
  'notice-males-only': null;
  'notice-mass-clamped-high': { limit_mg: string | number };
  'notice-mass-clamped-low': { limit_mg: string | number };
  'notice-next-workers-in': { high: string | number; low: string | number; mean_c: number };
  'notice-no-queen': null;
  'notice-note-host': null;
  'notice-parasitic': null;
  'notice-parasitic-hosts': null;
  'notice-parasitic-pupae': null;
  'notice-plan-failed': null;
  'notice-quarantine': null;
  'notice-quarantine-left': { high: string | number; low: string | number };
  'notice-quarantine-over': { days: number };
  'notice-queen-doubt': { weeks: string | number };
  'notice-queen-lays': null;
  'notice-queenless': null;
  'notice-quiet-for': { days: number };
  'notice-quiet-look': null;
  'notice-rest-after-first': {
    high_c: number;
    high_on: string | number;
    low_c: number;
    low_on: string | number;
    ramp_days: string | number;
  };
  'notice-rest-begins': {
    high: string | number;
    high_c: number;
    hours: string | number;
    low: string | number;
    low_c: number;
    ramp_days: string | number;
  };
  'notice-rest-begins-summer': { high: string | number; low: string | number };
  'notice-rest-by-sensor': { days: string | number; mean_c: number };
  'notice-rest-larvae-wait': { high: string | number; low: string | number };
  'notice-rest-may-end': { days: number };
  'notice-rest-missed': {
    high_c: number;
    high_months: string | number;
    low_c: number;
    low_months: string | number;
    ramp_days: string | number;
  };
  'notice-rest-no-brood': null;
  'notice-rest-over': { days: number };
  'notice-rest-over-by-sensor': { cold: string | number; days: string | number; mean_c: number };
  'notice-rest-unmarked': { high_c: number; low_c: number; mean_c: number };
  'notice-rest-window': { high_c: number; high_months: string | number; low_c: number; low_months: string | number };
  'notice-resting': null;
  'notice-resting-summer': null;
  'notice-semi-claustral': { high: string | number; low: string | number };
  'notice-semi-claustral-fungus-grower': { high: string | number; low: string | number };
  'notice-semi-claustral-harvester': { high: string | number; low: string | number };
  'notice-settles': { high: string | number; low: string | number };
  'notice-settling': null;
  'notice-species-unknown': null;
  'notice-stage-unknown': null;
  'notice-temperature-clamped': { mean_c: number; used_c: number };
  'notice-tint-in-brood': null;
  'notice-tint-in-gasters': null;
  'notice-tint-nowhere': null;
  'notice-tint-offered': null;
  'notice-too-cold-for-protein': { day_c: number; limit_c: number };
  'notice-too-cold-for-species': { day_c: number; limit_c: number };
  'notice-too-cold-perhaps-rest': { day_c: number; limit_c: number };
  'notice-wakes-in': { days: number };
  'notice-wakes-later': { later: number; warm: string | number };
  'notice-warmer-than-set': { measured_c: number; set_c: number };
  'notice-yearly-clock': null;
  'notice-yearly-clock-larvae': null;
  'notice-yearly-clock-larvae-summer': null;
  'notice-yearly-clock-none': null;
  'notice-yearly-clock-none-summer': null;
  'notice-yearly-clock-summer': null;
  'origin-bought-or-bred': null;
  'origin-garden-fruit': null;
  'origin-home-cockroach': null;
  'origin-home-mixed': null;
  'origin-hot-syrup': null;
  'origin-shop-fruit': null;
  'origin-unknown': null;
  'origin-why-bought-or-bred': null;
  'origin-why-garden-fruit': null;
  'origin-why-home-cockroach': null;
  'origin-why-home-mixed': null;
  'origin-why-hot-syrup': null;
  'origin-why-shop-fruit': null;
  'origin-why-unknown': null;
  'origin-why-wild-hunter': null;
  'origin-why-wild-insect': null;
  'origin-why-wild-web-spider': null;
  'origin-wild-hunter': null;
  'origin-wild-insect': null;
  'origin-wild-web-spider': null;
  'paper-ahead': null;
  'paper-by': null;
  'paper-call': null;
  'paper-colonies': null;
  'paper-colony': null;
  'paper-count': null;
  'paper-done': null;
  'paper-drop-of': { ul: string | number };
  'paper-event': null;
  'paper-gone': null;
  'paper-lives': null;
  'paper-made': { day: string | number };
  'paper-nothing': null;
  'paper-over': null;
  'paper-prey-of': { mm: number };
  'paper-print': null;
  'paper-record': { name: string | number };
  'paper-ruler': null;
  'paper-sheet': { who: string | number };
  'paper-species': null;
  'paper-true-size': null;
  'paper-what': null;
  'paper-when': null;
  'part-again': null;
  'part-labelled': { label: string | number; value: string | number };
  'part-labelled-twice': { first: string | number; label: string | number; second: string | number };
  'part-less': { label: string | number };
  'part-more': { label: string | number };
  'part-needs-server': null;
  'part-percent': { percent: string | number };
  'part-table': null;
  'phone-nudges-ask': null;
  'phone-nudges-done': null;
  'phone-nudges-elsewhere-unheard': { phone: string | number; who: string | number };
  'phone-nudges-elsewhere-unseen': { phone: string | number; who: string | number };
  'phone-nudges-in-an-hour': null;
  'phone-nudges-last': { when: string | number };
  'phone-nudges-none': null;
  'phone-nudges-not-heard': null;
  'phone-nudges-not-taken': { outcome: string | number };
  'phone-nudges-silent': { name: string | number };
  'phone-nudges-somebody': null;
  'phone-nudges-something': null;
  'phone-nudges-state-denied': null;
  'phone-nudges-state-install-first': null;
  'phone-nudges-state-off': null;
  'phone-nudges-state-on': null;
  'phone-nudges-state-unsupported': null;
  'phone-nudges-stop': null;
  'phone-nudges-test': null;
  'phone-nudges-tested-heard': null;
  'phone-nudges-tested-silent': null;
  'phone-nudges-tested-waiting': null;
  'phone-nudges-title': null;
  'photo-busy': null;
  'photo-elsewhere': null;
  'photo-large': { day: string | number };
  'photo-newer': null;
  'photo-of': { day: string | number; name: string | number };
  'photo-older': null;
  'photo-remove': null;
  'photo-take': null;
  'photo-title': null;
  'photo-too-large': null;
  'photo-unreadable': null;
  'place-about': null;
  'place-add': null;
  'place-bad-moist': null;
  'place-bad-temp': { unit: string | number };
  'place-change': null;
  'place-chart': null;
  'place-close': null;
  'place-day': { warm: string | number };
  'place-day-temp': { unit: string | number };
  'place-empty': null;
  'place-humidity': null;
  'place-last': { what: string | number; when: string | number };
  'place-log': null;
  'place-moist': { percent: string | number };
  'place-name': null;
  'place-night': { warm: string | number };
  'place-night-temp': { unit: string | number };
  'place-nobody': null;
  'place-none-yet': null;
  'place-nothing': null;
  'place-nowhere': null;
  'place-open': null;
  'place-reading': null;
  'place-sensors': null;
  'place-stands': null;
  'place-temperature': { unit: string | number };
  'place-title': null;
  'place-type': null;
  'place-type-cabinet': null;
  'place-type-cellar': null;
  'place-type-fridge': null;
  'place-type-room': null;
  'plan-clear': null;
  'plan-cleared': null;
  'plan-days': { count: number };
  'plan-every': { days: number };
  'plan-keep': null;
  'plan-kept': null;
  'plan-own': null;
  'plan-rhythm-at': { days: string | number; hour: string | number };
  'plan-rhythm-daily': null;
  'plan-rhythm-days': null;
  'plan-rhythm-hour': null;
  'plan-rhythm-open': null;
  'plan-rhythm-paused': { day: string | number };
  'plan-rhythm-title': { need: string | number };
  'plan-rhythm-until': null;
  'plan-rhythm-urgent': null;
  'plan-set': null;
  'plan-spread': { high: number; low: string | number };
  'portion-crumb': { food: string | number; n: number };
  'portion-drop': { food: string | number; n: number };
  'portion-leaf': { food: string | number; n: string | number };
  'portion-leg': { food: string | number; n: number };
  'portion-leg-sized': { food: string | number; n: number; size: string | number; size_class: string };
  'portion-mg': { food: string | number; n: string | number };
  'portion-ml': { food: string | number; n: number };
  'portion-piece': { food: string | number; n: string | number };
  'portion-piece-sized': { food: string | number; n: string | number; size: string | number };
  'portion-seed': { food: string | number; n: string | number };
  'portion-slice': { food: string | number; n: number };
  'portion-slice-sized': { food: string | number; n: number; size: string | number; size_class: string };
  'portion-with-form': { form: string | number; portion: string | number };
  'reason-air-step-close': null;
  'reason-air-step-open': null;
  'reason-air-step-still': null;
  'reason-amount-rules': { mg: string | number; mg_per_day: string | number };
  'reason-appetite-at-least': { checks: number; times: string | number };
  'reason-appetite-at-most': { checks: number; times: string | number };
  'reason-appetite-hidden': null;
  'reason-appetite-learnt': { checks: number; times: string | number };
  'reason-ask-stage': null;
  'reason-ask-workers': null;
  'reason-band-rules': { days: number; high: string | number; low: string | number };
  'reason-bank-rules': { days: number };
  'reason-barrier': null;
  'reason-barrier-step-bad': null;
  'reason-barrier-step-bridge': null;
  'reason-barrier-step-look': null;
  'reason-barrier-step-still': null;
  'reason-brood-grows': { larvae: number; mg_per_day: string | number; temp_c: number };
  'reason-census-guessed': { workers: string | number };
  'reason-census-old': { days: number };
  'reason-census-unknown': null;
  'reason-cooling-check': null;
  'reason-cooling-spread': null;
  'reason-crop-lasts': { days: number; temp_c: number };
  'reason-drop-step-place': null;
  'reason-drop-step-small': null;
  'reason-drop-step-take': null;
  'reason-dry-air': { humidity_pct: string | number; usual_pct: string | number };
  'reason-escape': null;
  'reason-fault-over': { days: number };
  'reason-feeder-step-back': null;
  'reason-feeder-step-fill': null;
  'reason-feeder-step-out': null;
  'reason-flood': null;
  'reason-food-step-bad': null;
  'reason-food-step-close': null;
  'reason-food-step-only': null;
  'reason-freezing': { limit_c: number; temperature_c: number };
  'reason-freshness-rules': { days: number };
  'reason-fridge-open': { temperature_c: number; usual_c: number };
  'reason-glance': { days: number };
  'reason-glance-step-bad': null;
  'reason-glance-step-calm': null;
  'reason-heater': null;
  'reason-heater-off': { by_c: number; hours: string | number; temperature_c: number };
  'reason-heater-on': { by_c: number; hours: string | number; temperature_c: number };
  'reason-helper-call': null;
  'reason-helper-dead': null;
  'reason-helper-escape': null;
  'reason-helper-fridge': null;
  'reason-helper-glance': null;
  'reason-helper-heater': null;
  'reason-helper-tell': null;
  'reason-helper-wet': null;
  'reason-ignored-did-not-count': null;
  'reason-interval-band': { high: string | number; low: string | number };
  'reason-interval-chosen': null;
  'reason-interval-keeper': { days: number };
  'reason-larder-amount-unknown': null;
  'reason-larder-lasts': { days: string | number };
  'reason-larder-out': null;
  'reason-larder-runs-out': {
    buy_by: string | number;
    early: string | number;
    lead: string | number;
    on: string | number;
  };
  'reason-larder-spoils': { amount: string | number; on: string | number };
  'reason-last-fed': { days: number };
  'reason-lasts-too-short': { lasts: number; need: string | number };
  'reason-leaf-step-place': null;
  'reason-leaf-step-rinse': null;
  'reason-leaf-step-take': null;
  'reason-leak': null;
  'reason-leak-suspected': { chance: string | number; days: number };
  'reason-left-step-bin': null;
  'reason-left-step-find': null;
  'reason-left-step-held': null;
  'reason-left-step-take': null;
  'reason-leftovers': { after: string | number; hours: number };
  'reason-maintenance-only': null;
  'reason-many-dead': null;
  'reason-mend-before': { fault: string | number };
  'reason-mites': null;
  'reason-mostly-nobody': null;
  'reason-mould': null;
  'reason-mould-far': null;
  'reason-mould-look': { days: number };
  'reason-mould-near': null;
  'reason-move-beside': null;
  'reason-move-darken': null;
  'reason-move-dry': null;
  'reason-move-flood': null;
  'reason-move-force': null;
  'reason-move-light': null;
  'reason-move-mould': null;
  'reason-move-no-shaking': null;
  'reason-move-wait': null;
  'reason-move-water-low': null;
  'reason-needs-nobody': { days: number };
  'reason-nest-step-bad': null;
  'reason-nest-step-drip': null;
  'reason-nest-step-drip-ml': { ml: number };
  'reason-nest-step-look': null;
  'reason-nest-step-place': null;
  'reason-nest-step-still': null;
  'reason-nest-step-stop': null;
  'reason-never-fed': null;
  'reason-never-tilt': null;
  'reason-no-brood-expected': null;
  'reason-no-larvae': null;
  'reason-offer-ends': null;
  'reason-offer-last': { days: number };
  'reason-offer-light': null;
  'reason-offer-look': { days: number };
  'reason-offer-water': null;
  'reason-overheating': { limit_c: number; source: string | number; temperature_c: number };
  'reason-piece-step-place': null;
  'reason-piece-step-take': null;
  'reason-portion-at-once': { days: number };
  'reason-portion-rises': null;
  'reason-portion-tiny': null;
  'reason-prey-banked': { days: string | number };
  'reason-prey-dead': null;
  'reason-prey-dead-in-tube': null;
  'reason-prey-dead-small': null;
  'reason-prey-first-third': null;
  'reason-prey-live': null;
  'reason-prey-most': { pieces: string | number };
  'reason-prey-piece': null;
  'reason-prey-rules': { days: number; mg: string | number };
  'reason-prey-size': { longest_mm: string | number };
  'reason-prey-smallest': { days: number };
  'reason-prey-step-cut': null;
  'reason-prey-step-place': null;
  'reason-prey-step-take': null;
  'reason-prey-stunned': null;
  'reason-prey-too-big-alive': null;
  'reason-prey-uncounted': null;
  'reason-protein-outweighs-sugar': { protein_mg: string | number; sugar_mg: string | number; weeks: string | number };
  'reason-quiet-season': null;
  'reason-refusal-food': null;
  'reason-refusal-state': null;
  'reason-rest-airing': { days: string | number };
  'reason-rest-colder': { limit_c: number; temperature_c: number };
  'reason-rest-frost': { coldest_c: number; limit_c: number };
  'reason-rest-not-for-species': { least_c: number; mean_c: number };
  'reason-rest-too-warm': { limit_c: number; mean_c: number };
  'reason-rest-water': { days: number; high: string | number; low: string | number };
  'reason-rising-fast': { limit_c: number; rise_c: number; source: string | number; temperature_c: number };
  'reason-risk-look': { day: string | number; days: number; of: string | number };
  'reason-risk-out': { hours: number };
  'reason-risk-signs': null;
  'reason-risk-step-signs': null;
  'reason-risk-times': null;
  'reason-room-fills': { best: number; high: string | number; low: string | number; room: string | number };
  'reason-room-fills-perhaps': { best: number; room: string | number };
  'reason-room-full': { room: string | number; workers: string | number };
  'reason-room-full-by-now': { days: number; room: string | number };
  'reason-room-growth': { counts: number; doubling: string | number };
  'reason-seed-step-place': null;
  'reason-seed-step-take': null;
  'reason-settling': null;
  'reason-slow-species': null;
  'reason-sugar-dissolve-warm': null;
  'reason-sugar-good-range': null;
  'reason-sugar-near-saturation': { limit: string | number };
  'reason-sugar-thick': null;
  'reason-sugar-thin': null;
  'reason-tasting-check-first': null;
  'reason-tasting-learn-more': { offers: number; share: string | number };
  'reason-tasting-likes': { share: string | number };
  'reason-tasting-need-paused': null;
  'reason-tasting-new-food': { days: string | number };
  'reason-tasting-no-safe-food': null;
  'reason-tasting-not-now': { state: string };
  'reason-tasting-not-started': null;
  'reason-tasting-wait': { until: string | number };
  'reason-too-cold': { limit_c: number; source: string | number; temperature_c: number };
  'reason-too-hot': { limit_c: number; source: string | number; temperature_c: number };
  'reason-tube-step-bad': null;
  'reason-tube-step-find': null;
  'reason-tube-step-good': null;
  'reason-tube-step-still': null;
  'reason-wake-up': { ramp_days: string | number };
  'reason-wake-up-summer': null;
  'reason-water-damp-end': null;
  'reason-water-drinker': null;
  'reason-water-fill': { ml: number };
  'reason-water-learnt': { high: string | number; low: string | number };
  'reason-water-left-out': null;
  'reason-water-length-guessed': { mm: string | number };
  'reason-water-length-unknown': null;
  'reason-water-look': null;
  'reason-water-look-again': { days: number };
  'reason-water-nest': null;
  'reason-water-physics': null;
  'reason-water-read': { days: number; last: string | number; reading: string | number };
  'reason-water-unread': { last: string | number };
  'reason-workers-fell-to-zero': null;
  'reckon-brood': null;
  'reckon-cooling': null;
  'reckon-dilute': null;
  'reckon-formula-brood': null;
  'reckon-formula-cooling': null;
  'reckon-formula-dilute': null;
  'reckon-formula-prey': null;
  'reckon-formula-sugar-water': null;
  'reckon-formula-tube-water': null;
  'reckon-limits-brood': null;
  'reckon-limits-cooling': null;
  'reckon-limits-dilute': null;
  'reckon-limits-prey': null;
  'reckon-limits-sugar-water': null;
  'reckon-limits-tube-water': null;
  'reckon-prey': null;
  'reckon-source-brood': null;
  'reckon-source-cooling': null;
  'reckon-source-dilute': null;
  'reckon-source-prey': null;
  'reckon-source-sugar-water': null;
  'reckon-source-tube-water': null;
  'reckon-sugar-water': null;
  'reckon-tube-water': null;
  'refused-a-year': null;
  'refused-cannot-wait': { hours: string | number };
  'refused-choice': null;
  'refused-day': null;
  'refused-empty': null;
  'refused-form': null;
  'refused-instant': null;
  'refused-number': { high: string | number; low: string | number };
  'refused-other-kind': null;
  'refused-pass-end': null;
  'refused-text': { most: string | number };
  'round-add': null;
  'round-all': { colony: string | number; count: number };
  'round-as-suggested': null;
  'round-by': { who: string | number };
  'round-calm': null;
  'round-change': null;
  'round-count': null;
  'round-done': null;
  'round-done-short': null;
  'round-due-days': { days: number };
  'round-due-hours': { hours: number };
  'round-due-never': null;
  'round-due-now': null;
  'round-due-since': { days: number };
  'round-empty-shelf': null;
  'round-finished': null;
  'round-joined': { count: number };
  'round-joining': null;
  'round-later': null;
  'round-many': null;
  'round-moved': null;
  'round-next': null;
  'round-next-at': { day: string | number };
  'round-not-moved': null;
  'round-now': null;
  'round-offered': null;
  'round-other': null;
  'round-progress': { part: string | number; whole: string | number };
  'round-quiet': null;
  'round-resolved': null;
  'round-title': null;
  'round-today': null;
  'round-undo': null;
  'round-urgent': null;
  'round-why': null;
  'saving-asks-sign-in': null;
  'saving-attention': { count: number };
  'saving-failed': null;
  'saving-joining': null;
  'saving-no-connection': null;
  'saving-not-saved': null;
  'saving-not-signed-in': null;
  'saving-offline': null;
  'saving-problem-database-away': null;
  'saving-problem-database-damaged': null;
  'saving-problem-database-locked': null;
  'saving-problem-database-read-only': null;
  'saving-problem-disk-full': null;
  'saving-saved': null;
  'saving-state-attention': null;
  'saving-state-saved': null;
  'saving-state-synced': null;
  'saving-synced': null;
  'saving-syncing': null;
  'saving-taken-back': null;
  'saving-told-backup-old': { day: string | number };
  'saving-told-database-damaged': null;
  'saving-unsent-title': null;
  'saving-waiting': { count: string | number };
  'sensor-about': null;
  'sensor-add': null;
  'sensor-address': { url: string | number };
  'sensor-away': { when: string | number };
  'sensor-broken': { when: string | number };
  'sensor-copied': null;
  'sensor-copy': null;
  'sensor-end': null;
  'sensor-end-sure': null;
  'sensor-file': null;
  'sensor-heard': { when: string | number };
  'sensor-here': null;
  'sensor-humidity-path': null;
  'sensor-keep': null;
  'sensor-listen': null;
  'sensor-make': null;
  'sensor-name': null;
  'sensor-never': null;
  'sensor-none': null;
  'sensor-now': { what: string | number };
  'sensor-offline': null;
  'sensor-once': null;
  'sensor-path-hint': null;
  'sensor-temperature-path': null;
  'sensor-through': { broker: string | number };
  'sensor-title': null;
  'sensor-topic': null;
  'sensor-topic-hint': { topics: string | number };
  'sensor-unit': null;
  'sensor-way': null;
  'several-go': { count: number };
  'several-look': null;
  'several-none': null;
  'several-title': null;
  'several-water': null;
  'several-what': null;
  'several-who': null;
  'shelf-labels': null;
  'shelf-level': { level: string | number; need: string | number };
  'shelf-next': { due: string | number; need: string | number };
  'shelf-no-plan': null;
  'shelf-none': null;
  'shelf-scan': null;
  'shelf-search': null;
  'shelf-species-unknown': null;
  'shelf-title': null;
  'size-extra-small': null;
  'size-large': null;
  'size-medium': null;
  'size-small': null;
  'size-tiny': null;
  'source-common-practice': null;
  'species-acromyrmex': null;
  'species-acromyrmex.common': null;
  'species-aphaenogaster': null;
  'species-atta': null;
  'species-atta.common': null;
  'species-camponotus-consobrinus': null;
  'species-camponotus-fulvopilosus': null;
  'species-camponotus-herculeanus': null;
  'species-camponotus-inflatus': null;
  'species-camponotus-inflatus.common': null;
  'species-camponotus-japonicus': null;
  'species-camponotus-japonicus.common': null;
  'species-camponotus-ligniperda': null;
  'species-camponotus-maculatus': null;
  'species-camponotus-nicobarensis': null;
  'species-camponotus-pennsylvanicus': null;
  'species-camponotus-pennsylvanicus.common': null;
  'species-camponotus-southern': null;
  'species-camponotus-tropical': null;
  'species-camponotus-vicinus': null;
  'species-carebara-diversa': null;
  'species-carebara-diversa.common': null;
  'species-cataglyphis': null;
  'species-cataglyphis.common': null;
  'species-crematogaster': null;
  'species-crematogaster.common': null;
  'species-diacamma': null;
  'species-ectatomma': null;
  'species-formica-fusca': null;
  'species-formica-fusca.common': null;
  'species-formica-subsericea': null;
  'species-harpegnathos': null;
  'species-harpegnathos.common': null;
  'species-iridomyrmex-purpureus': null;
  'species-iridomyrmex-purpureus.common': null;
  'species-lasius-flavus': null;
  'species-lasius-flavus.common': null;
  'species-lasius-neoniger': null;
  'species-lasius-niger': null;
  'species-lasius-niger.common': null;
  'species-lasius-parasitic': null;
  'species-manica-rubida': null;
  'species-melophorus-bagoti': null;
  'species-melophorus-bagoti.common': null;
  'species-messor-aciculatus': null;
  'species-messor-barbarus': null;
  'species-messor-barbarus.common': null;
  'species-messor-capensis': null;
  'species-messor-structor': null;
  'species-myrmecia-large': null;
  'species-myrmecia-large.common': null;
  'species-myrmecia-pilosula': null;
  'species-myrmecia-pilosula.common': null;
  'species-myrmecocystus': null;
  'species-myrmecocystus.common': null;
  'species-myrmica-rubra': null;
  'species-myrmica-rubra.common': null;
  'species-novomessor': null;
  'species-odontomachus': null;
  'species-odontomachus.common': null;
  'species-oecophylla': null;
  'species-oecophylla.common': null;
  'species-paraponera-clavata': null;
  'species-paraponera-clavata.common': null;
  'species-pheidole-pallidula': null;
  'species-pheidole-pallidula.common': null;
  'species-pheidole-tropical': null;
  'species-plagiolepis': null;
  'species-plagiolepis.common': null;
  'species-pogonomyrmex': null;
  'species-pogonomyrmex.common': null;
  'species-polyrhachis': null;
  'species-polyrhachis.common': null;
  'species-prenolepis': null;
  'species-prenolepis.common': null;
  'species-rhytidoponera-metallica': null;
  'species-rhytidoponera-metallica.common': null;
  'species-solenopsis-fugax': null;
  'species-solenopsis-fugax.common': null;
  'species-temnothorax': null;
  'species-temnothorax.common': null;
  'species-tetramorium': null;
  'species-tetramorium.common': null;
  'species-veromessor-pergandei': null;
  'species-veromessor-pergandei.common': null;
  'stalled-about': null;
  'stalled-days': { days: number };
  'stalled-fed-1': null;
  'stalled-fed-2': null;
  'stalled-fed-3': null;
  'stalled-last-1': null;
  'stalled-last-2': null;
  'stalled-title': null;
  'stalled-unfed-1': null;
  'stalled-unfed-2': null;
  'stalled-unfed-3': null;
  'stalled-unfed-4': null;
  'stand-in-call': { who: string | number };
  'stand-in-calm': null;
  'stand-in-could-not': null;
  'stand-in-from': { day: string | number };
  'stand-in-from-keeper': null;
  'stand-in-gave': null;
  'stand-in-hint': null;
  'stand-in-hint-about': null;
  'stand-in-hint-example': null;
  'stand-in-hint-picture': null;
  'stand-in-how': null;
  'stand-in-looked': null;
  'stand-in-note': { task: string | number; why: string | number };
  'stand-in-nothing': null;
  'stand-in-practice': null;
  'stand-in-quiet': null;
  'stand-in-read-aloud': null;
  'stand-in-today': { count: number; minutes: string | number };
  'stand-in-told': null;
  'stand-in-took': null;
  'stand-in-watered': null;
  'stand-in-why': null;
  'stand-in-why-away': null;
  'stand-in-why-closed': null;
  'stand-in-why-none': null;
  'stand-in-why-other': null;
  'stand-in-why-unsure': null;
  'stand-in-yours': null;
  'start-back': null;
  'start-claim': null;
  'start-claim-it': null;
  'start-code': null;
  'start-code-hint': null;
  'start-come-in': null;
  'start-handed': null;
  'start-handed-what': null;
  'start-have-code': null;
  'start-have-pass': null;
  'start-join': null;
  'start-join-how': null;
  'start-join-one': null;
  'start-known': { name: string | number };
  'start-language': null;
  'start-more': null;
  'start-only-a-look': { count: number; from: string | number; to: string | number };
  'start-open-pass': null;
  'start-our-shelf': null;
  'start-pass': null;
  'start-pass-hint': null;
  'start-phone-name': { system: string | number };
  'start-phone-unnamed': null;
  'start-shelf-name': null;
  'start-waiting': null;
  'start-welcome': null;
  'start-what': null;
  'start-your-name': null;
  'start-zone': null;
  'tasting-about': null;
  'tasting-best': { percent: string | number };
  'tasting-days': { from: string | number; to: string | number };
  'tasting-earlier': null;
  'tasting-end': null;
  'tasting-ended': null;
  'tasting-favourite': null;
  'tasting-food': null;
  'tasting-foods': null;
  'tasting-go': null;
  'tasting-here': null;
  'tasting-kind': null;
  'tasting-next': { due: string | number; food: string | number };
  'tasting-none': null;
  'tasting-not-now': { state: string | number };
  'tasting-not-offered': null;
  'tasting-offered': null;
  'tasting-offers': { count: number };
  'tasting-offers-and-likes': { count: number; others: number };
  'tasting-part': { name: string | number };
  'tasting-pick': null;
  'tasting-range': null;
  'tasting-share': null;
  'tasting-since': { day: string | number };
  'tasting-spread': null;
  'tasting-started': null;
  'tasting-taken': { high: string | number; low: string | number; mean: string | number };
  'tasting-tally': { checked: number; food: string | number; taken: string | number };
  'tasting-title': null;
  'tasting-told': null;
  'tasting-unchecked': { food: string | number };
  'tasting-wait': null;
  'todo-ask': null;
  'todo-barrier': null;
  'todo-dry-air': null;
  'todo-freezing': null;
  'todo-fridge-open': null;
  'todo-glance': null;
  'todo-heater-off': null;
  'todo-heater-on': null;
  'todo-leak': null;
  'todo-leftovers': null;
  'todo-mould-look': null;
  'todo-move-end': null;
  'todo-move-look': null;
  'todo-overheating': null;
  'todo-rest': null;
  'todo-rest-air': null;
  'todo-rest-fits': null;
  'todo-rising-fast': null;
  'todo-risk-look': null;
  'todo-room': null;
  'todo-too-cold': null;
  'todo-too-hot': null;
  'todo-wake-up': null;
  'todo-water': null;
  'todo-water-look': null;
  'travel-dark-and-calm': null;
  'travel-double-lid': null;
  'travel-never-tilt': null;
  'travel-no-loose-liquid': null;
  'travel-plugs-tight': null;
  'travel-quiet-after': { high: string | number; low: string | number };
  'travel-travel-warmth': { high_c: number; low_c: number };
  'vessel-nest-cast': null;
  'vessel-nest-large': null;
  'vessel-nest-medium': null;
  'vessel-nest-small': null;
  'vessel-nest-tiny': null;
  'vessel-outworld-large': null;
  'vessel-outworld-medium': null;
  'vessel-outworld-small': null;
  'vessel-setup-natural': null;
  'vessel-tube-10x70': null;
  'vessel-tube-12x75': null;
  'vessel-tube-13x100': null;
  'vessel-tube-16x100': null;
  'vessel-tube-16x125': null;
  'vessel-tube-16x150': null;
  'vessel-tube-18x150': null;
  'vessel-tube-20x125': null;
  'vessel-tube-20x150': null;
  'vessel-tube-25x150': null;
  'vessel-tube-25x200': null;
  'welcome-again': null;
  'welcome-android-1': null;
  'welcome-android-2': null;
  'welcome-android-3': null;
  'welcome-desktop-1': null;
  'welcome-desktop-2': null;
  'welcome-desktop-3': null;
  'welcome-go': null;
  'welcome-install': null;
  'welcome-installed': null;
  'welcome-ios-1': null;
  'welcome-ios-2': null;
  'welcome-ios-3': null;
  'welcome-nothing': null;
  'welcome-now': null;
  'welcome-plan': null;
  'welcome-title': { name: string | number };
  'welcome-wait': null;
  'welcome-why-install': null;
}

/** What the ids of some messages begin with. */
export type Group =
  | 'attention'
  | 'attention-again'
  | 'attention-code'
  | 'attention-code-kind'
  | 'attention-code-last'
  | 'attention-code-missing'
  | 'attention-code-not'
  | 'attention-code-outside'
  | 'attention-code-parent'
  | 'attention-code-too'
  | 'attention-code-unknown'
  | 'attention-other'
  | 'brood'
  | 'brood-any'
  | 'brood-ask'
  | 'brood-ask-by'
  | 'brood-ask-cannot'
  | 'brood-ask-not'
  | 'brood-ask-now'
  | 'brood-at'
  | 'brood-days'
  | 'brood-line'
  | 'brood-line-count'
  | 'brood-line-count-large'
  | 'brood-line-count-small'
  | 'brood-line-mark'
  | 'brood-line-reach'
  | 'brood-line-stage'
  | 'brood-line-stage-large'
  | 'brood-line-stage-small'
  | 'brood-no'
  | 'brood-not'
  | 'brood-source'
  | 'brood-source-slow'
  | 'brood-why'
  | 'brood-why-larvae'
  | 'brood-why-larvae-census'
  | 'brood-why-moved'
  | 'brood-why-moved-census'
  | 'brood-why-seen'
  | 'calculator'
  | 'calculator-back'
  | 'calculator-choice'
  | 'calculator-choice-small'
  | 'calculator-in'
  | 'calculator-input'
  | 'calculator-input-bore'
  | 'calculator-input-day'
  | 'calculator-input-dilute'
  | 'calculator-input-from'
  | 'calculator-input-humidity'
  | 'calculator-input-hunts'
  | 'calculator-input-hunts-by'
  | 'calculator-input-in'
  | 'calculator-input-later'
  | 'calculator-input-length'
  | 'calculator-input-mol'
  | 'calculator-input-mol-per'
  | 'calculator-input-night'
  | 'calculator-input-parts'
  | 'calculator-input-prey'
  | 'calculator-input-protein'
  | 'calculator-input-reservoir'
  | 'calculator-input-room'
  | 'calculator-input-sugar'
  | 'calculator-input-temp'
  | 'calculator-input-to'
  | 'calculator-input-water'
  | 'calculator-input-worker'
  | 'calculator-left'
  | 'calculator-may'
  | 'calculator-may-be'
  | 'calculator-unit'
  | 'calculator-unit-by'
  | 'calculator-unit-mg'
  | 'calculator-unit-mol'
  | 'calculator-up'
  | 'calculator-usual'
  | 'calculator-usual-night'
  | 'calculator-usual-protein'
  | 'calculator-usual-worker'
  | 'calendar'
  | 'calendar-address'
  | 'caution'
  | 'caution-dead'
  | 'caution-never'
  | 'caution-sting'
  | 'chart'
  | 'chart-due'
  | 'chart-few'
  | 'chart-food'
  | 'chart-growth'
  | 'chart-no'
  | 'chart-water'
  | 'climate'
  | 'climate-bad'
  | 'climate-basis'
  | 'climate-date'
  | 'climate-date-form'
  | 'climate-degree'
  | 'climate-degree-days'
  | 'climate-file'
  | 'climate-found'
  | 'climate-give'
  | 'climate-humidity'
  | 'climate-key'
  | 'climate-measured'
  | 'climate-new'
  | 'climate-new-hours'
  | 'climate-no'
  | 'climate-span'
  | 'climate-span-of'
  | 'climate-temperature'
  | 'climate-time'
  | 'climate-too'
  | 'climate-zone'
  | 'climate-zone-of'
  | 'colony'
  | 'colony-condition'
  | 'colony-condition-given'
  | 'colony-condition-queenless'
  | 'colony-form'
  | 'colony-form-fate'
  | 'colony-form-fate-came'
  | 'colony-form-fate-died'
  | 'colony-form-fate-rests'
  | 'colony-form-fate-wakes'
  | 'colony-form-fate-went'
  | 'colony-form-length'
  | 'colony-form-not'
  | 'colony-form-own'
  | 'colony-form-own-founding'
  | 'colony-form-own-founding-semi'
  | 'colony-form-own-guild'
  | 'colony-form-own-guild-fungus'
  | 'colony-form-own-vessel'
  | 'colony-form-species'
  | 'colony-gone'
  | 'colony-no'
  | 'colony-stage'
  | 'counting'
  | 'counting-hint'
  | 'counting-sets'
  | 'counting-spans'
  | 'counting-take'
  | 'diary'
  | 'event'
  | 'event-brood'
  | 'event-brood-added'
  | 'event-brood-seen'
  | 'event-coarse'
  | 'event-colour'
  | 'event-colour-seen'
  | 'event-counted'
  | 'event-kind'
  | 'event-males'
  | 'event-outcome'
  | 'event-read'
  | 'event-reading'
  | 'event-reading-three'
  | 'event-stage'
  | 'event-water'
  | 'event-water-new'
  | 'event-workers'
  | 'event-workers-at'
  | 'fault'
  | 'fault-many'
  | 'food'
  | 'food-canary'
  | 'food-dandelion'
  | 'food-fruit'
  | 'food-honey'
  | 'food-hunting'
  | 'food-maple'
  | 'food-protein'
  | 'food-roach'
  | 'food-sugar'
  | 'food-web'
  | 'food-white'
  | 'form'
  | 'form-whole'
  | 'frame'
  | 'frame-banner'
  | 'frame-banner-ended'
  | 'frame-banner-ended-device'
  | 'frame-banner-ended-pass'
  | 'frame-banner-ended-session'
  | 'frame-banner-sign'
  | 'frame-banner-signed'
  | 'frame-banner-update'
  | 'frame-banner-use'
  | 'frame-clock'
  | 'frame-nav'
  | 'handover'
  | 'handover-by'
  | 'handover-done'
  | 'handover-link'
  | 'handover-make'
  | 'handover-new'
  | 'handover-preview'
  | 'handover-share'
  | 'handover-state'
  | 'handover-stings'
  | 'handover-take'
  | 'history'
  | 'history-field'
  | 'history-field-acquired'
  | 'history-field-after'
  | 'history-field-amount'
  | 'history-field-backup'
  | 'history-field-backup-patience'
  | 'history-field-bore'
  | 'history-field-came'
  | 'history-field-care'
  | 'history-field-colony'
  | 'history-field-colour'
  | 'history-field-condition'
  | 'history-field-day'
  | 'history-field-day-temp'
  | 'history-field-died'
  | 'history-field-donor'
  | 'history-field-donor-colony'
  | 'history-field-emergency'
  | 'history-field-ended'
  | 'history-field-ends'
  | 'history-field-feeding'
  | 'history-field-finished'
  | 'history-field-food'
  | 'history-field-founded'
  | 'history-field-founding'
  | 'history-field-fresh'
  | 'history-field-got'
  | 'history-field-happened'
  | 'history-field-has'
  | 'history-field-helper'
  | 'history-field-helper-photo'
  | 'history-field-hold'
  | 'history-field-host'
  | 'history-field-host-species'
  | 'history-field-humidity'
  | 'history-field-interval'
  | 'history-field-leftovers'
  | 'history-field-length'
  | 'history-field-level'
  | 'history-field-lot'
  | 'history-field-males'
  | 'history-field-mould'
  | 'history-field-mould-near'
  | 'history-field-night'
  | 'history-field-night-temp'
  | 'history-field-paused'
  | 'history-field-percent'
  | 'history-field-photo'
  | 'history-field-place'
  | 'history-field-quiet'
  | 'history-field-resolved'
  | 'history-field-resting'
  | 'history-field-size'
  | 'history-field-species'
  | 'history-field-started'
  | 'history-field-starts'
  | 'history-field-stinging'
  | 'history-field-stinging-ok'
  | 'history-field-tasting'
  | 'history-field-temperature'
  | 'history-field-use'
  | 'history-field-vessel'
  | 'history-field-went'
  | 'history-field-worker'
  | 'history-field-worker-length'
  | 'history-field-workers'
  | 'history-field-workers-at'
  | 'history-gone'
  | 'history-gone-take'
  | 'history-not'
  | 'history-register'
  | 'history-value'
  | 'history-value-action'
  | 'history-value-degrees'
  | 'history-value-form'
  | 'history-value-how'
  | 'history-value-how-on'
  | 'history-value-how-on-its'
  | 'history-value-volumes'
  | 'holiday'
  | 'holiday-top'
  | 'holiday-verdict'
  | 'holiday-verdict-nobody'
  | 'holiday-verdict-nobody-after'
  | 'holiday-verdict-nobody-after-top'
  | 'house'
  | 'house-backup'
  | 'house-backup-patience'
  | 'house-door'
  | 'house-door-link'
  | 'house-door-link-made'
  | 'house-door-link-made-by'
  | 'house-door-new'
  | 'house-door-new-phone'
  | 'house-door-new-phone-by'
  | 'house-door-pass'
  | 'house-door-pass-ended'
  | 'house-door-pass-ended-by'
  | 'house-door-person'
  | 'house-door-person-removed'
  | 'house-door-person-removed-by'
  | 'house-door-phone'
  | 'house-door-phone-removed'
  | 'house-door-phone-removed-by'
  | 'house-door-way'
  | 'house-door-way-back'
  | 'house-door-way-back-by'
  | 'house-door-wrong'
  | 'house-door-wrong-codes'
  | 'house-door-wrong-codes-by'
  | 'house-doors'
  | 'house-good'
  | 'house-good-to'
  | 'house-language'
  | 'house-language-as'
  | 'house-last'
  | 'house-leave'
  | 'house-let'
  | 'house-look'
  | 'house-mail'
  | 'house-mail-not'
  | 'house-new'
  | 'house-new-phone'
  | 'house-not'
  | 'house-nothing'
  | 'house-on'
  | 'house-on-this'
  | 'house-quiet'
  | 'house-shelf'
  | 'house-sign'
  | 'house-sign-out'
  | 'house-somebody'
  | 'house-sync'
  | 'house-this'
  | 'label'
  | 'label-no'
  | 'label-scan'
  | 'larder'
  | 'larder-batch'
  | 'larder-by'
  | 'larder-get'
  | 'larder-left'
  | 'larder-no'
  | 'larder-of'
  | 'larder-size'
  | 'larder-tint'
  | 'larder-use'
  | 'larder-use-by'
  | 'larder-used'
  | 'later'
  | 'later-cannot'
  | 'later-was'
  | 'later-was-put'
  | 'later-why'
  | 'later-why-leave'
  | 'later-why-nothing'
  | 'later-why-nothing-in'
  | 'later-why-nothing-in-the'
  | 'later-why-still'
  | 'log'
  | 'log-barrier'
  | 'log-boost'
  | 'log-colour'
  | 'log-feeder'
  | 'log-from'
  | 'log-how'
  | 'log-keep'
  | 'log-males'
  | 'log-more'
  | 'log-mould'
  | 'log-move'
  | 'log-new'
  | 'log-no'
  | 'log-offered'
  | 'log-outcome'
  | 'log-queens'
  | 'log-stop'
  | 'log-vessel'
  | 'log-what'
  | 'log-which'
  | 'look'
  | 'look-all'
  | 'look-as'
  | 'look-open'
  | 'look-red'
  | 'look-show'
  | 'measure'
  | 'measure-amount'
  | 'measure-ask'
  | 'measure-ask-fl'
  | 'measure-fl'
  | 'measure-tint'
  | 'measure-unit'
  | 'need'
  | 'notice'
  | 'notice-alone'
  | 'notice-alone-fungus'
  | 'notice-brood'
  | 'notice-brood-no'
  | 'notice-census'
  | 'notice-claustral'
  | 'notice-cocoon'
  | 'notice-colder'
  | 'notice-colder-than'
  | 'notice-colony'
  | 'notice-coming'
  | 'notice-coming-wide'
  | 'notice-eggs'
  | 'notice-eggs-too'
  | 'notice-eggs-without'
  | 'notice-fed'
  | 'notice-fed-queens'
  | 'notice-first'
  | 'notice-first-food'
  | 'notice-first-workers'
  | 'notice-founding'
  | 'notice-keep'
  | 'notice-length'
  | 'notice-males'
  | 'notice-mass'
  | 'notice-mass-clamped'
  | 'notice-next'
  | 'notice-next-workers'
  | 'notice-no'
  | 'notice-note'
  | 'notice-parasitic'
  | 'notice-plan'
  | 'notice-quarantine'
  | 'notice-queen'
  | 'notice-quiet'
  | 'notice-rest'
  | 'notice-rest-after'
  | 'notice-rest-begins'
  | 'notice-rest-by'
  | 'notice-rest-larvae'
  | 'notice-rest-may'
  | 'notice-rest-no'
  | 'notice-rest-over'
  | 'notice-rest-over-by'
  | 'notice-resting'
  | 'notice-semi'
  | 'notice-semi-claustral'
  | 'notice-semi-claustral-fungus'
  | 'notice-species'
  | 'notice-stage'
  | 'notice-temperature'
  | 'notice-tint'
  | 'notice-tint-in'
  | 'notice-too'
  | 'notice-too-cold'
  | 'notice-too-cold-for'
  | 'notice-too-cold-perhaps'
  | 'notice-wakes'
  | 'notice-warmer'
  | 'notice-warmer-than'
  | 'notice-yearly'
  | 'notice-yearly-clock'
  | 'notice-yearly-clock-larvae'
  | 'notice-yearly-clock-none'
  | 'origin'
  | 'origin-bought'
  | 'origin-bought-or'
  | 'origin-garden'
  | 'origin-home'
  | 'origin-hot'
  | 'origin-shop'
  | 'origin-why'
  | 'origin-why-bought'
  | 'origin-why-bought-or'
  | 'origin-why-garden'
  | 'origin-why-home'
  | 'origin-why-hot'
  | 'origin-why-shop'
  | 'origin-why-wild'
  | 'origin-why-wild-web'
  | 'origin-wild'
  | 'origin-wild-web'
  | 'paper'
  | 'paper-drop'
  | 'paper-prey'
  | 'paper-true'
  | 'part'
  | 'part-labelled'
  | 'part-needs'
  | 'phone'
  | 'phone-nudges'
  | 'phone-nudges-elsewhere'
  | 'phone-nudges-in'
  | 'phone-nudges-in-an'
  | 'phone-nudges-not'
  | 'phone-nudges-state'
  | 'phone-nudges-state-install'
  | 'phone-nudges-tested'
  | 'photo'
  | 'photo-too'
  | 'place'
  | 'place-bad'
  | 'place-day'
  | 'place-night'
  | 'place-none'
  | 'place-type'
  | 'plan'
  | 'plan-rhythm'
  | 'portion'
  | 'portion-leg'
  | 'portion-piece'
  | 'portion-slice'
  | 'portion-with'
  | 'reason'
  | 'reason-air'
  | 'reason-air-step'
  | 'reason-amount'
  | 'reason-appetite'
  | 'reason-appetite-at'
  | 'reason-ask'
  | 'reason-band'
  | 'reason-bank'
  | 'reason-barrier'
  | 'reason-barrier-step'
  | 'reason-brood'
  | 'reason-census'
  | 'reason-cooling'
  | 'reason-crop'
  | 'reason-drop'
  | 'reason-drop-step'
  | 'reason-dry'
  | 'reason-fault'
  | 'reason-feeder'
  | 'reason-feeder-step'
  | 'reason-food'
  | 'reason-food-step'
  | 'reason-freshness'
  | 'reason-fridge'
  | 'reason-glance'
  | 'reason-glance-step'
  | 'reason-heater'
  | 'reason-helper'
  | 'reason-ignored'
  | 'reason-ignored-did'
  | 'reason-ignored-did-not'
  | 'reason-interval'
  | 'reason-larder'
  | 'reason-larder-amount'
  | 'reason-larder-runs'
  | 'reason-last'
  | 'reason-lasts'
  | 'reason-lasts-too'
  | 'reason-leaf'
  | 'reason-leaf-step'
  | 'reason-leak'
  | 'reason-left'
  | 'reason-left-step'
  | 'reason-maintenance'
  | 'reason-many'
  | 'reason-mend'
  | 'reason-mostly'
  | 'reason-mould'
  | 'reason-move'
  | 'reason-move-no'
  | 'reason-move-water'
  | 'reason-needs'
  | 'reason-nest'
  | 'reason-nest-step'
  | 'reason-nest-step-drip'
  | 'reason-never'
  | 'reason-no'
  | 'reason-no-brood'
  | 'reason-offer'
  | 'reason-piece'
  | 'reason-piece-step'
  | 'reason-portion'
  | 'reason-portion-at'
  | 'reason-prey'
  | 'reason-prey-dead'
  | 'reason-prey-dead-in'
  | 'reason-prey-first'
  | 'reason-prey-step'
  | 'reason-prey-too'
  | 'reason-prey-too-big'
  | 'reason-protein'
  | 'reason-protein-outweighs'
  | 'reason-quiet'
  | 'reason-refusal'
  | 'reason-rest'
  | 'reason-rest-not'
  | 'reason-rest-not-for'
  | 'reason-rest-too'
  | 'reason-rising'
  | 'reason-risk'
  | 'reason-risk-step'
  | 'reason-room'
  | 'reason-room-fills'
  | 'reason-room-full'
  | 'reason-room-full-by'
  | 'reason-seed'
  | 'reason-seed-step'
  | 'reason-slow'
  | 'reason-sugar'
  | 'reason-sugar-dissolve'
  | 'reason-sugar-good'
  | 'reason-sugar-near'
  | 'reason-tasting'
  | 'reason-tasting-check'
  | 'reason-tasting-learn'
  | 'reason-tasting-need'
  | 'reason-tasting-new'
  | 'reason-tasting-no'
  | 'reason-tasting-no-safe'
  | 'reason-tasting-not'
  | 'reason-too'
  | 'reason-tube'
  | 'reason-tube-step'
  | 'reason-wake'
  | 'reason-wake-up'
  | 'reason-water'
  | 'reason-water-damp'
  | 'reason-water-left'
  | 'reason-water-length'
  | 'reason-water-look'
  | 'reason-workers'
  | 'reason-workers-fell'
  | 'reason-workers-fell-to'
  | 'reckon'
  | 'reckon-formula'
  | 'reckon-formula-sugar'
  | 'reckon-formula-tube'
  | 'reckon-limits'
  | 'reckon-limits-sugar'
  | 'reckon-limits-tube'
  | 'reckon-source'
  | 'reckon-source-sugar'
  | 'reckon-source-tube'
  | 'reckon-sugar'
  | 'reckon-tube'
  | 'refused'
  | 'refused-a'
  | 'refused-cannot'
  | 'refused-other'
  | 'refused-pass'
  | 'round'
  | 'round-as'
  | 'round-done'
  | 'round-due'
  | 'round-empty'
  | 'round-next'
  | 'round-not'
  | 'saving'
  | 'saving-asks'
  | 'saving-asks-sign'
  | 'saving-no'
  | 'saving-not'
  | 'saving-not-signed'
  | 'saving-problem'
  | 'saving-problem-database'
  | 'saving-problem-database-read'
  | 'saving-problem-disk'
  | 'saving-state'
  | 'saving-taken'
  | 'saving-told'
  | 'saving-told-backup'
  | 'saving-told-database'
  | 'saving-unsent'
  | 'sensor'
  | 'sensor-end'
  | 'sensor-humidity'
  | 'sensor-path'
  | 'sensor-temperature'
  | 'sensor-topic'
  | 'several'
  | 'shelf'
  | 'shelf-no'
  | 'shelf-species'
  | 'size'
  | 'size-extra'
  | 'source'
  | 'source-common'
  | 'species'
  | 'species-camponotus'
  | 'species-carebara'
  | 'species-formica'
  | 'species-iridomyrmex'
  | 'species-lasius'
  | 'species-manica'
  | 'species-melophorus'
  | 'species-messor'
  | 'species-myrmecia'
  | 'species-myrmica'
  | 'species-paraponera'
  | 'species-pheidole'
  | 'species-rhytidoponera'
  | 'species-solenopsis'
  | 'species-veromessor'
  | 'stalled'
  | 'stalled-fed'
  | 'stalled-last'
  | 'stalled-unfed'
  | 'stand'
  | 'stand-in'
  | 'stand-in-could'
  | 'stand-in-from'
  | 'stand-in-hint'
  | 'stand-in-read'
  | 'stand-in-why'
  | 'start'
  | 'start-claim'
  | 'start-code'
  | 'start-come'
  | 'start-handed'
  | 'start-have'
  | 'start-join'
  | 'start-only'
  | 'start-only-a'
  | 'start-open'
  | 'start-our'
  | 'start-pass'
  | 'start-phone'
  | 'start-shelf'
  | 'start-your'
  | 'tasting'
  | 'tasting-not'
  | 'tasting-offers'
  | 'tasting-offers-and'
  | 'todo'
  | 'todo-dry'
  | 'todo-fridge'
  | 'todo-heater'
  | 'todo-mould'
  | 'todo-move'
  | 'todo-rest'
  | 'todo-rising'
  | 'todo-risk'
  | 'todo-too'
  | 'todo-wake'
  | 'todo-water'
  | 'travel'
  | 'travel-dark'
  | 'travel-dark-and'
  | 'travel-double'
  | 'travel-never'
  | 'travel-no'
  | 'travel-no-loose'
  | 'travel-plugs'
  | 'travel-quiet'
  | 'travel-travel'
  | 'vessel'
  | 'vessel-nest'
  | 'vessel-outworld'
  | 'vessel-setup'
  | 'vessel-tube'
  | 'welcome'
  | 'welcome-android'
  | 'welcome-desktop'
  | 'welcome-ios'
  | 'welcome-why';
