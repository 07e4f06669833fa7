// The server's addresses (docs/http-api.md). Every failure is an ApiProblem; a login page is never mistaken for data.

import { voice } from '../words/voice.js';

const ASKS_SIGN_IN = 'asks_sign_in';

/** A request that the server refused, or that did not arrive. */
export class ApiProblem extends Error {
  /** @param {number} status @param {string} code @param {string} detail @param {object} [fields] */
  constructor(status, code, detail, fields = {}) {
    super(detail);
    this.name = 'ApiProblem';
    this.status = status;
    this.code = code;
    this.fields = fields;
  }

  /** Whether the server says that this phone's session has ended; `code` says why. */
  get isOut() {
    return this.status === 401 && this.code !== ASKS_SIGN_IN;
  }
}

/**
 * A request that takes longer is given up: on a half-open connection it would wait, and hold the sync, for ever. The
 * sync of another tab is waited for as long as `lock_ms`.
 */
export const patience = { ms: 60_000, lock_ms: 5_000 };

/** @typedef {import('../answers.d.ts').Got} Got */
/** @typedef {import('../answers.d.ts').Posted} Posted */
/** @typedef {import('../answers.d.ts').Put} Put */
/** @typedef {import('../answers.d.ts').Removed} Removed */

/** @param {'POST' | 'PUT' | 'DELETE'} method @param {unknown} body */
const sent = (method, body) => ({
  method,
  headers: { 'Content-Type': 'application/json' },
  body: JSON.stringify(body ?? {}),
});

/** @template {keyof Put & string} P @param {P} path @param {unknown} body @returns {Promise<Put[P]>} */
export const put = (path, body) => send(path, sent('PUT', body));
/** @template {keyof Removed & string} P @param {P} path @returns {Promise<Removed[P]>} */
export const takeAway = (path) => send(path, sent('DELETE', {}));

/** Send a picture as it is. @param {string} path @param {Blob} blob */
export const putPicture = (path, blob) =>
  send(path, { method: 'PUT', headers: { 'Content-Type': 'image/jpeg' }, body: blob });

/**
 * @template T as `answers.d.ts` says
 * @param {string} path @param {RequestInit} options @returns {Promise<T>}
 */
async function send(path, options) {
  let response;
  let answer;
  try {
    response = await fetch(path, {
      credentials: 'same-origin',
      redirect: 'manual',
      cache: 'no-store',
      signal: AbortSignal.timeout(patience.ms),
      ...options,
      headers: { ...options.headers, ...(voice.language ? { 'Accept-Language': voice.language } : {}) },
    });
    const type = response.headers.get('Content-Type') ?? '';
    if (type.includes('json')) answer = await response.json();
    else if (!type && response.type !== 'opaqueredirect') throw new TypeError('an answer that was cut off in its head');
  } catch {
    throw new ApiProblem(0, 'offline', voice.say('saving-no-connection'));
  }
  // a login page, or what else stands before the server and lets nobody through
  if (!answer || (response.status === 401 && !answer.code)) {
    throw new ApiProblem(response.status, ASKS_SIGN_IN, voice.say('saving-asks-sign-in'));
  }
  if (response.ok) return answer;
  throw new ApiProblem(
    response.status,
    answer.code ?? 'failed',
    answer.detail ?? voice.say('saving-failed'),
    answer.fields,
  );
}

/** @template {keyof Posted & string} P @param {P} path @param {unknown} [body] @returns {Promise<Posted[P]>} */
export const post = (path, body) => send(path, sent('POST', body));
/** @template {keyof Got & string} P @param {P} path @returns {Promise<Got[P]>} */
export const get = (path) => send(path, { method: 'GET' });
