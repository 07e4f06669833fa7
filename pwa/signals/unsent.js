// What this browser has not sent, of whoever was in it: as a file, and taken over by whom it is of.
import { takeOver } from '../database/left.js';
import { knownDevices } from '../database/open.js';
import { picturesOnlyHere } from '../database/photos.js';
import { Store } from '../database/store.js';
import { reload } from './rows.js';
import { openStore } from './session.js';
import { syncNow } from './sync.js';
import { say } from '../words/say.js';

/** Whose a sign-in is. A pass makes a person of each phone that opens it. @param {import('../answers.d.ts').Me} me */
const ownerOf = ({ household_id, person_id, pass }) => `${household_id} ${pass?.id ?? person_id}`;

/**
 * What earlier sign-ins of this browser have not sent: what is of whoever is in now comes over, the rest is told.
 * @param {import('../answers.d.ts').Me | null} me who is in
 * @returns {Promise<Array<{store: Store, who: string, count: number}>>} of others, and what could not be stored
 */
export async function leftBehind(me) {
  const left = [];
  let came = false;
  for (const device of await knownDevices()) {
    if (device === me?.device_id) continue;
    const store = new Store(device);
    const { entries, pictures, meta } = await store.pending();
    const count = entries.length + pictures;
    const mine = me && meta.me && ownerOf(me) === ownerOf(meta.me);
    if (mine && (await takeOver(store, openStore()).catch(() => false))) came = true;
    else if (count) left.push({ store, who: meta.me?.name ?? '', count });
  }
  if (came) {
    await reload();
    void syncNow();
  }
  return left;
}

/** A picture as text. @param {Blob} blob @returns {Promise<string>} a data: URL */
const asText = (blob) =>
  new Promise((done) => {
    const reader = new FileReader();
    reader.onloadend = () => done(String(reader.result));
    reader.readAsDataURL(blob);
  });

/** Everything that was not sent, as a file. @param {Store} [store] */
export async function exportUnsent(store = openStore()) {
  const [entries, photos] = await Promise.all([store.unsent(), picturesOnlyHere(store.deviceId)]);
  const pictures = await Promise.all(photos.map(async ({ id, blob }) => ({ id, jpeg: await asText(blob) })));
  const file = new Blob([JSON.stringify({ about: say('saving-unsent-title'), entries, pictures }, null, 1)], {
    type: 'application/json',
  });
  const link = document.createElement('a');
  link.href = URL.createObjectURL(file);
  link.download = 'broodshelf-unsent.json';
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
}
