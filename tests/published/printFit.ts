import { refit } from './fitEnhancement.ts';

const { coefficients, used, held } = refit();
console.log(coefficients);
console.log(`largest distance: ${used.toFixed(0)} ppm in the rows used, ${held.toFixed(0)} ppm in the rows held back`);
