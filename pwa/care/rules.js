// Units of time, and what the server's rules go by where a phone has to do the same.
// Written by `python -m tests.support.phone_rules`; a test fails when it is stale.

export const HOUR_MS = 3_600_000;
export const DAY_MS = 86_400_000;
/** A water reading as a share of the full reservoir: model/gauges.py. @type {Record<string, number>} */
export const SHARES = { full: 1, three_quarters: 0.75, half: 0.5, quarter: 0.25, empty: 0 };
/** What a water log does that leaves the reservoir full: model/gauges.py. @type {string[]} */
export const FILLS = ['hydrate', 'new_tube', 'refill'];
/** Less water than this is none: model/gauges.py. */
export const EMPTY_BELOW_MM = 1;
/** Of the plug, from which mould is an alarm: care/colony/crowding.py. */
export const DEEP_MOULD_SHARE = 1 / 3;
/** The kinds of things. @type {Array<import('../kinds.d.ts').Kind>} */
export const THINGS = ['household', 'person', 'place', 'vessel', 'colony', 'lot', 'rule', 'tasting', 'pass'];
