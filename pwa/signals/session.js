// Who is signed in on this phone, and the store of what it keeps.
import { signal } from '@preact/signals';
import { Store } from '../database/store.js';
import { say } from '../words/say.js';

/**
 * undefined while loading, null signed out.
 * @type {import('@preact/signals').Signal<import('../answers.d.ts').Session | null | undefined>}
 */
export const session = signal(undefined);

/** @type {Store | null} */
let store = null;

/** The store of the device that this browser is, if it is one. @returns {Store | null} */
export const heldStore = () => store;

/** The open store. @returns {Store} */
export function openStore() {
  if (!store) throw new Error(say('saving-not-signed-in'));
  return store;
}

/** Be this device from now on. @param {string} deviceId @returns {Store} */
export function holdStore(deviceId) {
  store = new Store(deviceId);
  return store;
}
