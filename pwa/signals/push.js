// Nudges on this phone: whether they can come, whether they will, and asking for them.
import { signal } from '@preact/signals';
import { get, post, put, takeAway } from '../sync/api.js';
import { say } from '../words/say.js';

const KEY_ID_LENGTH = 16;
const ACK_WAIT_MS = 15_000;

/** @typedef {'unsupported' | 'install_first' | 'denied' | 'off' | 'on'} State */

/**
 * @type {import('@preact/signals').Signal<{state: State, problem: string,
 *   health: import('../answers.d.ts').PushHealth | null, tested: '' | 'waiting' | 'heard' | 'silent'}>}
 */
export const pushState = signal({ state: 'off', problem: '', health: null, tested: '' });

/** @param {Partial<typeof pushState.value>} values */
const patch = (values) => {
  pushState.value = { ...pushState.peek(), ...values };
};

/** What this browser can do at all. @returns {State} */
function ability() {
  const supported = 'serviceWorker' in navigator && 'PushManager' in globalThis && 'Notification' in globalThis;
  if (supported) return Notification.permission === 'denied' ? 'denied' : 'off';
  // on iPhones push exists only in an app that was put on the home screen
  const apple = /iPhone|iPad/.test(navigator.userAgent);
  return apple && !matchMedia('(display-mode: standalone)').matches ? 'install_first' : 'unsupported';
}

/** At every start: tell the server again where this phone listens, and subscribe anew if its key has changed. */
export async function refreshPush() {
  const able = ability();
  patch({ state: able });
  if (able !== 'off' || Notification.permission !== 'granted') return;
  const registration = await navigator.serviceWorker.ready;
  if (await registration.pushManager.getSubscription()) await listen(registration);
}

/** Ask for permission and listen; only from a tap. */
export async function askForNudges() {
  const able = ability();
  if (able !== 'off') return patch({ state: able });
  if ((await Notification.requestPermission()) !== 'granted') return patch({ state: ability() });
  return listen(await navigator.serviceWorker.ready);
}

/** Answers after which only a new subscription helps: another key, or an address that another phone listens at. */
const ANEW = ['other_key', 'endpoint_taken'];

/** @param {ServiceWorkerRegistration} registration @param {boolean} [anew] whether this is the second try */
async function listen(registration, anew = false) {
  try {
    const base64url = (await get('/api/me')).vapid_public_key;
    let subscription = await registration.pushManager.getSubscription();
    if (subscription && keyOf(subscription) !== base64url) {
      await subscription.unsubscribe();
      subscription = null;
    }
    subscription ??= await registration.pushManager.subscribe({
      userVisibleOnly: true,
      applicationServerKey: bytesOf(base64url),
    });
    const { endpoint, keys } = subscription.toJSON();
    await put('/api/push/subscription', { endpoint, keys, key_id: base64url.slice(0, KEY_ID_LENGTH) });
    patch({ state: 'on', problem: '', health: await get('/api/push/health') });
  } catch (error) {
    if (!anew && ANEW.includes(/** @type {import('../answers.d.ts').Problem} */ (error).code)) {
      await (await registration.pushManager.getSubscription())?.unsubscribe();
      return listen(registration, true);
    }
    patch({ problem: /** @type {Error} */ (error).message });
  }
}

/** Stop listening on this phone, once the server knows it: else it would go on sending, and nobody be told. */
export async function stopNudges() {
  try {
    await takeAway('/api/push/subscription');
    const registration = await navigator.serviceWorker.ready;
    await (await registration.pushManager.getSubscription())?.unsubscribe();
    patch({ state: ability(), problem: '', health: null, tested: '' });
  } catch (error) {
    patch({ problem: /** @type {Error} */ (error).message });
  }
}

/** Send a test message and wait until this phone's worker says that it came. */
export async function sendTest() {
  patch({ tested: 'waiting', problem: '' });
  try {
    const before = pushState.peek().health?.last_ack_ms ?? 0;
    const { outcome } = await post('/api/push/test', {});
    if (outcome !== 'sent') {
      return patch({ tested: 'silent', problem: say('phone-nudges-not-taken', { outcome }) });
    }
    for (const end = Date.now() + ACK_WAIT_MS; Date.now() < end;) {
      const health = await get('/api/push/health');
      patch({ health });
      if ((health.last_ack_ms ?? 0) > before) return patch({ tested: 'heard' });
      await new Promise((done) => {
        setTimeout(done, 700);
      });
    }
    return patch({ tested: 'silent', problem: say('phone-nudges-not-heard') });
  } catch (error) {
    return patch({ tested: 'silent', problem: /** @type {Error} */ (error).message });
  }
}

/** @param {PushSubscription} subscription @returns {string} base64url without padding */
function keyOf(subscription) {
  const bytes = new Uint8Array(subscription.options.applicationServerKey ?? new ArrayBuffer(0));
  return btoa(String.fromCharCode(...bytes))
    .replaceAll('+', '-')
    .replaceAll('/', '_')
    .replaceAll('=', '');
}

/** @param {string} text base64url @returns {Uint8Array<ArrayBuffer>} */
function bytesOf(text) {
  const plain = atob(text.replaceAll('-', '+').replaceAll('_', '/'));
  return Uint8Array.from(plain, (letter) => letter.charCodeAt(0));
}
