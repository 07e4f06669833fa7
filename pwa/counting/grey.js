// A picture as luminance in 0..1, row by row, and what is done to it before anything is looked for in it. Pure.

/**
 * A picture in shades of grey: `data` holds width × height values from 0 (black) to 1 (white).
 * @typedef {{data: Float32Array, width: number, height: number}} Grey
 */

/**
 * The luminance of pixels: ITU-R BT.601, as JPEG itself weighs colours.
 * @param {Uint8ClampedArray | Uint8Array} rgba four bytes a pixel @param {number} width in px @param {number} height
 * @returns {Grey}
 */
export function luminance(rgba, width, height) {
  const data = new Float32Array(width * height);
  for (let i = 0, at = 0; i < data.length; i += 1, at += 4) {
    data[i] = (0.299 * (rgba[at] ?? 0) + 0.587 * (rgba[at + 1] ?? 0) + 0.114 * (rgba[at + 2] ?? 0)) / 255;
  }
  return { data, width, height };
}

/** Its negative: black is white. @param {Grey} grey @returns {Grey} */
export const negative = (grey) => ({ ...grey, data: grey.data.map((value) => 1 - value) });

/**
 * A smaller or larger picture: each new pixel is the mean of the area that it covers, squares of four first where it
 * becomes less than half.
 * @param {Grey} grey @param {number} share of the old sides
 * @returns {Grey}
 */
export function resized(grey, share) {
  const width = Math.max(1, Math.round(grey.width * share));
  const height = Math.max(1, Math.round(grey.height * share));
  return fitted(grey, width, height);
}

/** @param {Grey} grey @param {number} width @param {number} height @returns {Grey} */
function fitted(grey, width, height) {
  if (2 * width <= grey.width && 2 * height <= grey.height) return fitted(halved(grey), width, height);
  const columns = partsOf(grey.width, width);
  const rows = partsOf(grey.height, height);
  const data = new Float32Array(width * height);
  const line = new Float32Array(grey.width);
  for (let y = 0; y < height; y += 1) {
    line.fill(0);
    for (let i = at(rows.begin, y); i < at(rows.begin, y + 1); i += 1) {
      const from = at(rows.of, i) * grey.width;
      const part = at(rows.part, i);
      for (let x = 0; x < grey.width; x += 1) line[x] = at(line, x) + part * at(grey.data, from + x);
    }
    for (let x = 0, i = 0; x < width; x += 1) {
      const end = at(columns.begin, x + 1);
      let sum = 0;
      for (; i < end; i += 1) sum += at(columns.part, i) * at(line, at(columns.of, i));
      data[y * width + x] = sum;
    }
  }
  return { data, width, height };
}

/** Which old places, and how much of each, a row of new places covers: those of the n-th are `begin[n]` up to
 * `begin[n + 1]`. @param {number} before @param {number} now how many places */
function partsOf(before, now) {
  const step = before / now;
  const begin = [0];
  const of = [];
  const part = [];
  for (let place = 0; place < now; place += 1) {
    const from = place * step;
    const to = Math.min(before, from + step);
    for (let old = Math.floor(from); old < to; old += 1) {
      of.push(old);
      part.push((Math.min(old + 1, to) - Math.max(old, from)) / (to - from));
    }
    begin.push(of.length);
  }
  return { begin: Int32Array.from(begin), of: Int32Array.from(of), part: Float32Array.from(part) };
}

/** @param {Grey} grey @returns {Grey} half as wide and high; an odd row or column at the end is left out */
function halved({ data, width, height }) {
  const half = new Float32Array((width >> 1) * (height >> 1));
  let i = 0;
  for (let y = 0; y < height >> 1; y += 1) {
    let from = 2 * y * width;
    for (let x = 0; x < width >> 1; x += 1, i += 1, from += 2) {
      half[i] = (at(data, from) + at(data, from + 1) + at(data, from + width) + at(data, from + width + 1)) / 4;
    }
  }
  return { data: half, width: width >> 1, height: height >> 1 };
}

/**
 * Part of a picture; what lies outside is left out.
 * @param {Grey} grey @param {{left: number, top: number, right: number, bottom: number}} frame in px
 * @returns {Grey & {left: number, top: number}} with the corner that was taken
 */
export function cut(grey, frame) {
  const left = Math.max(0, Math.min(grey.width - 1, Math.floor(frame.left)));
  const top = Math.max(0, Math.min(grey.height - 1, Math.floor(frame.top)));
  const width = Math.max(1, Math.min(grey.width, Math.ceil(frame.right)) - left);
  const height = Math.max(1, Math.min(grey.height, Math.ceil(frame.bottom)) - top);
  const data = new Float32Array(width * height);
  for (let y = 0; y < height; y += 1) {
    const from = (top + y) * grey.width + left;
    data.set(grey.data.subarray(from, from + width), y * width);
  }
  return { data, width, height, left, top };
}

/**
 * A Gaussian blur in two passes, cut off at three deviations, the edge mirrored as scipy.ndimage does it.
 * @param {Grey} grey @param {number} sigma_px
 * @returns {Grey}
 */
export function blurred({ data, width, height }, sigma_px) {
  const kernel = bell(sigma_px);
  const made = alongColumns(data, width, height, kernel);
  alongRows(made, width, height, kernel);
  return { data: made, width, height };
}

