// What a person does on a phone: chooses a record among those that its screens show, and logs or changes it through the
// app's own store.
import { valuesOf } from './disk.mjs';

const HAPPENED = '2026-05-01T12:00:00.000+00:00';

/** The `which`th record of these kinds that the phone shows, in the order of ids. */
function pick({ app, store }, which, ...kinds) {
  const rows = valuesOf(store.name, 'rows').filter(({ kind }) => kinds.includes(kind));
  const entries = valuesOf(store.name, 'outbox').filter(({ op }) => kinds.includes(op.kind));
  const shown = [
    ...app
      .overlayRows(
        rows,
        entries.sort((a, b) => a.n - b.n),
        null,
      )
      .values(),
  ];
  return shown.length ? shown.sort((a, b) => (a.id < b.id ? -1 : 1))[which % shown.length] : null;
}

/** Each: what is written, or nothing where the phone shows no way to do it. `at` tells the steps of a run apart. */
const changes = {
  log(phone, { id, which, at }) {
    const colony = pick(phone, which, 'colony');
    return colony && { kind: 'note', id, set: { colony_id: colony.id, happened_at: HAPPENED, text: `log ${at}` } };
  },
  feed(phone, { id, which }) {
    const colony = pick(phone, which, 'colony');
    const need = which % 2 ? 'protein' : 'sugar';
    return colony && { kind: 'feeding', id, set: { colony_id: colony.id, happened_at: HAPPENED, need } };
  },
  rename(phone, { which, at }) {
    const colony = pick(phone, which, 'colony');
    return colony && { kind: 'colony', id: colony.id, set: { name: `name ${at}`, queens: which } };
  },
  amend(phone, { which, at }) {
    const note = pick(phone, which, 'note');
    return note && { kind: 'note', id: note.id, set: { text: `amended ${at}` } };
  },
  void(phone, { which }) {
    const record = pick(phone, which, 'note', 'feeding', 'colony');
    return record && { kind: record.kind, id: record.id, set: { gone: true } };
  },
};

/** Write what a person does. @param {any} phone @param {any} asked */
export async function doOn(phone, asked) {
  const change = asked.change ?? changes[asked.what](phone, asked);
  if (!change) return;
  const [op] = await phone.store.enqueue([change]);
  phone.written.push(op.op_id);
}

/**
 * Mend a bad value, or send again what lacked a record that has come; what lacked the record that is mended goes with
 * it, as the app's store does it.
 * @returns {Promise<string[]>} the operations that were replaced
 */
export async function mendOn({ store, written }) {
  const here = new Set(valuesOf(store.name, 'rows').map(({ id }) => id));
  const ids = () => valuesOf(store.name, 'outbox').map(({ op_id }) => op_id);
  const replaced = [];
  for (const { op_id, op, state, answer } of valuesOf(store.name, 'outbox')) {
    if (state !== 'rejected' || replaced.includes(op_id)) continue;
    const set = answer.code === 'bad_value' ? { ...op.set, queens: 1 } : op.set;
    const missing = answer.args.missing === 'itself' ? op.id : answer.args.missing;
    if (set === op.set && !here.has(missing)) continue;
    here.add(op.id);
    const before = ids();
    await store.mend(op_id, set);
    const after = ids();
    replaced.push(...before.filter((id) => !after.includes(id)));
    written.push(...after.filter((id) => !before.includes(id)));
  }
  return replaced;
}
