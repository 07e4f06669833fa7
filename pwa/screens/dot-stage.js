// The picture with its dots, the frame around what counts, and the two ends of a length that is known.
import { useEffect, useRef } from 'preact/hooks';
import { html } from '../components/html.js';
import { drawDots } from '../counting/drawing.js';
import { say } from '../words/say.js';

/** @typedef {import('../counting/marks.js').Dot} Dot */
/** @typedef {import('../counting/propose.js').Frame} Frame */
/** @typedef {{x: number, y: number}} Point in px of the picture */
/**
 * @typedef {object} StageProps
 * @property {string} address of the picture
 * @property {number} width_px
 * @property {number} height_px
 * @property {Dot[]} dots
 * @property {string} chosen the key of a dot
 * @property {number} threshold
 * @property {number} body_px
 * @property {number} zoom
 * @property {Frame} frame
 * @property {((frame: Frame) => void) | null} onFrame null: the frame is only shown
 * @property {[Point, Point] | null} ruler
 * @property {(ruler: [Point, Point]) => void} onRuler
 * @property {(place: Point, reach_px: number) => void} onTap
 * @property {(event: KeyboardEvent) => void} onKey
 */

/** The style of this part, which the style sheet of the start does without. */
const STYLE = `
.dot-view { overflow: auto; max-height: 62dvh; border-radius: var(--round); background: var(--sunk); }
.dot-view { overscroll-behavior: contain; }
.dot-stage { position: relative; touch-action: pan-x pan-y; }
.dot-stage:focus-visible { outline: 3px solid var(--act); outline-offset: -3px; }
.dot-stage img, .dot-stage canvas { display: block; width: 100%; height: auto; }
.dot-stage canvas { position: absolute; inset: 0; height: 100%; pointer-events: none; }
.dot-handle { position: absolute; width: 3rem; height: 3rem; margin: -1.5rem 0 0 -1.5rem; padding: 0; }
.dot-handle { border: 0; background: none; touch-action: none; cursor: grab; }
.dot-handle::after { content: ""; position: absolute; inset: 0.9rem; background: var(--act); }
.dot-handle::after { border: 3px solid #fffaf1; outline: 3px solid #1a130e; }
.dot-handle.end::after { border-radius: 50%; }
.dot-handle.first { margin: 0; } .dot-handle.second { margin: -3rem 0 0 -3rem; }
.dot-handle.first::after { inset: 0 1.8rem 1.8rem 0; } .dot-handle.second::after { inset: 1.8rem 0 0 1.8rem; }
.dot-sum { font-size: var(--step-3); font-family: var(--serif); margin: 0; }
.dot-slide { display: grid; gap: 0.25rem; }
.dot-slide input { width: 100%; min-height: var(--target); accent-color: var(--act); }
.dot-strip canvas { display: block; width: 100%; height: auto; border-radius: var(--round-small); }
`;
let styled = false;
/** Put the style beside the others, once. */
export function wearStyle() {
  if (styled) return;
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(STYLE);
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
  styled = true;
}

/** No larger, so that an enlarged picture takes no more memory than a phone has. */
const MOST_CANVAS_PX = 2400;
/** Half the size of a dot on the screen, in CSS px, as the space between bodies allows. */
const DOT = { least: 4, most: 11 };
const THUMB_PX = 22;

