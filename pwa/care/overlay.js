// What a screen shows: the server's rows with this phone's waiting operations laid over them. Pure.

/**
 * @typedef {{id: string, kind: string, rev: number, by: string | null, made_ms: number, set: Record<string, any>,
 *   device?: string | null, stamps?: Record<string, [number, string | null]>}} Row
 * @typedef {{op_id: string, kind: string, id: string, set: Record<string, any>, made_at: number, skew_ms: number,
 *   base_rev: number, base_epoch: string | null, n: number, adopt: boolean,
 *   by?: string | null, device?: string | null, made_ms?: number,
 *   stamps?: Record<string, [number, string | null]>}} Operation
 * @typedef {{op_id: string, op: Operation, state: 'waiting' | 'rejected' | 'damaged', answer: any, n: number}} Entry
 * @typedef {Row & {state: 'synced' | 'saved' | 'attention', happened_ms: number | null}} ShownRow
 */

/**
 * @param {Iterable<Row>} rows @param {Entry[]} entries in the order of `n` @param {string | null} me this person's id
 * @returns {Map<string, ShownRow>} by id, gone rows left out
 */
export function overlayRows(rows, entries, me) {
  /** @type {Map<string, ShownRow>} */
  const shown = new Map();
  for (const row of rows) shown.set(row.id, { ...row, state: 'synced', happened_ms: happenedMs(row.set) });
  for (const entry of entries) {
    const op = entry.op;
    if (entry.state === 'damaged' || !op || typeof op.set !== 'object') continue;
    const under = shown.get(op.id);
    if (!under && op.set.gone === false) continue; // what was taken back is seen once the server has given it again
    const set = { ...under?.set, ...op.set };
    const state = entry.state === 'rejected' ? 'attention' : 'saved';
    if (state === 'attention' && under && under.state === 'synced') continue; // the server's word stands
    shown.set(op.id, {
      id: op.id,
      kind: op.kind,
      rev: under?.rev ?? 0,
      by: under?.by ?? me,
      made_ms: under?.made_ms ?? op.made_at,
      set,
      state,
      happened_ms: happenedMs(set),
    });
  }
  for (const [id, row] of shown) if (row.set.gone) shown.delete(id);
  return shown;
}

/** @param {Record<string, any>} set @returns {number | null} */
function happenedMs(set) {
  const ms = typeof set.happened_at === 'string' ? Date.parse(set.happened_at) : Number.NaN;
  return Number.isNaN(ms) ? null : ms;
}
