import { foot } from './units.ts';

/** Tubing that split systems are rated with unless they bring longer lines, m: 25 ft (10 CFR 430 subpart B appendix M1). */
export const ratedLineLength = 25 * foot;

/** What a line set can be; the temperatures are those of the refrigerant rows, with room for the line to take of them. */
export const lineSetLimits = {
  evaporating: [-15, 25],
  superheat: [0, 15],
  liquidTemperature: [0, 55],
  subcooling: [0, 20],
  /** Of lines and of the length that stands for fittings. */
  length: [0, 200],
  lift: [-60, 60],
  factor: [0.3, 1.2],
} as const satisfies Record<string, readonly [number, number]>;
