// A line drawing for each step of a how-to (care/plan/steps.py), drawn for this app. What moves stands still for those
// who want it so (style/cards.css). One table, so it is long.
import { html } from './html.js';
import {
  ant,
  bottle,
  box,
  clock,
  cross,
  dish,
  dropper,
  eye,
  fridge,
  hand,
  leaf,
  nest,
  phone,
  prey,
  seeds,
  snow,
  tap,
  tick,
  tube,
  tweezers,
} from './drawn-things.js';

/** Each step and its drawing; what is not here is said in words alone. @type {Record<string, unknown>} */
const DRAWINGS = {
  tube_step_still: [tube(), hand(52, 62), cross],
  tube_step_find: [
    tube(),
    html`
      <path class="moving" d="M69 6v12M64 14l5 5l5 -5" />
    `,
  ],
  tube_step_good: [tube(), tick],
  tube_step_bad: [
    tube({ wet: false, leak: true }),
    html`
      <path class="bad" d="M104 4v10M104 18v1" />
    `,
  ],
  nest_step_look: [nest(true), eye],
  nest_step_still: [nest(true), hand(98, 68), cross],
  nest_step_place: [
    nest(true),
    html`
      <path class="moving" d="M108 8v14M103 17l5 6l5 -6" />
    `,
  ],
  nest_step_drip: [
    nest(true),
    html`
      <g transform="translate(28 -8)">${dropper}</g>
    `,
  ],
  nest_step_drip_ml: [
    nest(true),
    html`
      <g transform="translate(28 -8)">${dropper}</g>
    `,
  ],
  nest_step_stop: [nest(true), tick],
  nest_step_bad: [
    nest(false),
    html`
      <path class="bad" d="M104 4v10M104 18v1" />
    `,
  ],
  drop_step_take: [
    bottle,
    html`
      <g transform="translate(24 14)">${dropper}</g>
    `,
  ],
  drop_step_place: [
    box(),
    dish,
    dropper,
    html`
      <path class="drop" d="M61 34c3 5 4 6 4 9a4 4 0 0 1 -8 0c0 -3 1 -4 4 -9z" />
    `,
  ],
  drop_step_small: [
    html`
      <path class="drop-still" d="M34 30c4 7 6 9 6 13a6 6 0 0 1 -12 0c0 -4 2 -6 6 -13z" />
    `,
    html`
      <g transform="translate(-54 0)">${tick}</g>
    `,
    cross,
    html`
      <path class="drop-still" d="M74 22c10 14 15 20 15 28a15 15 0 0 1 -30 0c0 -8 5 -14 15 -28z" />
    `,
    ant(74, 50),
  ],
  feeder_step_out: [
    box(),
    html`
      <rect x="48" y="30" width="22" height="14" rx="3" />
    `,
    tweezers(58, 34),
  ],
  feeder_step_fill: [
    tap,
    html`
      <rect x="46" y="46" width="26" height="16" rx="3" />
      <path class="wet" d="M47 52h24v9h-24z" />
    `,
  ],
  feeder_step_back: [
    box({ lid: 'none' }),
    html`
      <path d="M36 61h48" />
      <rect x="48" y="47" width="24" height="14" rx="3" />
    `,
    tick,
  ],
  prey_step_take: [
    snow,
    html`
      <rect x="44" y="24" width="60" height="36" rx="4" />
    `,
    prey(74, 42),
  ],
  prey_step_cut: [
    prey(62, 46),
    html`
      <path class="bold" d="M62 30v32" />
      <path d="M66 4l-4 22M58 4l4 22" />
    `,
  ],
  prey_step_place: [box(), prey(58, 56), tweezers(58, 48)],
  seed_step_take: [
    html`
      <path d="M26 20h34l6 46h-46zM30 12h26l4 8h-34z" />
    `,
    html`
      <g transform="translate(36 0)">${seeds}</g>
    `,
  ],
  seed_step_place: [box(), seeds],
  leaf_step_take: [
    leaf,
    html`
      <path d="M86 14l14 40M104 14l-18 40" />
    `,
  ],
  leaf_step_rinse: [
    tap,
    html`
      <g transform="translate(24 18) scale(.8)">${leaf}</g>
    `,
  ],
  leaf_step_place: [
    box(),
    html`
      <g transform="translate(32 32) scale(.6)">${leaf}</g>
    `,
  ],
  piece_step_take: [
    html`
      <path d="M20 58h84M34 58c0 -20 50 -20 50 0" />
      <path class="bold" d="M60 20v34" />
    `,
  ],
  piece_step_place: [
    box(),
    dish,
    html`
      <circle class="fill" cx="60" cy="55" r="3" />
    `,
  ],
  food_step_only: [
    prey(50, 40),
    html`
      <path d="M26 20c30 -8 56 12 58 36" />
    `,
    cross,
  ],
  food_step_close: [
    box({ lid: 'on' }),
    html`
      <path class="moving" d="M60 8v14M55 17l5 6l5 -6" />
    `,
  ],
  food_step_bad: [
    box({ lid: 'on' }),
    ant(16, 66),
    html`
      <path class="bad" d="M112 8v10M112 22v1" />
    `,
  ],
  left_step_find: [box(), eye, prey(62, 56)],
  left_step_take: [box(), prey(66, 38), tweezers(66, 30)],
  left_step_held: [box({ lid: 'none' }), prey(62, 56), ant(44, 56), clock],
  left_step_bin: [
    html`
      <path d="M40 26h36l-4 40h-28zM36 26h44M52 20h12" />
    `,
    tick,
  ],
  barrier_step_look: [
    box({ lid: 'none' }),
    eye,
    html`
      <path class="bold" d="M22 38v6M98 38v6" />
    `,
  ],
  barrier_step_bridge: [
    box({ lid: 'none' }),
    html`
      <path class="bold" d="M12 50c4 -14 10 -18 26 -2" />
    `,
    tweezers(20, 36),
  ],
  barrier_step_still: [box({ lid: 'none' }), hand(92, 30), cross],
  barrier_step_bad: [
    box({ lid: 'none' }),
    ant(22, 30),
    ant(10, 66),
    html`
      <path class="bad" d="M112 8v10M112 22v1" />
    `,
  ],
  helper_glance: [tube(), eye],
  glance_step_calm: [tube(), tick],
  glance_step_bad: [
    tube(),
    ant(20, 66),
    html`
      <path class="bad" d="M104 4v10M104 18v1" />
    `,
  ],
  risk_step_signs: [
    tube(),
    eye,
    html`
      <path class="bad" d="M26 44l8 -16M42 48l8 -16" />
    `,
  ],
  air_step_open: [
    fridge,
    html`
      <path d="M80 28l24 8v32l-24 0" />
    `,
    clock,
  ],
  air_step_still: [tube(), snow, cross],
  air_step_close: [fridge, tick],
  helper_call: [
    phone,
    html`
      <g transform="translate(0 16) scale(.7)">${tube()}</g>
    `,
  ],
  helper_tell: [
    phone,
    html`
      <path d="M8 14h62v30h-44l-10 10v-10h-8zM20 24h38M20 33h26" />
    `,
  ],
  helper_wet: [
    tube({ leak: true }),
    html`
      <path class="fill" d="M4 52h112l-6 12h-100z" />
    `,
  ],
  helper_escape: [
    box({ lid: 'on' }),
    ant(12, 62),
    html`
      <path class="bold" d="M104 60l10 -22" />
      <path d="M100 58l8 5M98 62l8 5" />
    `,
  ],
  helper_fridge: [
    fridge,
    html`
      <path class="moving" d="M104 40h-16M93 35l-5 5l5 5" />
    `,
  ],
  helper_heater: [
    html`
      <path d="M26 24h28v28h-28zM40 52v12h40M34 34v8M46 34v8" />
    `,
    html`
      <path class="moving" d="M62 38h18M75 33l5 5l-5 5" />
    `,
  ],
  helper_dead: [
    snow,
    prey(70, 44),
    html`
      <path d="M60 24l6 6M66 24l-6 6" />
    `,
  ],
};

/**
 * The drawing of a step, if it has one.
 * @param {{code: string}} props
 */
export function Drawing({ code }) {
  const drawn = DRAWINGS[code];
  if (!drawn) return null;
  return html`
    <svg class="drawing" viewBox="0 0 120 72" aria-hidden="true">${drawn}</svg>
  `;
}

/** The codes that are drawn, for the test that asks for each step. */
export const drawnSteps = Object.keys(DRAWINGS);
