/**
 * Every unit that may be typed or shown: SI value = (number + offset) × factor. The factors are the exact ones of
 * `calc/units.ts`; the label and what else may be typed behind a number stand here.
 */
import type { Kind } from '../calc/types.ts';
import {
  btu,
  btuPerHour,
  btuPerPound,
  btuPerPoundFahrenheit,
  cubicFootPerMinute,
  cubicFootPerPound,
  fahrenheitDegree,
  foot,
  footPerMinute,
  grain,
  hour,
  inch,
  inchOfMercury,
  inchOfWater,
  minute,
  pound,
  poundPerCubicFoot,
  poundPerHour,
  poundPerSquareInch,
  tonOfRefrigeration,
} from '../calc/units.ts';
import type { Unit } from './types.ts';

/** Enthalpy of dry air between 0 °F and 0 °C, Btu/lb: I-P tables count from 0 °F, SI tables from 0 °C (ASHRAE Fundamentals, ch. 1, table 2). */
const enthalpyDatum = 7.6857;

export const units = {
  degF: { kind: 'temperature', factor: fahrenheitDegree, offset: -32, suffixes: ['°F', 'f', 'degf'] },
  degC: { kind: 'temperature', factor: 1, offset: 0, suffixes: ['°C', 'c', 'degc'] },
  degFStep: {
    kind: 'temperatureDifference',
    factor: fahrenheitDegree,
    offset: 0,
    suffixes: ['°F', 'f', 'degf'],
  },
  degCStep: { kind: 'temperatureDifference', factor: 1, offset: 0, suffixes: ['°C', 'c', 'k', 'degc'] },
  percent: { kind: 'fraction', factor: 0.01, offset: 0, suffixes: ['%', '%rh', 'pct', 'percent'] },
  fraction: { kind: 'fraction', factor: 1, offset: 0, suffixes: [] },
  cfm: { kind: 'volumeFlow', factor: cubicFootPerMinute, offset: 0, suffixes: ['cfm', 'acfm', 'ft3/min'] },
  ls: { kind: 'volumeFlow', factor: 0.001, offset: 0, suffixes: ['L/s', 'ls', 'lps'] },
  m3PerS: { kind: 'volumeFlow', factor: 1, offset: 0, suffixes: ['m³/s'] },
  m3h: { kind: 'volumeFlow', factor: 1 / hour, offset: 0, suffixes: ['m³/h', 'm3h', 'cmh'] },
  btuh: { kind: 'power', factor: btuPerHour, offset: 0, suffixes: ['Btu/h', 'btuh', 'btu/hr', 'btu'] },
  mbh: { kind: 'power', factor: 1000 * btuPerHour, offset: 0, suffixes: ['kBtu/h', 'mbh', 'mbtuh', 'kbtuh', 'k'] },
  kw: { kind: 'power', factor: 1000, offset: 0, suffixes: ['kW'] },
  watt: { kind: 'power', factor: 1, offset: 0, suffixes: ['W', 'watt', 'watts'] },
  ton: { kind: 'power', factor: tonOfRefrigeration, offset: 0, suffixes: ['ton', 'tons', 'tr'] },
  ft: { kind: 'length', factor: foot, offset: 0, suffixes: ['ft', 'feet', 'foot', "'"] },
  m: { kind: 'length', factor: 1, offset: 0, suffixes: ['m', 'meter', 'meters', 'metre', 'metres'] },
  inch: { kind: 'diameter', factor: inch, offset: 0, suffixes: ['in'] },
  mm: { kind: 'diameter', factor: 0.001, offset: 0, suffixes: ['mm'] },
  ft2: { kind: 'area', factor: foot ** 2, offset: 0, suffixes: ['ft²', 'sqft'] },
  m2: { kind: 'area', factor: 1, offset: 0, suffixes: ['m²'] },
  fpm: { kind: 'velocity', factor: footPerMinute, offset: 0, suffixes: ['fpm', 'ft/min'] },
  mPerS: { kind: 'velocity', factor: 1, offset: 0, suffixes: ['m/s'] },
  inHg: { kind: 'pressure', factor: inchOfMercury, offset: 0, suffixes: ['inHg', '"hg'] },
  hpa: { kind: 'pressure', factor: 100, offset: 0, suffixes: ['hPa', 'mbar', 'mb'] },
  kpa: { kind: 'pressure', factor: 1000, offset: 0, suffixes: ['kPa'] },
  psi: { kind: 'pressure', factor: poundPerSquareInch, offset: 0, suffixes: ['psi', 'psia'] },
  pa: { kind: 'pressure', factor: 1, offset: 0, suffixes: ['Pa'] },
  inwc: {
    kind: 'pressure',
    factor: inchOfWater,
    offset: 0,
    suffixes: ['in. w.c.', 'inwg', '"wc'],
  },
  /** The small pressures of a duct. */
  inwcDuct: { kind: 'airPressure', factor: inchOfWater, offset: 0, suffixes: ['in. w.c.', 'inwg', 'inwc', '"wc'] },
  paDuct: { kind: 'airPressure', factor: 1, offset: 0, suffixes: ['Pa'] },
  volt: { kind: 'voltage', factor: 1, offset: 0, suffixes: ['V', 'volt', 'volts'] },
  ampere: { kind: 'current', factor: 1, offset: 0, suffixes: ['A', 'amp', 'amps'] },
  ft3: { kind: 'volume', factor: foot ** 3, offset: 0, suffixes: ['ft³', 'cuft'] },
  m3: { kind: 'volume', factor: 1, offset: 0, suffixes: ['m³'] },
  btuPerFt3: { kind: 'heatingValue', factor: btu / foot ** 3, offset: 0, suffixes: ['Btu/ft³'] },
  mjPerM3: { kind: 'heatingValue', factor: 1e6, offset: 0, suffixes: ['MJ/m³'] },
  grainsPerLb: { kind: 'humidityRatio', factor: grain / pound, offset: 0, suffixes: ['gr/lb'] },
  gPerKg: { kind: 'humidityRatio', factor: 0.001, offset: 0, suffixes: ['g/kg'] },
  /** Of a state of air, counted from 0 °F as I-P tables do. */
  btuPerLb: { kind: 'enthalpy', factor: btuPerPound, offset: -enthalpyDatum, suffixes: ['Btu/lb'] },
  /** A difference of two enthalpies, or the enthalpy of water: no datum. */
  btuPerLbStep: { kind: 'enthalpy', factor: btuPerPound, offset: 0, suffixes: ['Btu/lb'] },
  kjPerKg: { kind: 'enthalpy', factor: 1000, offset: 0, suffixes: ['kJ/kg'] },
  lbPerHour: { kind: 'massFlow', factor: poundPerHour, offset: 0, suffixes: ['lb/h', 'lb/hr'] },
  kgPerHour: { kind: 'massFlow', factor: 1 / hour, offset: 0, suffixes: ['kg/h'] },
  kgPerS: { kind: 'massFlow', factor: 1, offset: 0, suffixes: ['kg/s'] },
  lbPerFt3: { kind: 'density', factor: poundPerCubicFoot, offset: 0, suffixes: ['lb/ft³'] },
  kgPerM3: { kind: 'density', factor: 1, offset: 0, suffixes: ['kg/m³'] },
  lb: { kind: 'mass', factor: pound, offset: 0, suffixes: ['lb', 'lbs'] },
  kg: { kind: 'mass', factor: 1, offset: 0, suffixes: ['kg'] },
  microPaS: { kind: 'viscosity', factor: 1e-6, offset: 0, suffixes: ['µPa·s'] },
  ft3PerLb: { kind: 'specificVolume', factor: cubicFootPerPound, offset: 0, suffixes: ['ft³/lb'] },
  m3PerKg: { kind: 'specificVolume', factor: 1, offset: 0, suffixes: ['m³/kg'] },
  btuPerLbF: { kind: 'specificHeat', factor: btuPerPoundFahrenheit, offset: 0, suffixes: ['Btu/(lb·°F)'] },
  kjPerKgK: { kind: 'specificHeat', factor: 1000, offset: 0, suffixes: ['kJ/(kg·K)'] },
  /** Airflow per capacity: m³/s per ton, as the calculations give it. No kind of flow, so that no airflow field takes it. */
  cfmPerTon: { kind: 'ratio', factor: cubicFootPerMinute, offset: 0, suffixes: ['cfm/ton'] },
  lsPerKw: { kind: 'ratio', factor: tonOfRefrigeration / 1e6, offset: 0, suffixes: ['L/s per kW'] },
  one: { kind: 'ratio', factor: 1, offset: 0, suffixes: [] },
  count: { kind: 'count', factor: 1, offset: 0, suffixes: [] },
  minute: { kind: 'duration', factor: minute, offset: 0, suffixes: ['min'] },
  second: { kind: 'duration', factor: 1, offset: 0, suffixes: ['s'] },
} as const satisfies Record<string, Unit>;