/** @param {StageProps} props */
export function DotStage(props) {
  const { address, width_px, height_px, dots, chosen, threshold, body_px, zoom, frame, onFrame, ruler, onRuler } =
    props;
  const stage = useRef(/** @type {HTMLDivElement | null} */ (null));
  const canvas = useRef(/** @type {HTMLCanvasElement | null} */ (null));
  wearStyle();
  useEffect(() => {
    const { current } = canvas;
    if (!current) return;
    const seen_px = current.clientWidth || width_px;
    const whole_px = Math.min(MOST_CANVAS_PX, Math.round(seen_px * Math.min(2, devicePixelRatio)));
    current.width = whole_px;
    current.height = Math.round((whole_px * height_px) / width_px);
    const pen = /** @type {CanvasRenderingContext2D} */ (current.getContext('2d'));
    const scale = whole_px / width_px;
    const by_css = whole_px / seen_px;
    shadeOutside(pen, frame, scale);
    const radius = by_css * Math.min(DOT.most, Math.max(DOT.least, (body_px * seen_px * 0.28) / width_px));
    drawDots(pen, dots, { scale, radius, chosen, threshold });
    if (ruler) drawRuler(pen, ruler, scale, by_css);
  }, [dots, chosen, threshold, body_px, zoom, frame, ruler, width_px, height_px]);
  useEffect(() => {
    const dot = dots.find((each) => each.key === chosen);
    const view = stage.current?.parentElement;
    if (!dot || !view || !stage.current) return;
    const shown = stage.current.clientWidth / width_px;
    view.scrollTo(dot.x * shown - view.clientWidth / 2, dot.y * shown - view.clientHeight / 2);
  }, [chosen, zoom]);
  const placeOf = (/** @type {{clientX: number, clientY: number}} */ event) => {
    const box = /** @type {HTMLDivElement} */ (stage.current).getBoundingClientRect();
    const share = width_px / box.width;
    return { x: (event.clientX - box.left) * share, y: (event.clientY - box.top) * share, share };
  };
  const onClick = (/** @type {MouseEvent} */ event) => {
    if (onFrame || ruler || /** @type {Element} */ (event.target).closest('.dot-handle')) return;
    const { share, ...place } = placeOf(event);
    props.onTap(place, THUMB_PX * share);
  };
  const handle = (
    /** @type {string} */ words,
    /** @type {Point} */ at,
    /** @type {(to: Point) => void} */ move,
    /** @type {string} */ kind,
  ) => html`
    <button
      type="button"
      class=${`dot-handle ${kind}`}
      aria-label=${words}
      style=${{ left: `${(at.x / width_px) * 100}%`, top: `${(at.y / height_px) * 100}%` }}
      onPointerDown=${(/** @type {PointerEvent} */ event) =>
        /** @type {Element} */ (event.currentTarget).setPointerCapture(event.pointerId)}
      onPointerMove=${(/** @type {PointerEvent} */ event) => event.buttons && move(placeOf(event))}
      onKeyDown=${(/** @type {KeyboardEvent} */ event) => {
        const [u, v] = ARROWS[event.key] ?? [0, 0];
        if (!u && !v) return;
        event.preventDefault();
        event.stopPropagation();
        move({ x: at.x + (u * width_px) / 100, y: at.y + (v * width_px) / 100 });
      }}
    ></button>
  `;
  const within = (/** @type {Point} */ { x, y }) => ({
    x: Math.min(width_px, Math.max(0, x)),
    y: Math.min(height_px, Math.max(0, y)),
  });
  return html`
    <div class="dot-view">
      <div
        class="dot-stage"
        ref=${stage}
        tabindex="0"
        role="application"
        aria-label=${say('counting-picture', { count: dots.length })}
        style=${{ width: `${zoom * 100}%` }}
        onClick=${onClick}
        onKeyDown=${props.onKey}
      >
        <img src=${address} alt="" width=${width_px} height=${height_px} draggable=${false} />
        <canvas ref=${canvas} aria-hidden="true"></canvas>
        ${
          onFrame &&
          html`
            ${handle(
              say('counting-corner', { which: 'first' }),
              { x: frame.left, y: frame.top },
              (to) => onFrame(corners(within(to), { x: frame.right, y: frame.bottom }, 'first')),
              'first',
            )}
            ${handle(
              say('counting-corner', { which: 'second' }),
              { x: frame.right, y: frame.bottom },
              (to) => onFrame(corners({ x: frame.left, y: frame.top }, within(to), 'second')),
              'second',
            )}
          `
        }
        ${
          ruler &&
          html`
            ${handle(say('counting-end', { which: 'first' }), ruler[0], (to) => onRuler([within(to), ruler[1]]), 'end')}
            ${handle(say('counting-end', { which: 'other' }), ruler[1], (to) => onRuler([ruler[0], within(to)]), 'end')}
          `
        }
      </div>
    </div>
  `;
}

/** @type {Record<string, [number, number]>} */
export const ARROWS = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };
const SMALLEST_PX = 40;

/** A frame that stays one while a corner is dragged past the other. @param {Point} first @param {Point} second
 * @param {'first' | 'second'} dragged @returns {Frame} */
function corners(first, second, dragged) {
  const one = dragged === 'first';
  return {
    left: one ? Math.min(first.x, second.x - SMALLEST_PX) : first.x,
    top: one ? Math.min(first.y, second.y - SMALLEST_PX) : first.y,
    right: one ? second.x : Math.max(second.x, first.x + SMALLEST_PX),
    bottom: one ? second.y : Math.max(second.y, first.y + SMALLEST_PX),
  };
}

/** @param {CanvasRenderingContext2D} pen @param {Frame} frame @param {number} scale */
function shadeOutside(pen, { left, top, right, bottom }, scale) {
  const { width, height } = pen.canvas;
  pen.fillStyle = 'rgb(20 10 4 / 55%)';
  pen.fillRect(0, 0, width, height);
  pen.clearRect(left * scale, top * scale, (right - left) * scale, (bottom - top) * scale);
}

/** @param {CanvasRenderingContext2D} pen @param {[Point, Point]} ruler @param {number} scale @param {number} by_css */
function drawRuler(pen, [one, other], scale, by_css) {
  for (const [width, colour] of /** @type {Array<[number, string]>} */ ([
    [6, '#1a130e'],
    [2.5, '#fffaf1'],
  ])) {
    pen.lineWidth = width * by_css;
    pen.strokeStyle = colour;
    pen.beginPath();
    pen.moveTo(one.x * scale, one.y * scale);
    pen.lineTo(other.x * scale, other.y * scale);
    pen.stroke();
  }
}
