/**
 * Saturated moist air at 14.696 psia. `read`: 2017 ASHRAE Handbook: Fundamentals (I-P), chapter 1, table 2, as the tests of
 * psychrolib cite it. `read, converted`: the 2021 SI table, h/2.326 + 7.6857 Btu/lb (dry air is zero at 0 °F) and
 * v × 16.01846. `computed`: the model behind the table (RP-1485, by CoolProp 8.0.0). `null`: figure not copied.
 */
export interface SaturatedRowIp {
  readonly known: 'read' | 'read, converted' | 'computed';
  /** °F */
  readonly t: number;
  readonly W: number | null;
  /** ft³/lb */
  readonly volume: number | null;
  /** Btu/lb */
  readonly enthalpy: number | null;
}

type Line = readonly [SaturatedRowIp['known'], number, number | null, number | null, number | null];

const lines: readonly Line[] = [
  ['read', -58, 2.43e-5, null, -13.906],
  ['read', -4, 0.0006373, null, -0.286],
  ['read', 23, 0.0024863, null, 8.186],
  ['read', 41, 0.005425, null, 15.699],
  ['read', 77, 0.020173, null, 40.576],
  ['read', 185, 0.838105, null, 999.749],
  ['read, converted', 32, 0.00379, 12.462, null],
  ['read, converted', 41, 0.0054247, 12.725, null],
  ['read, converted', 50, 0.0076627, 13.001, 20.306],
  ['computed', 55, 0.009235, 13.161, 23.229],
  ['computed', 57, 0.00994, 13.227, 24.484],
  ['read, converted', 59, 0.010694, 13.294, 25.791],
  ['computed', 60, 0.011089, 13.328, 26.467],
  ['computed', 62, 0.011921, 13.397, 27.862],
  ['computed', 63, 0.012357, 13.432, null],
  ['computed', 65, 0.013272, 13.503, 30.07],
  ['computed', 67, 0.014249, 13.576, 31.627],
  ['read, converted', 68, 0.014761, 13.612, 32.431],
  ['computed', 70, 0.015835, 13.687, null],
  ['computed', 72, 0.016979, 13.763, null],
  ['computed', 75, null, 13.881, null],
  ['read, converted', 77, 0.020173, 13.962, null],
  ['computed', 80, null, 14.088, 43.701],
  ['computed', 85, 0.026436, 14.309, null],
  ['read, converted', 86, 0.027333, 14.354, 50.682],
  ['read, converted', 95, 0.03676, 14.803, 63.343],
  ['computed', 100, 0.043222, 15.083, null],
  ['read, converted', 104, 0.049145, 15.325, 79.345],
  ['read, converted', 113, 0.065416, 15.946, 99.762],
  ['read, converted', 122, null, 16.699, null],
];

export const saturatedTableIp: readonly SaturatedRowIp[] = lines.map(([known, t, W, volume, enthalpy]) => ({
  known,
  t,
  W,
  volume,
  enthalpy,
}));
