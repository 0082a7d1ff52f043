/** The promises, held to the whole list of real-gas states and to the third that the fit has not seen. */
import { type MoistAir, moistAir } from '../../src/calc/index.ts';
import type { Check } from './check.ts';
import { heldBack, type RealGasRow, realGasRows } from './data/realGasRows.ts';

/** How far a state of ours, from dry bulb, pressure and relative humidity, is from the row. */
const distances = [
  {
    what: 'humidity ratio',
    unit: '%',
    limit: 0.03,
    of: (a: MoistAir, r: RealGasRow) => percent(a.humidityRatio, r[3]),
  },
  { what: 'enthalpy', unit: 'kJ/kg', limit: 0.12, of: (a: MoistAir, r: RealGasRow) => (a.enthalpy - r[4]) / 1000 },
  {
    what: 'specific volume',
    unit: '%',
    limit: 0.08,
    of: (a: MoistAir, r: RealGasRow) => percent(a.specificVolume, r[5]),
  },
  { what: 'wet bulb', unit: 'K', limit: 0.05, of: (a: MoistAir, r: RealGasRow) => a.wetBulb - r[6] },
  { what: 'dew point', unit: 'K', limit: 0.05, of: (a: MoistAir, r: RealGasRow) => a.dewPoint - r[7] },
] as const;

function percent(ours: number, theirs: number): number {
  return (ours / theirs - 1) * 100;
}

function worst(values: readonly number[]): number {
  return values.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
}

function state(row: RealGasRow): MoistAir {
  return moistAir({ dryBulb: row[0], pressure: row[1], relativeHumidity: row[2] });
}

function stateByWetBulb(row: RealGasRow): MoistAir {
  return moistAir({ dryBulb: row[0], pressure: row[1], wetBulb: row[6] });
}

/** Pairs of rows that a coil could join: colder, not wetter, same pressure, 12 to 40 kJ/kg. */
export function coilPairs(rows: readonly RealGasRow[]): (readonly [RealGasRow, RealGasRow])[] {
  return rows.flatMap((from) =>
    rows
      .filter((to) => {
        const drop = from[4] - to[4];
        return from[1] === to[1] && to[0] < from[0] && to[3] <= from[3] && drop >= 12e3 && drop <= 40e3;
      })
      .map((to) => [from, to] as const),
  );
}

function coilPercent(make: (row: RealGasRow) => MoistAir, [from, to]: readonly [RealGasRow, RealGasRow]): number {
  return percent(make(from).enthalpy - make(to).enthalpy, from[4] - to[4]);
}

/** The same from dry bulb, pressure and wet bulb: Eq. 33 takes heat capacities as constant, and dry air feels it most. */
const distancesByWetBulb = [
  {
    what: 'humidity ratio from wet bulbs',
    unit: 'g/kg',
    limit: 0.03,
    of: (a: MoistAir, r: RealGasRow) => 1000 * (a.humidityRatio - r[3]),
  },
  {
    what: 'enthalpy from wet bulbs',
    unit: 'kJ/kg',
    limit: 0.15,
    of: (a: MoistAir, r: RealGasRow) => (a.enthalpy - r[4]) / 1000,
  },
] as const;

const measures = [
  ...distances.map((distance) => ({ ...distance, make: state })),
  ...distancesByWetBulb.map((distance) => ({ ...distance, make: stateByWetBulb })),
];

const parts = [
  { which: 'all states', rows: realGasRows },
  { which: 'the states kept out of the fit', rows: realGasRows.filter((_, index) => heldBack(index)) },
] as const;

export const checks: readonly Check[] = parts.flatMap(({ which, rows }) => [
  ...measures.map(
    ({ what, unit, limit, of, make }): Check => ({
      title: `RP-1485, ${which} (${rows.length}): largest distance in ${what}`,
      expected: 0,
      tolerance: limit,
      unit,
      source: 'realGas',
      known: 'computed',
      ours: () => worst(rows.map((row) => of(make(row), row))),
    }),
  ),
  ...[
    { from: 'relative humidities', make: state },
    { from: 'wet bulbs', make: stateByWetBulb },
  ].map(
    ({ from, make }): Check => ({
      title: `RP-1485, ${which}: largest distance in a coil’s enthalpy difference, from ${from}`,
      expected: 0,
      tolerance: 0.15,
      unit: '%',
      source: 'realGas',
      known: 'computed',
      ours: () => worst(coilPairs(rows).map((pair) => coilPercent(make, pair))),
    }),
  ),
]);
