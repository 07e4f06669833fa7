// How large a portion is: one drop or one piece drawn at its true size, beside a ruler to check the printer by.
import { html } from './html.js';
import { catalogue } from '../signals/rows.js';
import { say } from '../words/say.js';

/** @typedef {import('../kinds.d.ts').Portion} Portion */

const RULER_MM = 30;
const HEIGHT_MM = 14;

/**
 * The width of a drop that lies on a flat dish as half a ball, in mm: V = π d³ / 12.
 * @param {number} ul its volume
 */
export const dropWidthMm = (ul) => Math.cbrt((12 * ul) / Math.PI);

/**
 * What one of a portion measures, in mm; null where nobody can say.
 * @param {Portion} portion @param {import('../kinds.d.ts').CatalogueRows} known
 * @returns {{kind: 'drop' | 'prey', mm: number} | null}
 */
export function sizeOf(portion, known) {
  if (portion.unit === 'drop' && known.drop_ul) return { kind: 'drop', mm: dropWidthMm(known.drop_ul) };
  const { food_code, size_class } = portion;
  const range = portion.unit === 'piece' && size_class && known.foods[food_code]?.size?.[size_class]?.length_mm;
  return range ? { kind: 'prey', mm: (range[0] + range[1]) / 2 } : null;
}

/** Marks of a millimetre, longer at each fifth. @param {number} mm */
const mark = (mm) => `M${mm} ${HEIGHT_MM}v${mm % 5 === 0 ? -3 : -1.5}`;
const RULER = Array.from({ length: RULER_MM + 1 }, (_, mm) => mark(mm)).join('');

/** @param {{portion: Portion | null}} props */
export function TrueSize({ portion }) {
  const known = catalogue.value;
  const size = portion && sizeOf(portion, known);
  if (!size) return null;
  const words =
    size.kind === 'drop' ? say('paper-drop-of', { ul: known.drop_ul }) : say('paper-prey-of', { mm: size.mm });
  const middle = RULER_MM / 2;
  const shape =
    size.kind === 'drop'
      ? html`
          <path class="fill" d=${`M${middle - size.mm / 2} 9a${size.mm / 2} ${size.mm / 2} 0 0 1 ${size.mm} 0z`} />
        `
      : html`
          <ellipse class="fill" cx=${middle} cy="5" rx=${size.mm / 2} ry=${Math.min(4.5, size.mm / 6)} />
        `;
  return html`
    <figure class="true-size">
      <svg
        width=${`${RULER_MM}mm`}
        height=${`${HEIGHT_MM}mm`}
        viewBox=${`0 0 ${RULER_MM} ${HEIGHT_MM}`}
        role="img"
        aria-label=${words}
      >
        ${shape}
        <path d=${RULER} />
      </svg>
      <figcaption>
        <strong>${say('paper-true-size')}:</strong>
        ${' '}${words}. ${say('paper-ruler')}
      </figcaption>
    </figure>
  `;
}
