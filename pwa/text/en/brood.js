// What is in the nest and what comes of it: the days, the question, and why. Fetched with the charts.
import { count } from './counted.js';

export const broodText = {
  first: 'The first workers',
  next: 'New workers',
  days: (/** @type {number} */ low, /** @type {number} */ high) =>
    low === high ? `in about ${count(high, 'day')}` : `in ${low} to ${count(high, 'day')}`,
  between: (/** @type {string} */ from, /** @type {string} */ to) => `Between ${from} and ${to}`,
  on: (/** @type {string} */ day) => `About ${day}`,
  any_by: (/** @type {string} */ day) => `Any day now, by ${day}`,
  any: 'Any day now',
  at_latest: (/** @type {number} */ d) => `at the latest in ${count(d, 'day')}`,
  not_before: (/** @type {string} */ day) => `Not before ${day}`,
  likely: (/** @type {string} */ best, /** @type {number} */ d) => `most likely around ${best}, in ${count(d, 'day')}`,
  perhaps: (/** @type {string} */ high) => `perhaps as late as ${high}`,
  no_end: 'how long after that cannot be said yet',
  warm: (/** @type {number} */ c) => `at ${c} °C`,
  none: 'None are in sight for half a year, as warm as it is now.',
  asks: {
    by: (/** @type {string} */ brood, /** @type {string} */ day) => `${brood} should be there by ${day}`,
    now: (/** @type {string} */ brood) => `${brood} should be there by now`,
    seen: (/** @type {string} */ told) => `${told}: seen them?`,
    yes: 'Yes',
    not_yet: 'Not yet',
    cannot_see: 'Cannot see',
    early: 'Seen already',
    looked: (/** @type {string} */ day, /** @type {string} */ again) =>
      `Somebody looked on ${day}. You are asked again from ${again}: until then peace helps more.`,
    told: (/** @type {string} */ brood, /** @type {string} */ day) => `${brood} were seen on ${day}.`,
    waits: 'The days are reckoned anew with the next connection.',
    remark: (/** @type {string} */ brood) => `Looked for ${brood.toLowerCase()}, could not see`,
  },
  open: 'The brood on one line of time',
  why: {
    title: 'Why these days',
    nothing: 'Nothing that was seen has moved them yet: they are those of its kind at this warmth.',
    eight: 'Of ten colonies like this one, eight fall into the range.',
    unmeasured:
      'Nobody has measured how long the stages of its group take. The days rest on common practice, so they are ' +
      'told wide. What you see narrows them.',
    source: (/** @type {string} */ source) => `They begin with: ${source}.`,
    line: (/** @type {string} */ day, /** @type {string[]} */ seen, /** @type {string} */ moved) =>
      `${day}: ${[...seen, moved].join(', ')}.`,
    counted: (/** @type {number} */ n) => (n === 0 ? 'no workers' : `${count(n, 'worker')} counted`),
    workers: 'workers counted',
    /** @type {Record<string, (seen: string) => string>} */
    words: {
      none: (seen) => `no ${seen}`,
      seen: (seen) => `${seen} seen`,
      few: (seen) => `few ${seen}`,
      some: (seen) => `some ${seen}`,
      many: (seen) => `many ${seen}`,
      taken: () => 'insects taken',
      refused: () => 'insects refused',
    },
    /** @type {Record<string, string>} */
    moved: {
      census_more: 'more than expected',
      census_fewer: 'fewer than expected',
      census_sooner: 'so this brood is faster than was thought',
      census_later: 'so this brood is slower than was thought',
    },
    none: 'where some were expected',
    /** @type {Record<string, string>} */
    larvae: {
      census_more: 'so there are more larvae than was thought',
      census_fewer: 'so there are fewer larvae than was thought',
    },
  },
};
