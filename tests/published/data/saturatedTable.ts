/**
 * Saturated moist air at 101.325 kPa, 2021 ASHRAE Handbook: Fundamentals (SI), chapter 1, table 2. `null`: figure not copied.
 */
export interface SaturatedRow {
  readonly t: number;
  /** kg/kg */
  readonly W: number | null;
  /** m³/kg */
  readonly dryVolume: number | null;
  readonly volume: number | null;
  /** kJ/kg */
  readonly dryEnthalpy: number | null;
  readonly enthalpy: number | null;
}

type Line = readonly [number, number | null, number | null, number | null, number | null, number | null];

const lines: readonly Line[] = [
  [-20, 0.0006373, 0.7165, 0.7172, -20.111, null],
  [-10, 0.0016062, 0.7449, 0.7468, -10.056, null],
  [-5, 0.0024863, 0.7591, 0.7622, -5.0282, 1.1643],
  [0, null, 0.7733, 0.778, 0, 9.4744],
  [5, null, 0.7875, 0.7944, 5.0285, 18.639],
  [10, null, 0.8017, 0.8116, 10.058, null],
  [15, 0.010694, 0.8159, 0.8299, 15.087, 42.114],
  [20, null, 0.8301, 0.8498, 20.117, null],
  [25, 0.020173, 0.8443, 0.8716, 25.148, 76.503],
  [30, 0.027333, 0.8585, 0.8961, 30.18, 100.01],
  [35, 0.03676, 0.8727, 0.9241, 35.213, null],
  [40, 0.049145, 0.8869, 0.9567, 40.247, 166.68],
  [45, null, 0.9011, 0.9955, 45.282, null],
  [50, 0.086863, 0.9153, 1.0425, 50.319, 275.34],
  [55, null, 0.9295, 1.1009, 55.356, 355.14],
  [60, 0.15354, 0.9437, 1.1752, 60.396, 460.87],
];

export const saturatedTable: readonly SaturatedRow[] = lines.map(
  ([t, W, dryVolume, volume, dryEnthalpy, enthalpy]) => ({
    t,
    W,
    dryVolume,
    volume,
    dryEnthalpy,
    enthalpy,
  }),
);
