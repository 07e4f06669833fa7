// Units and colours of food.

export const foodText = {
  units: /** @type {Record<string, (n: number) => string>} */ ({
    drop: (n) => (n === 1 ? 'drop' : 'drops'),
    ml: () => 'mL',
    piece: (n) => (n === 1 ? 'piece' : 'pieces'),
    leg: (n) => (n === 1 ? 'leg' : 'legs'),
    slice: (n) => (n === 1 ? 'slice' : 'slices'),
    mg: () => 'mg',
    seed: (n) => (n === 1 ? 'seed' : 'seeds'),
    leaf: (n) => (n === 1 ? 'leaf' : 'leaves'),
  }),
  tints: { blue: 'Blue', green: 'Green', yellow: 'Yellow', red: 'Red' },
};
