// Short codes on tube labels: five letters and digits that stand for a colony on this shelf. Pure.

/** Crockford's base 32: no I, L, O or U, so that it can be read off a label and typed. */
const LETTERS = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';
const LENGTH = 5;

/** The code of an id, from the random end of the UUIDv7. @param {string} id @returns {string} */
export function shortCode(id) {
  let value = Number.parseInt(id.replaceAll('-', '').slice(-7), 16); // 28 bits; five letters use 25
  let code = '';
  for (let i = 0; i < LENGTH; i += 1) {
    code = LETTERS.charAt(value & 31) + code;
    value >>>= 5;
  }
  return code;
}

/**
 * What was typed or scanned, as a code; null if it is none.
 * @param {string} text a code, or an address that ends in `#/at/CODE`
 * @returns {string | null}
 */
export function readCode(text) {
  const bare = (text.trim().split('#/at/').pop() ?? '')
    .toUpperCase()
    .replace(/[\s-]/g, '')
    .replaceAll('O', '0')
    .replace(/[IL]/g, '1');
  return bare.length === LENGTH && [...bare].every((letter) => LETTERS.includes(letter)) ? bare : null;
}
