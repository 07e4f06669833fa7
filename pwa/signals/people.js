// Signing in: claim, pairing, passes. Each makes this browser a device with a database of its own.
import { setCurrentDevice } from '../database/open.js';
import { uuid7 } from '../database/ids.js';
import { get, post, put, takeAway } from '../sync/api.js';
import { heldStore, session } from './session.js';
import { enter, know } from './sync.js';
import { say } from '../words/say.js';

export { get, post, put, takeAway };

/** How this phone calls itself. */
function deviceName() {
  const agent = navigator.userAgent;
  const system = ['iPhone', 'iPad', 'Android', 'Mac', 'Windows', 'Linux'].find((name) => agent.includes(name));
  if (system === 'Mac') return system;
  return system ? say('start-phone-name', { system }) : say('start-phone-unnamed');
}

/**
 * This browser as a new phone. The secret proves that whoever asks once more is the phone whose answer was lost, and
 * gets it again; it is kept until the phone is in (docs/security.md).
 */
const newDevice = () => ({ id: uuid7(), name: deviceName(), secret: (localStorage.secret ??= uuid7() + uuid7()) });

/** @param {import('../answers.d.ts').Me} me @param {{emptied?: boolean}} [facts] */
async function become(me, facts = {}) {
  await setCurrentDevice(me.device_id);
  localStorage.removeItem('secret');
  localStorage.setItem('device', me.device_id); // only a hint for the next start (main.js)
  await enter(me, facts);
  // whoever is in is in: where this fails, House tries it again
  await import('./unsent.js').then(({ leftBehind }) => leftBehind(me)).catch(() => []);
}

/**
 * Come back in where the browser has emptied its storage and kept the session. What had not been sent went with the
 * storage, which is told until somebody has read it. Whoever is nobody, or without a connection, stays outside.
 */
export async function comeBack() {
  const { me } = await get('/api/whoami').catch(() => ({ me: null }));
  if (!me || session.peek() !== null) return;
  await become(me, { emptied: !heldStore() });
}

/**
 * @param {{code?: string, person_name?: string, household_name?: string,
 *   zone?: string}} what the names and the zone only for a new shelf
 */
export async function claim(what) {
  await become(await post('/api/claim', { ...what, device: newDevice() }));
}

/**
 * Whom a code lets back in, nobody for a new shelf; and how the server calls beginning one without a code, where that
 * may be. Neither for a code that is not good, or without a connection.
 * @param {string} code
 * @returns {Promise<Partial<import('../answers.d.ts').SeenCode>>}
 */
export const lookAtCode = (code) => post('/api/claim/look', { code }).catch(() => ({}));

/** Open a pairing: this phone shows the code. */
export async function askToPair() {
  return post('/api/pairings', { device: newDevice() });
}

/**
 * @param {{pairing_id: string, collect_secret: string}} asked
 * @returns {Promise<boolean>} whether a keeper has approved
 */
export async function collectPairing({ pairing_id, collect_secret }) {
  const answer = await post('/api/pairings/collect', { pairing_id, collect_secret });
  if (answer.state === 'waiting') return false;
  await become(answer);
  return true;
}

/**
 * @param {{secret: string} | {code: string}} key
 * @returns {Promise<import('../answers.d.ts').PassPreview | null>} a preview for a signed-in keeper, else null
 */
export async function openPass(key) {
  const answer = await post('/api/passes/open', { ...key, device: newDevice() });
  if (answer.preview) return answer.preview;
  await become(answer);
  return null;
}

/** Sign this phone out, also where the server has done so before. What it has not sent stays on it. */
export async function logout() {
  await post('/api/logout').catch((problem) => {
    if (!problem.isOut) throw problem;
  });
  await know({ left: true });
}
