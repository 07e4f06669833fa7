// What the head of a JPEG says, read without decoding it. Pure.

/** Markers that begin a frame, ITU-T T.81 table B.1: C0 to CF, without tables (C4), an extension (C8) and arithmetic
 * conditioning (CC). */
const FIRST_FRAME = 0xc0;
const LAST_FRAME = 0xcf;
const NO_FRAME = [0xc4, 0xc8, 0xcc];
const START = 0xffd8;

/**
 * How many pixels a JPEG has, as they lie in the file: before it is turned upright.
 * @param {Uint8Array} head its first bytes
 * @returns {{width: number, height: number} | null} null where it is none, or its frame begins later
 */
export function sizeOfJpeg(head) {
  const view = new DataView(head.buffer, head.byteOffset, head.byteLength);
  if (view.byteLength < 2 || view.getUint16(0) !== START) return null;
  let at = 2;
  while (at + 9 <= view.byteLength) {
    if (view.getUint8(at) !== 0xff) return null;
    const marker = view.getUint8(at + 1);
    if (marker === 0xff) {
      at += 1; // filled up
      continue;
    }
    if (marker >= FIRST_FRAME && marker <= LAST_FRAME && !NO_FRAME.includes(marker)) {
      return { height: view.getUint16(at + 5), width: view.getUint16(at + 7) };
    }
    at += 2 + view.getUint16(at + 2);
  }
  return null;
}
