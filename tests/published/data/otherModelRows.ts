/** Other open models of cooling capacity, worked out from their coefficients elsewhere. Temperatures in °F. */

/** Three example coils of EnergyPlus: outdoor, entering wet bulb, factor. */
export const exampleCoils: readonly (readonly [string, number, number, number])[] = [
  ['generic I', 75, 72, 1.22636],
  ['generic I', 82, 62, 0.98439],
  ['generic I', 82, 67, 1.07874],
  ['generic I', 82, 72, 1.18364],
  ['generic I', 95, 62, 0.90585],
  ['generic I', 95, 72, 1.1047],
  ['generic I', 105, 62, 0.8458],
  ['generic I', 105, 72, 1.04436],
  ['generic I', 115, 62, 0.78608],
  ['generic I', 115, 67, 0.87993],
  ['generic I', 115, 72, 0.98434],
  ['generic II', 75, 67, 1.05652],
  ['generic II', 75, 72, 1.11201],
  ['generic II', 82, 72, 1.10432],
  ['generic II', 95, 62, 0.92923],
  ['generic II', 95, 67, 0.99948],
  ['generic II', 95, 72, 1.06909],
  ['generic II', 105, 62, 0.86947],
  ['generic II', 105, 72, 1.02346],
  ['generic II', 115, 62, 0.7936],
  ['generic II', 115, 67, 0.87797],
  ['generic II', 115, 72, 0.9617],
  ['generic III', 75, 62, 1.00628],
  ['generic III', 75, 67, 1.1108],
  ['generic III', 75, 72, 1.21882],
  ['generic III', 82, 62, 0.97266],
  ['generic III', 82, 67, 1.07237],
  ['generic III', 95, 67, 1.0004],
  ['generic III', 105, 62, 0.86066],
  ['generic III', 105, 72, 1.03188],
  ['generic III', 115, 62, 0.81122],
  ['generic III', 115, 67, 0.88819],
  ['generic III', 115, 72, 0.96867],
];

/** California Title 24, wet coil at 80 °F entering: outdoor, entering wet bulb, scfm a ton, factor. */
export const californiaWet: readonly (readonly [number, number, number, number])[] = [
  [75, 63, 400, 1.0603],
  [85, 63, 400, 0.9951],
  [85, 67, 400, 1.0691],
  [85, 72, 400, 1.1664],
  [95, 63, 400, 0.9298],
  [95, 67, 400, 1],
  [95, 72, 400, 1.0925],
  [105, 67, 400, 0.9309],
  [105, 72, 400, 1.0186],
  [115, 63, 400, 0.7993],
  [115, 72, 400, 0.9447],
  [95, 67, 300, 0.9552],
  [95, 67, 350, 0.9808],
  [95, 67, 400, 1],
];

/** The same, dry coil at 95 °F outdoors and 400 scfm a ton: entering dry bulb, factor. */
export const californiaDry: readonly (readonly [number, number])[] = [
  [80, 0.8825],
  [85, 0.9382],
];

/** The same, gross sensible heat ratio at 95/67: entering dry bulb, scfm a ton. */
export const californiaShare: readonly (readonly [number, number, number])[] = [
  [80, 300, 0.6643],
  [80, 350, 0.6909],
  [80, 400, 0.7175],
  [80, 450, 0.7441],
  [70, 400, 0.4755],
  [75, 400, 0.5965],
  [78, 400, 0.6691],
];

/** Eight open sets, each over its value at 95/67: outdoor, entering wet bulb, mean, and the farthest from it. */
export const eightSets: readonly (readonly [number, number, number, number])[] = [
  [75, 62, 1.023, 0.023],
  [75, 63, 1.037, 0.026],
  [75, 67, 1.105, 0.048],
  [75, 72, 1.212, 0.1],
  [82, 62, 0.991, 0.02],
  [82, 63, 1.005, 0.016],
  [82, 67, 1.07, 0.026],
  [82, 72, 1.174, 0.07],
  [85, 62, 0.977, 0.019],
  [85, 63, 0.99, 0.015],
  [85, 67, 1.054, 0.018],
  [85, 72, 1.158, 0.059],
  [95, 62, 0.927, 0.021],
  [95, 63, 0.939, 0.015],
  [95, 67, 1, 0.01],
  [95, 72, 1.099, 0.03],
  [105, 62, 0.873, 0.027],
  [105, 63, 0.885, 0.021],
  [105, 67, 0.942, 0.011],
  [105, 72, 1.038, 0.019],
  [115, 62, 0.816, 0.032],
  [115, 63, 0.827, 0.028],
  [115, 67, 0.881, 0.019],
  [115, 72, 0.973, 0.028],
];
