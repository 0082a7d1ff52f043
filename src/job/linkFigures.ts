/** How figures stand in a link: a plain number and a short code of its unit, so that they mean the same to everyone. */
import { unitLabel } from './format.ts';
import type { ProcessKey } from './processes.ts';
import { type PointKey, processKeys } from './processes.ts';
import { type Read, read } from './read.ts';
import type { Place } from './readings.ts';
import { type HumidityMeasure, type StateKey, stateKeys } from './states.ts';
import type { QuantityKey, UnitKey } from './types.ts';
import { fromSi } from './units.ts';

/** Goes up when an old link could no longer be read as it was meant. */
export const linkVersion = '1';

const unitCodes = {
  F: 'degF',
  C: 'degC',
  ft: 'ft',
  m: 'm',
  inHg: 'inHg',
  hPa: 'hpa',
  cfm: 'cfm',
  Ls: 'ls',
  m3h: 'm3h',
  m3s: 'm3PerS',
  lbh: 'lbPerHour',
  kgh: 'kgPerHour',
  kgs: 'kgPerS',
} as const satisfies Record<string, UnitKey>;

/** Behind a humidity stands its measure too. */
const humidityCodes = {
  rh: ['relativeHumidity', 'percent'],
  Fwb: ['wetBulb', 'degF'],
  Cwb: ['wetBulb', 'degC'],
  Fdp: ['dewPoint', 'degF'],
  Cdp: ['dewPoint', 'degC'],
  gr: ['humidityRatio', 'grainsPerLb'],
  gkg: ['humidityRatio', 'gPerKg'],
} as const satisfies Record<string, readonly [HumidityMeasure, UnitKey]>;

/** Units of the same kind that a link can write, for those that it cannot. */
const instead: Readonly<Partial<Record<UnitKey, UnitKey>>> = { kpa: 'hpa', pa: 'hpa', psi: 'hpa', inwc: 'hpa' };

export const placeCodes = [
  ['r', 'entering'],
  ['s', 'leaving'],
] as const satisfies readonly (readonly [string, Place])[];

const pointCodes: readonly (readonly [string, PointKey])[] = [
  ...placeCodes,
  ...[...stateKeys, ...processKeys].map((key: StateKey | ProcessKey) => [key, key] as const),
];

export const pointCode = (key: PointKey | null) => pointCodes.find(([, of]) => of === key)?.[0] ?? '';
/** The point of a code; `null` for none. */
export const pointOfCode = (code: string) => pointCodes.find(([of]) => of === code)?.[1] ?? null;

/** A figure as a link has it. */
export interface Figure {
  readonly text: string;
  readonly unit: UnitKey;
}

/** A figure as it stands in a column of another unit. */
export const withItsUnit = ({ text, unit }: Figure, column: UnitKey) =>
  unit === column ? text : `${text} ${unitLabel(unit)}`;

/** Ten figures hold all that a person types, and what a mean of it needs. */
function plainNumber(value: number): string {
  const text = String(Number(value.toPrecision(10)));
  return text.includes('e') ? Number(value.toFixed(10)).toFixed(10) : text;
}

/** What was understood, for a link; `null` where nothing was. */
export function writeFigure(found: Read): string | null {
  if (found.state !== 'read') return null;
  const unit = instead[found.unit] ?? found.unit;
  const [code] = Object.entries(unitCodes).find(([, of]) => of === unit) ?? [];
  if (code === undefined) return null;
  return plainNumber(unit === found.unit ? found.number : fromSi(found.si, unit)) + code;
}

export function writeHumidity(measure: HumidityMeasure, found: Read): string | null {
  if (found.state !== 'read') return null;
  const [code] = Object.entries(humidityCodes).find(([, [of, unit]]) => of === measure && unit === found.unit) ?? [];
  return code === undefined ? null : plainNumber(found.number) + code;
}

const written = /^(-?\d{1,9}(?:\.\d{1,10})?)([A-Za-z0-9]{1,4})$/;
const codeIn = <Codes extends object>(codes: Codes, code: string): Codes[keyof Codes] | null =>
  Object.hasOwn(codes, code) ? codes[code as keyof Codes] : null;

/** A figure of a link that is possible for a quantity; `null` for anything else. */
export function readFigure(text: string, quantity: QuantityKey): Figure | null {
  const [, number = '', code = ''] = written.exec(text) ?? [];
  const unit = codeIn(unitCodes, code);
  return unit !== null && isPossible(number, quantity, unit) ? { text: number, unit } : null;
}

export function readHumidity(text: string): (Figure & { readonly measure: HumidityMeasure }) | null {
  const [, number = '', code = ''] = written.exec(text) ?? [];
  const found = codeIn(humidityCodes, code);
  if (found === null || !isPossible(number, `state.${found[0]}`, found[1])) return null;
  return { text: number, unit: found[1], measure: found[0] };
}

/** That a number means itself, in a unit of the right kind. */
function isPossible(number: string, quantity: QuantityKey, unit: UnitKey): boolean {
  const found = read(`${number} ${unitLabel(unit)}`, quantity, unit);
  return found.state === 'read' && found.unit === unit && found.number === Number(number);
}
