/**
 * The one table of quantities that a person may enter. Inputs, reading of typed text, report and articles all read it;
 * names and hints stand in `words/` under the same key. Ranges are SI; `usual`
 * is common practice, no source.
 */
import { limits } from '../calc/limits.ts';
import type { airflowQuantities } from './airflow/quantities.ts';
import type { ductQuantities } from './ducts/quantities.ts';
import { lineSetQuantities } from './lineSetQuantities.ts';
import type { readReportQuantities } from './readReport/quantities.ts';
import type { sureQuantities } from './sure/quantities.ts';
import type { Quantity, System, UnitKey } from './types.ts';
import { toSi } from './units.ts';

type Range = readonly [number, number];

const fahrenheit = (low: number, high: number): Range => [toSi(low, 'degF'), toSi(high, 'degF')];
const inCfm = (low: number, high: number): Range => [toSi(low, 'cfm'), toSi(high, 'cfm')];
const inTons = (low: number, high: number): Range => [toSi(low, 'ton'), toSi(high, 'ton')];

/** The part of what the calculations accept that such a reading can be: it catches a slip of the finger or of the unit. */
const narrowed = (limit: Range, low: number, high: number): Range => [
  Math.max(limit[0], low),
  Math.min(limit[1], high),
];
const indoorPossible = narrowed(limits.dryBulb, -5, 55);
const outdoorPossible = narrowed(limits.dryBulb, -30, 60);
/** Above one in a hundred, so that a fraction typed for a per cent is noticed. */
const humidityPossible = narrowed(limits.relativeHumidity, 0.01, 1);

const temperature = {
  kind: 'temperature',
  ip: 'degF',
  si: 'degC',
  decimals: { ip: 1, si: 1 },
  possible: indoorPossible,
} as const;
const humidity = {
  kind: 'fraction',
  ip: 'percent',
  si: 'percent',
  decimals: { ip: 0, si: 0 },
  possible: humidityPossible,
} as const;
const airflow = {
  kind: 'volumeFlow',
  ip: 'cfm',
  si: 'ls',
  decimals: { ip: 0, si: 0 },
  possible: inCfm(100, 12000),
} as const;
/** What the air chart holds: wider than indoors, for outdoor air and for worked examples. */
const chartPossible = narrowed(limits.dryBulb, -10, 55);
const chartUsual = fahrenheit(35, 115);
const blowerPower = {
  kind: 'power',
  ip: 'watt',
  si: 'watt',
  decimals: { ip: 0, si: 0 },
  usual: [80, 1500],
  possible: [0, 8000],
} as const;
/** A total of the maker's, as printed. */
const capacity = {
  kind: 'power',
  ip: 'btuh',
  si: 'kw',
  decimals: { ip: 0, si: 2 },
  usual: inTons(1, 6),
  possible: inTons(0.25, 40),
} as const;
/** A factor of the maker's on the printed figures. */
const correction = {
  kind: 'fraction',
  ip: 'fraction',
  si: 'fraction',
  decimals: { ip: 3, si: 3 },
  usual: [0.85, 1.1],
  possible: narrowed(limits.multiplier, 0.5, 1.5),
} as const;