/** @param {number} sigma_px @returns {Float32Array} from the middle outwards */
function bell(sigma_px) {
  const radius = Math.max(0, Math.ceil(3 * sigma_px));
  const made = Float32Array.from({ length: radius + 1 }, (_, i) => Math.exp((-i * i) / (2 * sigma_px * sigma_px || 1)));
  const whole = made.reduce((sum, each) => sum + 2 * each, -1);
  return made.map((each) => each / whole);
}

/** Two neighbours at once, which share what they read. @param {Float32Array} data changed @param {number} width
 * @param {number} height @param {Float32Array} kernel */
function alongRows(data, width, height, kernel) {
  const radius = kernel.length - 1;
  const middle_weight = at(kernel, 0);
  const line = new Float32Array(width + 2 * radius + 1);
  for (let y = 0; y < height; y += 1) {
    const begin = y * width;
    for (let x = 0; x < width; x += 1) line[x + radius] = at(data, begin + x);
    for (let i = 1; i <= radius; i += 1) {
      line[radius - i] = at(data, begin + mirrored(-i, width));
      line[radius + width - 1 + i] = at(data, begin + mirrored(width - 1 + i, width));
    }
    for (let x = 0; x < width; x += 2) {
      const middle = x + radius;
      let before = at(line, middle);
      let after = at(line, middle + 1);
      let one = middle_weight * before;
      let other = middle_weight * after;
      for (let k = 1; k <= radius; k += 1) {
        const weight = at(kernel, k);
        const left = at(line, middle - k);
        const right = at(line, middle + 1 + k);
        one += weight * (left + after);
        other += weight * (before + right);
        before = left;
        after = right;
      }
      data[begin + x] = one;
      if (x + 1 < width) data[begin + x + 1] = other;
    }
  }
}

/** Row by row, so that memory is read in its order, and two distances at once. @param {Float32Array} data
 * @param {number} width @param {number} height @param {Float32Array} kernel */
function alongColumns(data, width, height, kernel) {
  const made = new Float32Array(data.length);
  const middle_weight = at(kernel, 0);
  for (let y = 0; y < height; y += 1) {
    const begin = y * width;
    for (let x = 0; x < width; x += 1) made[begin + x] = middle_weight * at(data, begin + x);
    for (let k = 1; k < kernel.length; k += 2) {
      const near = at(kernel, k);
      const far = kernel[k + 1] ?? 0;
      const above = mirrored(y - k, height) * width;
      const below = mirrored(y + k, height) * width;
      const higher = mirrored(y - k - 1, height) * width;
      const lower = mirrored(y + k + 1, height) * width;
      for (let x = 0; x < width; x += 1) {
        made[begin + x] =
          at(made, begin + x) +
          near * (at(data, above + x) + at(data, below + x)) +
          far * (at(data, higher + x) + at(data, lower + x));
      }
    }
  }
  return made;
}

/** Where a place beyond the edge is mirrored to: … 1 0 | 0 1 2 … @param {number} i @param {number} length */
function mirrored(i, length) {
  const round = ((i % (2 * length)) + 2 * length) % (2 * length);
  return round < length ? round : 2 * length - 1 - round;
}

/**
 * The largest, or smallest, value within a square around each pixel, in two passes whose cost does not grow with the
 * square (van Herk 1992 Pattern Recognition Letters 13:517-521; from memory).
 * @param {Grey} grey @param {number} radius_px @param {boolean} largest
 * @returns {Grey}
 */
export function extreme({ data, width, height }, radius_px, largest) {
  const sign = largest ? 1 : -1;
  const across = transposed(widest(data, width, height, radius_px, sign), width, height);
  return { data: transposed(widest(across, height, width, radius_px, sign), height, width), width, height };
}

/** @param {Float32Array} data @param {number} length of a row @param {number} rows @param {number} radius
 * @param {number} sign */
function widest(data, length, rows, radius, sign) {
  const made = new Float32Array(data.length);
  const side = 2 * radius + 1;
  const whole = Math.ceil((length + 2 * radius) / side) * side;
  const line = new Float32Array(whole).fill(-Infinity);
  const ahead = new Float32Array(whole);
  const back = new Float32Array(whole);
  for (let row = 0; row < rows; row += 1) {
    const begin = row * length;
    for (let i = 0; i < length; i += 1) line[i + radius] = sign * at(data, begin + i);
    for (let first = 0; first < whole; first += side) {
      const last = first + side - 1;
      ahead[first] = at(line, first);
      back[last] = at(line, last);
      for (let i = 1; i < side; i += 1) {
        ahead[first + i] = Math.max(at(ahead, first + i - 1), at(line, first + i));
        back[last - i] = Math.max(at(back, last - i + 1), at(line, last - i));
      }
    }
    for (let i = 0; i < length; i += 1) made[begin + i] = sign * Math.max(at(back, i), at(ahead, i + side - 1));
  }
  return made;
}

/** Columns as rows. @param {Float32Array} data @param {number} width @param {number} height */
function transposed(data, width, height) {
  const made = new Float32Array(data.length);
  const tile = 32;
  for (let top = 0; top < height; top += tile) {
    for (let left = 0; left < width; left += tile) {
      for (let y = top; y < Math.min(height, top + tile); y += 1) {
        for (let x = left; x < Math.min(width, left + tile); x += 1) made[x * height + y] = at(data, y * width + x);
      }
    }
  }
  return made;
}

/**
 * A value that is there: the type checker cannot know that an index lies inside.
 * @param {Float32Array | Int32Array | Uint8ClampedArray | Uint8Array} data @param {number} i
 */
export const at = (data, i) => /** @type {number} */ (data[i]);
