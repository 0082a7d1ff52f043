import { fromFahrenheit } from './units.ts';

/** The conditions of the certified capacity, °C: test A of 10 CFR 430 subpart B appendix M1. */
export const ratingPoint = {
  outdoorDryBulb: fromFahrenheit(95),
  enteringDryBulb: fromFahrenheit(80),
  enteringWetBulb: fromFahrenheit(67),
} as const;
