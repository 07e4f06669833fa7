// Where a food comes from and what that means: the rules are data, from the catalogue.

/** @typedef {import('../kinds.d.ts').Origin} Origin */

/**
 * @param {Record<string, {verdict: string, hold_days?: number}>} origins
 * @param {string} origin @param {{got_on: string | null, today: string}} days ISO dates
 * @returns {{verdict: string, reason_code: string, until: string | null}}
 */
export function originVerdict(origins, origin, { got_on, today }) {
  const code = origins[origin] ? origin : 'unknown';
  const rule = /** @type {{verdict: string, hold_days?: number}} */ (origins[code]);
  if (rule.verdict !== 'hold') return { verdict: rule.verdict, reason_code: code, until: null };
  const until = new Date(`${got_on ?? today}T00:00:00Z`);
  until.setUTCDate(until.getUTCDate() + (rule.hold_days ?? 0));
  const day = until.toISOString().slice(0, 10);
  return { verdict: today >= day ? 'fine' : 'hold', reason_code: code, until: day };
}

/**
 * Where a food usually comes from: what is caught has one origin, sugar water is mixed at home, the rest is bought.
 * @param {Record<string, {need?: string, origin?: Origin}>} foods @param {string} food @returns {Origin}
 */
export function usualOrigin(foods, food) {
  const kind = foods[food];
  if (kind?.origin) return kind.origin;
  return kind?.need === 'sugar' && food.endsWith('water') ? 'home_mixed' : 'bought_or_bred';
}

/**
 * The origins that a food can have: what is caught has one.
 * @param {Record<string, {origin?: string}>} foods @param {Record<string, unknown>} origins @param {string} food
 */
export function originsOf(foods, origins, food) {
  const only = foods[food]?.origin;
  return only ? [only] : Object.keys(origins);
}