export const quantities = {
  ...lineSetQuantities,
  'entering.dryBulb': { ...temperature, symbol: 't₁', usual: fahrenheit(65, 86) },
  'entering.relativeHumidity': { ...humidity, symbol: 'φ₁', usual: [0.3, 0.7] },
  'entering.wetBulb': { ...temperature, symbol: 't*₁', usual: fahrenheit(54, 74) },
  'leaving.dryBulb': { ...temperature, symbol: 't₂', usual: fahrenheit(45, 65) },
  'leaving.relativeHumidity': { ...humidity, symbol: 'φ₂', usual: [0.85, 0.98] },
  'leaving.wetBulb': { ...temperature, symbol: 't*₂', usual: fahrenheit(43, 63) },
  'airflow.volumeFlow': { ...airflow, symbol: 'V̇', usual: inCfm(350, 2600) },
  altitude: {
    kind: 'length',
    symbol: 'Z',
    ip: 'ft',
    si: 'm',
    decimals: { ip: 0, si: 0 },
    usual: [-90, 3000],
    possible: limits.altitude,
  },
  barometer: {
    kind: 'pressure',
    symbol: 'p',
    ip: 'inHg',
    si: 'hpa',
    decimals: { ip: 2, si: 0 },
    usual: [70000, 104000],
    possible: limits.pressure,
  },
  outdoorDryBulb: {
    ...temperature,
    symbol: 'tₒ',
    usual: fahrenheit(65, 115),
    possible: outdoorPossible,
  },
  nominalCapacity: {
    kind: 'power',
    symbol: 'Qₙ',
    ip: 'ton',
    si: 'kw',
    decimals: { ip: 1, si: 1 },
    usual: inTons(1, 6),
    possible: inTons(0.5, 20),
  },
  'blower.power': { ...blowerPower, symbol: 'Pᵦ' },
  'rating.outdoorLow': {
    ...temperature,
    symbol: 'tₒ',
    decimals: { ip: 0, si: 1 },
    usual: fahrenheit(65, 125),
    possible: outdoorPossible,
  },
  'rating.outdoorHigh': {
    ...temperature,
    symbol: 'tₒ',
    decimals: { ip: 0, si: 1 },
    usual: fahrenheit(65, 125),
    possible: outdoorPossible,
  },
  'rating.wetBulbLow': {
    ...temperature,
    symbol: 't*',
    decimals: { ip: 0, si: 1 },
    usual: fahrenheit(55, 77),
  },
  'rating.wetBulbHigh': {
    ...temperature,
    symbol: 't*',
    decimals: { ip: 0, si: 1 },
    usual: fahrenheit(55, 77),
  },
  'rating.airflow': { ...airflow, symbol: 'V̇ᵣ', usual: inCfm(350, 2600) },
  'rating.airflowSecond': { ...airflow, symbol: 'V̇ᵣ', usual: inCfm(350, 2600) },
  'rating.blowerPower': { ...blowerPower, symbol: 'Pᵣ' },
  'rating.certified': { ...capacity, symbol: 'Qₐ' },
  'rating.certifiedAirflow': { ...airflow, symbol: 'V̇ᵣ', usual: inCfm(350, 2600) },
  'rating.indoorMatch': { ...correction, symbol: 'k' },
  'rating.lineLength': { ...correction, symbol: 'k' },
  'rating.enteringDryBulb': {
    ...temperature,
    symbol: 't₁ᵣ',
    decimals: { ip: 0, si: 1 },
    usual: fahrenheit(70, 85),
  },
  'rating.total': { ...capacity, symbol: 'Q' },
  'rating.sensible': {
    kind: 'power',
    symbol: 'Qₛ',
    ip: 'btuh',
    si: 'kw',
    decimals: { ip: 0, si: 2 },
    usual: inTons(0.5, 6),
    possible: inTons(0.1, 40),
  },
  'rating.power': {
    kind: 'power',
    symbol: 'P',
    ip: 'kw',
    si: 'kw',
    decimals: { ip: 2, si: 2 },
    usual: [300, 9000],
    possible: [50, 80e3],
  },
  line: {
    kind: 'fraction',
    symbol: 'L',
    ip: 'percent',
    si: 'percent',
    decimals: { ip: 0, si: 0 },
    usual: [0.8, 1],
    possible: [0.5, 1.2],
  },
  'sideBySide.dryBulb': {
    kind: 'temperatureDifference',
    symbol: 'Δt',
    ip: 'degFStep',
    si: 'degCStep',
    decimals: { ip: 1, si: 1 },
    usual: [-1, 1],
    possible: [-10, 10],
  },
  'sideBySide.humidity': {
    kind: 'fraction',
    symbol: 'Δφ',
    ip: 'percent',
    si: 'percent',
    decimals: { ip: 1, si: 1 },
    usual: [-0.05, 0.05],
    possible: [-0.3, 0.3],
  },
  'state.dryBulb': {
    ...temperature,
    symbol: 't',
    usual: chartUsual,
    possible: chartPossible,
  },
  'state.relativeHumidity': {
    ...humidity,
    symbol: 'φ',
    decimals: { ip: 1, si: 1 },
    usual: [0.05, 1],
  },
  'state.wetBulb': {
    ...temperature,
    symbol: 't*',
    usual: chartUsual,
    possible: chartPossible,
  },
  'state.dewPoint': {
    ...temperature,
    symbol: 'tᵈ',
    usual: fahrenheit(0, 85),
    possible: narrowed(limits.dewPoint, -40, 55),
  },
  'state.humidityRatio': {
    kind: 'humidityRatio',
    symbol: 'W',
    ip: 'grainsPerLb',
    si: 'gPerKg',
    decimals: { ip: 1, si: 2 },
    usual: [0.001, 0.03],
    possible: narrowed(limits.humidityRatio, 0.0001, 0.08),
  },
  'process.airflow': {
    ...airflow,
    symbol: 'V̇',
    usual: inCfm(50, 50000),
    possible: inCfm(1, 200000),
  },
  'process.dryAirFlow': {
    kind: 'massFlow',
    symbol: 'ṁ',
    ip: 'lbPerHour',
    si: 'kgPerS',
    decimals: { ip: 0, si: 3 },
    usual: [0.02, 30],
    possible: [5e-4, 120],
  },
} as const satisfies Record<string, Quantity>;

/** Those of the airflow sheet, of the ducts and of how sure come with who asks them: no other page carries their rows. */
export type QuantityKey =
  | keyof typeof quantities
  | keyof typeof airflowQuantities
  | keyof typeof ductQuantities
  | keyof typeof readReportQuantities
  | keyof typeof sureQuantities;

const rows: Partial<Record<QuantityKey, Quantity>> = { ...quantities };

/** Brings in the rows of a sheet of its own. Every module that reads them calls it first; twice is once. */
export function joinQuantities(more: Readonly<Partial<Record<QuantityKey, Quantity>>>): void {
  Object.assign(rows, more);
}

/** The row of a quantity, its literal types widened. */
export function quantityOf(key: QuantityKey): Quantity {
  const row = rows[key];
  if (row === undefined) throw new Error(`the rows of ${key} have not joined the table of quantities`);
  return row;
}

/** The unit in which a quantity is asked for in a system. */
export function unitOf(key: QuantityKey, system: System): UnitKey {
  return quantityOf(key)[system];
}