export type UnitKey = keyof typeof units;

/** The unit in which the working shows a kind of quantity. */
export const displayUnit = {
  temperature: { ip: 'degF', si: 'degC' },
  temperatureDifference: { ip: 'degFStep', si: 'degCStep' },
  pressure: { ip: 'psi', si: 'kpa' },
  airPressure: { ip: 'inwcDuct', si: 'paDuct' },
  fraction: { ip: 'percent', si: 'percent' },
  humidityRatio: { ip: 'grainsPerLb', si: 'gPerKg' },
  enthalpy: { ip: 'btuPerLb', si: 'kjPerKg' },
  specificVolume: { ip: 'ft3PerLb', si: 'm3PerKg' },
  volumeFlow: { ip: 'cfm', si: 'ls' },
  massFlow: { ip: 'lbPerHour', si: 'kgPerHour' },
  power: { ip: 'btuh', si: 'kw' },
  voltage: { ip: 'volt', si: 'volt' },
  current: { ip: 'ampere', si: 'ampere' },
  heatingValue: { ip: 'btuPerFt3', si: 'mjPerM3' },
  length: { ip: 'ft', si: 'm' },
  diameter: { ip: 'inch', si: 'mm' },
  area: { ip: 'ft2', si: 'm2' },
  volume: { ip: 'ft3', si: 'm3' },
  velocity: { ip: 'fpm', si: 'mPerS' },
  duration: { ip: 'minute', si: 'minute' },
  ratio: { ip: 'one', si: 'one' },
  specificHeat: { ip: 'btuPerLbF', si: 'kjPerKgK' },
  density: { ip: 'lbPerFt3', si: 'kgPerM3' },
  viscosity: { ip: 'microPaS', si: 'microPaS' },
  mass: { ip: 'lb', si: 'kg' },
  count: { ip: 'count', si: 'count' },
} as const satisfies Record<Kind, { readonly ip: UnitKey; readonly si: UnitKey }>;

/** The SI value of a number in a unit. */
export function toSi(number: number, unit: UnitKey): number {
  const { factor, offset } = units[unit];
  return (number + offset) * factor;
}

/** The number in a unit of an SI value. */
export function fromSi(si: number, unit: UnitKey): number {
  const { factor, offset } = units[unit];
  return si / factor - offset;
}

/** The unit of a difference of two numbers in `unit`: of a ± and of a change. */
export function differenceUnit(unit: UnitKey): UnitKey {
  if (unit === 'degF') return 'degFStep';
  if (unit === 'degC') return 'degCStep';
  return unit === 'btuPerLb' ? 'btuPerLbStep' : unit;
}
