/** What is asked where the airflow is found: a row for each field, and for each kind of cell of its tables. */
import { airflowLimits } from '../../calc/airflow/limits.ts';
import { limits } from '../../calc/limits.ts';
import { cubicFootPerMinute, footPerMinute, inch, inchOfWater } from '../../calc/units.ts';
import type { Quantity } from '../types.ts';

type Range = readonly [number, number];
const inWater = (low: number, high: number): Range => [low * inchOfWater, high * inchOfWater];
const inCfm = (low: number, high: number): Range => [low * cubicFootPerMinute, high * cubicFootPerMinute];
const inches = (low: number, high: number): Range => [low * inch, high * inch];

const airflow = {
  kind: 'volumeFlow',
  ip: 'cfm',
  si: 'ls',
  decimals: { ip: 0, si: 0 },
  usual: inCfm(350, 2600),
  possible: inCfm(100, 12000),
} as const;
/** At one grille or one plate. */
const part = { ...airflow, usual: inCfm(100, 2600), possible: inCfm(10, 12000) } as const;
/** Of a duct against the room: a minus sign says which side of the blower, and does not matter here. */
const ductStatic = {
  kind: 'airPressure',
  symbol: 'p',
  ip: 'inwcDuct',
  si: 'paDuct',
  decimals: { ip: 2, si: 0 },
  usual: inWater(-1, 1),
  possible: [-airflowLimits.staticPressure[1], airflowLimits.staticPressure[1]],
} as const;
/** A side of a duct is read as a diameter is: in inches or millimetres. */
const side = {
  kind: 'diameter',
  ip: 'inch',
  si: 'mm',
  decimals: { ip: 1, si: 0 },
  usual: inches(6, 40),
  possible: airflowLimits.side,
} as const;
const temperature = {
  kind: 'temperature',
  ip: 'degF',
  si: 'degC',
  decimals: { ip: 1, si: 1 },
  possible: limits.dryBulb,
} as const;

export const airflowQuantities = {
  'readout.volumeFlow': { ...airflow, symbol: 'V̇' },
  'fanTable.supplyStatic': { ...ductStatic, symbol: 'pₛ' },
  'fanTable.returnStatic': { ...ductStatic, symbol: 'pᵣ' },
  'fanTable.static': { ...ductStatic, usual: inWater(0, 1.2), possible: airflowLimits.staticPressure },
  'fanTable.flow': { ...airflow, symbol: 'V̇' },
  'traverse.width': { ...side, symbol: 'a' },
  'traverse.height': { ...side, symbol: 'b' },
  'traverse.diameter': { ...side, symbol: 'D' },
  'traverse.straight': { ...side, symbol: 'L', usual: inches(0, 400), possible: [0, 100] },
  'traverse.pressure': {
    ...ductStatic,
    decimals: { ip: 3, si: 1 },
    usual: inWater(0.005, 0.3),
    possible: airflowLimits.velocityPressure,
  },
  'traverse.velocity': {
    kind: 'velocity',
    symbol: 'w',
    ip: 'fpm',
    si: 'mPerS',
    decimals: { ip: 0, si: 2 },
    usual: [200 * footPerMinute, 2000 * footPerMinute],
    possible: airflowLimits.velocity,
  },
  'rise.voltage': {
    kind: 'voltage',
    symbol: 'U',
    ip: 'volt',
    si: 'volt',
    decimals: { ip: 0, si: 0 },
    usual: [190, 500],
    possible: airflowLimits.voltage,
  },
  'rise.current': {
    kind: 'current',
    symbol: 'I',
    ip: 'ampere',
    si: 'ampere',
    decimals: { ip: 1, si: 1 },
    usual: [10, 100],
    possible: airflowLimits.current,
  },
  'rise.powerFactor': {
    kind: 'ratio',
    symbol: 'cos φ',
    ip: 'one',
    si: 'one',
    decimals: { ip: 2, si: 2 },
    usual: [0.9, 1],
    possible: airflowLimits.powerFactor,
  },
  'rise.power': {
    kind: 'power',
    symbol: 'Q',
    ip: 'watt',
    si: 'watt',
    decimals: { ip: 0, si: 0 },
    usual: [3000, 30000],
    possible: airflowLimits.heat,
  },
  'rise.gasVolume': {
    kind: 'volume',
    symbol: 'V',
    ip: 'ft3',
    si: 'm3',
    decimals: { ip: 1, si: 3 },
    usual: [0.005, 1],
    possible: airflowLimits.gasVolume,
  },
  'rise.gasTime': {
    kind: 'duration',
    symbol: 'τ',
    ip: 'second',
    si: 'second',
    decimals: { ip: 0, si: 0 },
    usual: [20, 300],
    possible: airflowLimits.time,
  },
  'rise.heatingValue': {
    kind: 'heatingValue',
    symbol: 'H',
    ip: 'btuPerFt3',
    si: 'mjPerM3',
    decimals: { ip: 0, si: 1 },
    usual: [33e6, 100e6],
    possible: airflowLimits.heatingValue,
  },
  'rise.efficiency': {
    kind: 'fraction',
    symbol: 'η',
    ip: 'percent',
    si: 'percent',
    decimals: { ip: 1, si: 1 },
    usual: [0.75, 0.98],
    possible: airflowLimits.efficiency,
  },
  'rise.entering': { ...temperature, symbol: 't₁', usual: [15, 27] },
  'rise.leaving': { ...temperature, symbol: 't₂', usual: [25, 70] },
  'rise.blowerPower': {
    kind: 'power',
    symbol: 'Pᵦ',
    ip: 'watt',
    si: 'watt',
    decimals: { ip: 0, si: 0 },
    usual: [80, 1500],
    possible: limits.blowerPower,
  },
  'flowGrid.plate': { ...part, symbol: 'V̇ₚ' },
  'flowGrid.normal': { ...ductStatic },
  'flowGrid.withGrid': { ...ductStatic, symbol: 'pₚ' },
  'match.fanFlow': { ...airflow, symbol: 'V̇ₘ' },
  'match.normal': { ...ductStatic },
  'match.reached': { ...ductStatic, symbol: 'pₘ' },
  'hood.flow': { ...part, symbol: 'V̇' },
  'grille.width': { ...side, symbol: 'a' },
  'grille.height': { ...side, symbol: 'b' },
  'grille.areaFactor': {
    kind: 'ratio',
    symbol: 'k',
    ip: 'one',
    si: 'one',
    decimals: { ip: 2, si: 2 },
    usual: [0.5, 1],
    possible: airflowLimits.areaFactor,
  },
  'grille.velocity': {
    kind: 'velocity',
    symbol: 'w',
    ip: 'fpm',
    si: 'mPerS',
    decimals: { ip: 0, si: 2 },
    usual: [100 * footPerMinute, 1000 * footPerMinute],
    possible: airflowLimits.velocity,
  },
} as const satisfies Record<string, Quantity>;
