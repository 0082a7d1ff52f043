/** Refrigerants between the rows that the package carries: the same states worked out elsewhere. */
import { type Refrigerant, refrigerantState } from '../../src/calc/index.ts';
import type { Check } from './check.ts';
import { liquidStates, vaporStates } from './data/refrigerantStates.ts';

const common = { source: 'refrigerants', known: 'computed' } as const;

interface Promise {
  readonly what: 'pressure' | 'density' | 'enthalpy' | 'viscosity';
  readonly unit: string;
  /** Half-width: a share of the figure, and for an enthalpy J/kg. */
  readonly share: number;
  readonly fixed?: number;
  readonly why: string;
}

const rows = 'a cubic through rows 5 K apart';
const line = 'a straight line through the rows at 0 and 10 K of superheat';
const asSaturated = 'subcooled liquid is taken as saturated liquid of its own temperature';

const ofVapor = (superheat: number): readonly Promise[] => [
  { what: 'density', unit: 'kg/m³', share: superheat > 15 ? 0.01 : 0.005, why: line },
  { what: 'enthalpy', unit: 'J/kg', share: 0, fixed: superheat > 15 ? 1500 : 700, why: line },
  { what: 'viscosity', unit: 'Pa·s', share: 0.005, why: line },
];

const ofLiquid = (subcooling: number): readonly Promise[] => [
  { what: 'pressure', unit: 'Pa', share: 0.003, why: rows },
  { what: 'density', unit: 'kg/m³', share: subcooling > 0 ? 0.01 : 0.005, why: subcooling > 0 ? asSaturated : rows },
  {
    what: 'enthalpy',
    unit: 'J/kg',
    share: 0,
    fixed: subcooling > 0 ? 600 : 50,
    why: subcooling > 0 ? asSaturated : rows,
  },
  { what: 'viscosity', unit: 'Pa·s', share: subcooling > 0 ? 0.025 : 0.005, why: subcooling > 0 ? asSaturated : rows },
];

function check(
  title: string,
  expected: number,
  { what, unit, share, fixed = 0, why }: Promise,
  ours: () => number,
): Check {
  return { title: `${title}: ${what}`, expected, tolerance: fixed + share * expected, unit, why, ...common, ours };
}

export const checks: readonly Check[] = [
  ...vaporStates.flatMap((row) => {
    const { refrigerant, dewPoint, superheat } = row;
    const state = () => refrigerantState(refrigerant as Refrigerant, { dewPoint, superheat });
    const title = `${refrigerant} vapour, dew point ${dewPoint} °C, ${superheat} K above it`;
    return ofVapor(superheat).map((one) => check(title, row[one.what as 'density'], one, () => state()[one.what]));
  }),
  ...liquidStates.flatMap((row) => {
    const { refrigerant, bubblePoint, subcooling } = row;
    const state = () => refrigerantState(refrigerant as Refrigerant, { bubblePoint, subcooling });
    const title = `${refrigerant} liquid, bubble point ${bubblePoint} °C, ${subcooling} K below it`;
    return ofLiquid(subcooling).map((one) => check(title, row[one.what], one, () => state()[one.what]));
  }),
];
