/** What thinner air does, by height in feet. */
type Row = readonly [feet: number, figure: number];

/** Pressure over that at sea level, which is the density ratio at one temperature. */
export const pressureRatios: readonly Row[] = [
  [1000, 0.9644],
  [2000, 0.9298],
  [3000, 0.8962],
  [4000, 0.8637],
  [5000, 0.8321],
  [5280, 0.8234],
  [6000, 0.8014],
  [7000, 0.7716],
  [8000, 0.7428],
  [10000, 0.6877],
];

/** Capacity of a blower of constant volume: a published flow curve read at the pressure ratio. */
export const capacityFactors: readonly Row[] = [
  [1000, 0.9944],
  [2000, 0.9886],
  [3000, 0.9828],
  [4000, 0.9768],
  [5000, 0.9707],
  [5280, 0.969],
  [6000, 0.9646],
  [7000, 0.9584],
  [8000, 0.9522],
  [10000, 0.9398],
];

/** Density of the standard atmosphere, whose temperature falls with the height. */
export const lapsedDensities: readonly Row[] = [
  [1000, 0.9711],
  [2000, 0.9428],
  [3000, 0.9151],
  [4000, 0.8881],
  [5000, 0.8617],
  [5280, 0.8544],
  [6000, 0.8359],
  [7000, 0.8106],
  [8000, 0.786],
  [10000, 0.7385],
];

/** Altitude correction factors of ACCA Manual J. */
export const manualFactors: readonly Row[] = [
  [1000, 0.9692],
  [2000, 0.9384],
  [3000, 0.9076],
  [4000, 0.8768],
  [5000, 0.846],
  [5280, 0.8374],
  [6000, 0.8152],
  [7000, 0.7844],
  [8000, 0.7536],
  [10000, 0.692],
];

/** Density ratios printed by a design manual of US Veterans Affairs. */
export const designManual: readonly Row[] = [
  [2000, 0.944],
  [4000, 0.89],
  [6000, 0.838],
];

/** Relative densities at one temperature printed by a design guide. */
export const designGuide: readonly Row[] = [
  [6000, 0.801],
  [7000, 0.772],
  [8000, 0.743],
];
