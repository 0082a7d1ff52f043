/** Refrigerant lines: friction factors, drops, what a fall of the dew point does to the density, columns of liquid. */
import {
  bubblePointOf,
  dewPointOf,
  fahrenheitDegree,
  foot,
  frictionFactor,
  fromFahrenheit,
  inch,
  type LineSetInput,
  lineSet,
  pipeDrop,
  poundPerSquareInch,
  type Refrigerant,
  ratedLineLength,
  refrigerantState,
  refrigerants,
  shareOfLoss,
  standardGravity,
  type Tube,
  throttled,
  tonOfRefrigeration,
} from '../../src/calc/index.ts';
import type { Check } from './check.ts';
import { type LineRow, lineRows } from './data/lineRows.ts';
import type { NotOurs } from './notOurs.ts';

type Inputs = LineRow['inputs'];
type Figure = (inputs: Inputs) => number;

const at = (inputs: Inputs, name: string) => inputs[name] as number;
const names: Readonly<Record<string, Refrigerant>> = {
  R410A: 'R-410A',
  R32: 'R-32',
  R454B: 'R-454B',
  R22: 'R-22',
};
const fluid = (inputs: Inputs) => names[(inputs['fluid'] ?? 'R22') as string] as Refrigerant;
const dew = (name: Refrigerant, dewPoint: number) => refrigerantState(name, { dewPoint, superheat: 0 }).pressure;
const liquid = (name: Refrigerant, bubblePoint: number) => refrigerantState(name, { bubblePoint, subcooling: 0 });

/** How fast the dew pressure rises, Pa/K; at the end of the rows from one side. */
function rise(name: Refrigerant, dewPoint: number): number {
  const low = Math.max(-20, dewPoint - 0.05);
  return (dew(name, dewPoint + 0.05) - dew(name, low)) / (dewPoint + 0.05 - low);
}

/** The vapour of the drop rows: 15 °F above a dew point of 45 °F, in the tube of the row. */
function drop(inputs: Inputs): { drop: number; dewDrop: number } {
  const name = fluid(inputs);
  const dewPoint = fromFahrenheit(at(inputs, 'sst_F'));
  const superheat = (at(inputs, 'vapour_F') - at(inputs, 'sst_F')) * fahrenheitDegree;
  const { density, viscosity, pressure } = refrigerantState(name, { dewPoint, superheat });
  const flow = { massFlow: at(inputs, 'mass_flow_kg_s'), density, viscosity, roughness: at(inputs, 'roughness_m') };
  const found = pipeDrop({ ...flow, diameter: at(inputs, 'ID_in') * inch, length: 100 * foot }).drop;
  return {
    drop: found / poundPerSquareInch,
    dewDrop: (dewPoint - dewPointOf(name, pressure - found)) / fahrenheitDegree,
  };
}

/** Density of what saturated vapour becomes when its dew point falls and its enthalpy stays. */
function densityRatio(inputs: Inputs): number {
  const name = fluid(inputs);
  const dewPoint = (inputs['sst_C'] ?? 5) as number;
  const state = refrigerantState(name, { dewPoint, superheat: 0 });
  return throttled(name, state, dew(name, dewPoint - at(inputs, 'loss_K'))).density / state.density;
}

function threeTons(inputs: Inputs): number {
  const tube = inputs['tube'] as Tube;
  const input: LineSetInput = {
    equipment: 'split',
    metering: 'indoors',
    maker: { factor: null, maximumLength: null, maximumLift: null },
    run: {
      refrigerant: fluid(inputs),
      capacity: at(inputs, 'tons') * tonOfRefrigeration,
      evaporating: fromFahrenheit(45),
      superheat: 15 * fahrenheitDegree,
      liquidTemperature: fromFahrenheit(100),
      subcooling: 10 * fahrenheitDegree,
      vaporTube: tube,
      ratedVaporTube: tube,
      liquidTube: '3/8',
      length: at(inputs, 'equiv_length_ft') * foot,
      ratedLength: ratedLineLength,
      fittings: 0,
      lift: 0,
    },
  };
  const { vapor, rated } = lineSet(input);
  return (vapor?.density ?? Number.NaN) / (rated?.density ?? Number.NaN);
}

