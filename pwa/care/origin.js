// Where a food comes from and what that means: the rules are data, from the catalogue.

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
