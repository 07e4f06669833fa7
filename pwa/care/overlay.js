// What a screen shows: the server's rows with this phone's waiting operations laid over them. Pure.

/**
 * @typedef {import('../kinds.d.ts').Kind} Kind
 * @typedef {import('../kinds.d.ts').EventKind} EventKind
 * @typedef {import('../kinds.d.ts').ChangeOf} Change
 */
/** @template {Kind} [K=Kind] @typedef {import('../kinds.d.ts').Fields<K>} Fields */
/**
 * A record as the server gives it.
 * @template {Kind} [K=Kind]
 * @typedef {{[k in K]: {id: string, kind: k, rev: number, by: string | null, made_ms: number, set: Fields<k>,
 *   device?: string | null, stamps?: Record<string, [number, string | null]>}}[K]} Row
 */
/**
 * The same as this phone knows it.
 * @template {Kind} [K=Kind]
 * @typedef {Row<K> & {state: 'synced' | 'saved' | 'attention', happened_ms: number | null}} ShownRow
 */
/** @typedef {import('../answers.d.ts').Rejected} Rejected */
/** @typedef {import('../answers.d.ts').Conflict} Conflict */
/**
 * @template {EventKind} [K=EventKind]
 * @typedef {ShownRow<K>} EventRow something that happened
 */
/**
 * @typedef {Change & {op_id: string, id: string, made_at: number, skew_ms: number,
 *   base_rev: number, base_epoch: string | null, n: number, adopt: boolean,
 *   by?: string | null, device?: string | null, made_ms?: number,
 *   stamps?: Record<string, [number, string | null]>}} Operation
 * @typedef {{op_id: string, op: Operation, state: 'waiting' | 'rejected' | 'damaged', answer: Rejected | null,
 *   n: number}} Entry
 * @typedef {{op_id: string, op: Operation, conflicts: Conflict[]}} Met where two phones changed the same, and what
 *   became of it
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
    const set = /** @type {Fields} */ ({ ...under?.set, ...op.set }); // of one kind: an operation changes no other
    const state = entry.state === 'rejected' ? 'attention' : 'saved';
    if (state === 'attention' && under && under.state === 'synced') continue; // the server's word stands
    const row = {
      id: op.id,
      kind: op.kind,
      rev: under?.rev ?? 0,
      by: under?.by ?? me,
      made_ms: under?.made_ms ?? op.made_at,
      set,
      state,
      happened_ms: happenedMs(set),
    };
    shown.set(op.id, /** @type {ShownRow} */ (row));
  }
  for (const [id, row] of shown) if (row.set.gone) shown.delete(id);
  return shown;
}

/** @param {Partial<Fields>} set @returns {number | null} */
function happenedMs(set) {
  const ms = typeof set.happened_at === 'string' ? Date.parse(set.happened_at) : Number.NaN;
  return Number.isNaN(ms) ? null : ms;
}
