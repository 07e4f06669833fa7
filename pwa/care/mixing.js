// How much sugar goes into how much water for a share of the weight. Pure; the same figures as
// server/broodshelf/care/feeding/sugar_water.py, held to it by fixtures/conformance/mixing.json.

/** Density of water at 20 C in g/mL. */
const WATER_G_PER_ML = 0.9982;

/**
 * Sucrose solution at 20 C, CRC Handbook: % of the weight, g/mL; straight lines between.
 * @type {Array<[number, number]>}
 */
const DENSITY = [
  [0, 0.9982],
  [10, 1.0381],
  [20, 1.081],
  [30, 1.127],
  [40, 1.1765],
  [50, 1.2295],
  [60, 1.2864],
];

/**
 * @param {number} percent_ww share of sugar in the weight of the whole, 1 to 60 @param {number} water_ml
 * @returns {{sugar_g: number, total_ml: number}}
 */
export function mixSugarWater(percent_ww, water_ml) {
  if (!(percent_ww >= 1 && percent_ww <= 60)) throw new RangeError(`share of sugar: ${percent_ww} %`);
  const water_g = water_ml * WATER_G_PER_ML;
  const sugar_g = (water_g * percent_ww) / (100 - percent_ww);
  return { sugar_g, total_ml: (water_g + sugar_g) / densityAt(percent_ww) };
}

/** @param {number} percent */
function densityAt(percent) {
  const above = DENSITY.findIndex(([at]) => at >= percent);
  const lower = /** @type {[number, number]} */ (DENSITY[Math.max(0, above - 1)]);
  const upper = /** @type {[number, number]} */ (DENSITY[above]);
  const [p1, d1] = lower;
  const [p2, d2] = upper;
  return p2 === p1 ? d2 : d1 + ((d2 - d1) * (percent - p1)) / (p2 - p1);
}
