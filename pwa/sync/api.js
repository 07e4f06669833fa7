// The server's addresses (docs/http-api.md). Every failure is an ApiProblem; a login page is never mistaken for data.

/** A request that the server refused, or that did not arrive. */
export class ApiProblem extends Error {
  /** @param {number} status @param {string} code @param {string} detail @param {Record<string, any>} [fields] */
  constructor(status, code, detail, fields = {}) {
    super(detail);
    this.name = 'ApiProblem';
    this.status = status;
    this.code = code;
    this.fields = fields;
  }
}

/** @param {'GET' | 'POST' | 'PUT' | 'DELETE'} method @param {string} path @param {unknown} [body] @returns {Promise<any>} */
export function call(method, path, body) {
  return send(path, method === 'GET' ? { method } : { method, headers: { 'Content-Type': 'application/json' }, body: JSON.stringify(body ?? {}) });
}

/** Send a picture as it is. @param {string} path @param {Blob} blob */
export const putPicture = (path, blob) => send(path, { method: 'PUT', headers: { 'Content-Type': 'image/jpeg' }, body: blob });

/** @param {string} path @param {RequestInit} options @returns {Promise<any>} */
async function send(path, options) {
  let response;
  try {
    response = await fetch(path, { credentials: 'same-origin', redirect: 'manual', cache: 'no-store', ...options });
  } catch {
    throw new ApiProblem(0, 'offline', 'No connection to the server. What you log stays on this phone.');
  }
  const type = response.headers.get('Content-Type') ?? '';
  if (response.type === 'opaqueredirect' || !type.includes('json')) {
    throw new ApiProblem(response.status, 'signed_out', 'Something between this phone and the server asks for a sign-in.');
  }
  const answer = await response.json();
  if (response.ok) return answer;
  throw new ApiProblem(response.status, answer.code ?? 'failed', answer.detail ?? 'The server could not do this.', answer.fields);
}

/** @param {string} path @param {unknown} [body] */
export const post = (path, body) => call('POST', path, body);
/** @param {string} path */
export const get = (path) => call('GET', path);
