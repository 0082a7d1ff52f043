import { fromFahrenheit, poundPerSquareInch, saturationPressure } from '../../src/calc/index.ts';
import { allow, type Check } from './check.ts';

/** Eq. 5 and 6 are those of Hyland and Wexler; the tables follow IAPWS. */
const share = 0.0004;
const why = 'Eq. 5 and 6 (Hyland and Wexler) and IAPWS, which the tables follow, are up to 0.04 % apart';

/** 2021 Fundamentals (SI), chapter 1, table 3: °C, Pa, half a unit of the last digit. */
const table: readonly (readonly [number, number, number])[] = [
  [-60, 1.08, 0.005],
  [-50, 3.94, 0.005],
  [-40, 12.84, 0.005],
  [-30, 38.01, 0.005],
  [-20, 103.24, 0.005],
  [-10, 259.87, 0.005],
  [-5, 401.74, 0.005],
  [0, 611.15, 0.005],
  [5, 872.6, 0.05],
  [10, 1228.2, 0.05],
  [15, 1705.7, 0.05],
  [20, 2339.2, 0.05],
  [25, 3169.7, 0.05],
  [30, 4246.7, 0.05],
  [35, 5628.6, 0.05],
  [40, 7384.4, 0.05],
  [50, 12351.3, 0.05],
  [60, 19945.8, 0.05],
  [80, 47414.7, 0.05],
  [100, 101418, 0.05],
  [150, 476101.4, 0.05],
];

/** 2017 Fundamentals (I-P), the same table, as the tests of psychrolib cite it: °F, psia, half a unit of the last digit. */
const tableIp: readonly (readonly [number, number, number])[] = [
  [-76, 0.000157, 5e-7],
  [-4, 0.014974, 5e-7],
  [23, 0.058268, 5e-7],
  [41, 0.12656, 5e-6],
  [77, 0.45973, 5e-6],
  [122, 1.7914, 5e-6],
  [212, 14.7094, 5e-5],
  [300, 67.0206, 5e-5],
];

/** Check values of IAPWS: where from, K, Pa. */
const iapws: readonly (readonly [string, number, number])[] = [
  ['IAPWS R7-97 (2012), table 35', 300, 3536.58941],
  ['IAPWS R6-95, two-phase check table', 275, 698.451167],
  ['IAPWS R14-08 (2011), sublimation', 230, 8.94735],
];

export const checks: readonly Check[] = [
  ...table.map(
    ([t, expected, rounding]): Check => ({
      title: `Table 3: saturation pressure at ${t} °C`,
      expected,
      tolerance: allow(expected, rounding, share),
      unit: 'Pa',
      source: 'handbookPsychrometrics',
      known: 'read',
      why,
      ours: () => saturationPressure(t),
    }),
  ),
  ...tableIp.map(
    ([t, expected, rounding]): Check => ({
      title: `Table 3 (I-P): saturation pressure at ${t} °F`,
      expected,
      tolerance: allow(expected, rounding, share),
      unit: 'psia',
      source: 'psychrolibTests',
      known: 'second-hand',
      why,
      ours: () => saturationPressure(fromFahrenheit(t)) / poundPerSquareInch,
    }),
  ),
  ...iapws.map(
    ([source, kelvin, expected]): Check => ({
      title: `IAPWS: saturation pressure at ${kelvin} K`,
      expected,
      tolerance: allow(expected, 0, share),
      unit: 'Pa',
      source,
      known: 'memory, recomputed',
      why,
      ours: () => saturationPressure(kelvin - 273.15),
    }),
  ),
];