const ours: Readonly<Record<string, Figure>> = {
  'tubing length, multi-indoor-coil split test set-up': () => ratedLineLength / foot,
  'liquid column static head': (i) =>
    (liquid(fluid(i), fromFahrenheit(at(i, 'T_F'))).density * standardGravity * foot) / poundPerSquareInch,
  'subcooling used per foot of liquid lift': (i) => {
    const bubblePoint = fromFahrenheit(at(i, 'cond_F'));
    const { pressure } = liquid(fluid(i), bubblePoint);
    const { density } = liquid(fluid(i), fromFahrenheit(100));
    const after = bubblePointOf(fluid(i), pressure - density * standardGravity * foot);
    return (bubblePoint - after) / fahrenheitDegree;
  },
  'dP/dTsat at 45F dew': (i) => (rise(fluid(i), fromFahrenheit(45)) / poundPerSquareInch) * fahrenheitDegree,
  'temperature glide at 45F dew pressure': (i) =>
    (fromFahrenheit(45) - bubblePointOf(fluid(i), dew(fluid(i), fromFahrenheit(45)))) / fahrenheitDegree,
  'R410A dew-pressure ancillary value': (i) => dew('R-410A', at(i, 'T_K') - 273.15) / 1000,
  'R410A bubble-pressure ancillary value': (i) => liquid('R-410A', at(i, 'T_K') - 273.15).pressure / 1000,
  'Colebrook friction factor (Darcy)': (i) => frictionFactor(at(i, 'Re'), at(i, 'rel_rough')),
  'capacity with gas-line loss': (i) => 100 * densityRatio(i),
  'suction density ratio (isenthalpic) for suction-line loss': densityRatio,
  'R-22 suction design drop at 0.04 K/m': (i) => 0.04 * rise('R-22', at(i, 'sst_C')),
  'R-410A suction drop at 0.04 K/m': (i) => 0.04 * rise('R-410A', at(i, 'sst_C')),
  'suction friction drop': (i) => drop(i).drop,
  'suction saturation-temperature loss': (i) => drop(i).dewDrop,
  'capacity ratio versus 25 ft line (suction density only)': threeTons,
};

/** Tolerances wider than the row's own, each with its reason. */
const wider: Readonly<Record<string, { readonly tolerance: number; readonly why: string }>> = {
  'tubing length, multi-indoor-coil split test set-up': { tolerance: 1e-9, why: 'a length in whole feet' },
  'R410A dew-pressure ancillary value': { tolerance: 3, why: 'a fit to the same equation: 0.3 % between rows' },
  'R410A bubble-pressure ancillary value': { tolerance: 8, why: 'a fit to the same equation: 0.3 % between rows' },
};

/** Why a row is looked at and not tested against; `null` where it is. */
function reason({ quantity, inputs }: LineRow): string | null {
  if (inputs['fluid'] !== undefined && !refrigerants.includes(fluid(inputs)))
    return 'not a refrigerant of this package';
  if (inputs['line'] === 'discharge' || quantity.startsWith('energy per'))
    return 'from memory, and a loss that no worksheet here works out';
  if (quantity.includes('0.04 K/m') && (inputs['sst_C'] as number) < -20) return 'colder than the rows of the package';
  if (quantity.startsWith('R-22 suction-line capacity'))
    return 'from memory, and the inside diameters that it rests on are not given';
  if (quantity === 'tubing exposed to outdoor conditions') return 'nothing here depends on where the tube lies';
  if (quantity.startsWith('capacity correction for test tubing'))
    return 'from memory, for machines with several indoor units, which this site does not cover';
  return quantity in ours ? null : 'no such figure here';
}

function titleOf({ quantity, inputs }: LineRow): string {
  const given = Object.entries(inputs)
    .filter(([name]) => name !== 'form')
    .map(([name, value]) => `${name} ${value}`);
  return `Lines: ${quantity} (${given.join(', ')})`;
}

/** A loss of capacity for each kelvin of suction loss that a coil which re-balances has, by a two-slope estimate: in the band. */
const rebalanced: Check = {
  title: 'Lines: capacity lost for each kelvin of suction loss, with a coil that re-balances',
  expected: 2.3,
  tolerance: 0.25,
  unit: '%/K',
  source: 'a two-slope estimate for a system, not published',
  known: 'computed',
  why: 'an estimate; the band runs from two thirds of the density loss to all of it',
  ours: () => 100 * shareOfLoss.taken * (1 - densityRatio({ fluid: 'R410A', loss_K: 1 })),
};

export const checks: readonly Check[] = [
  ...lineRows
    .filter((row) => reason(row) === null)
    .map((row) => ({
      title: titleOf(row),
      expected: row.expected,
      tolerance: row.tolerance,
      unit: row.unit,
      source: row.source,
      known: row.known,
      ...wider[row.quantity],
      ours: () => (ours[row.quantity] as Figure)(row.inputs),
    })),
  rebalanced,
];

export const notOurs: readonly NotOurs[] = lineRows.flatMap((row) => {
  const why = reason(row);
  return why === null ? [] : [{ what: `${titleOf(row)}: ${row.expected} ${row.unit}`, source: row.source, why }];
});
