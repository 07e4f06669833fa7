// Where a food comes from and what that means: the rules are data, from the catalogue.

/**
 * @typedef {import('../kinds.d.ts').Origin} Origin
 * @typedef {import('../kinds.d.ts').CatalogueRows} CatalogueRows
 */

/**
 * @param {CatalogueRows['origins']} origins
 * @param {string} origin @param {{got_on: string | null, today: string}} days ISO dates
 * @returns {{verdict: import('../kinds.d.ts').Verdict, reason_code: string, until: string | null}}
 */
export function originVerdict(origins, origin, { got_on, today }) {
  const code = origins[origin] ? origin : 'unknown';
  const rule = /** @type {import('../kinds.d.ts').OriginRow} */ (origins[code]);
  if (rule.verdict !== 'hold') return { verdict: rule.verdict, reason_code: code, until: null };
  const until = new Date(`${got_on ?? today}T00:00:00Z`);
  until.setUTCDate(until.getUTCDate() + (rule.hold_days ?? 0));
  const day = until.toISOString().slice(0, 10);
  return { verdict: today >= day ? 'fine' : 'hold', reason_code: code, until: day };
}

/**
 * Where a food usually comes from; server: care/catalogue, `Food`. What is caught has one origin.
 * @param {CatalogueRows['foods']} foods @param {string} food @returns {Origin}
 */
export const usualOrigin = (foods, food) => foods[food]?.origin ?? foods[food]?.usual_origin ?? 'bought_or_bred';

/**
 * The origins that a food can have: what is caught has one.
 * @param {CatalogueRows['foods']} foods @param {CatalogueRows['origins']} origins @param {string} food
 */
export function originsOf(foods, origins, food) {
  const only = foods[food]?.origin;
  return only ? [only] : Object.keys(origins);
}
