import type { Problem } from './types.ts';

/** Every way in which an argument can be bad, with its plain English for callers in code. */
const reasons = {
  notFinite: 'is not a finite number',
  outOfRange: 'is outside its range',
  aboveSaturation: 'is more water than air can hold there',
  beyondEquations: 'leads to more water vapour than these equations cover',
  wetBulbAboveDryBulb: 'is above the dry bulb',
  wetBulbTooLow: 'is lower than that of perfectly dry air',
  dewPointAboveDryBulb: 'is above the dry bulb',
  enthalpyTooLow: 'is lower than that of perfectly dry air',
  oneHumidityNeeded: 'must be one: give exactly one measure of humidity',
  pressuresDiffer: 'is not the same in both streams',
  fogged: 'is above saturation: the mixture is fog',
  notPositive: 'must be above zero',
  missing: 'is not given, and the table varies with it',
  noRows: 'has no rows',
  axisOnSomeRows: 'is stated on some rows only',
  repeatedRow: 'is a row that stands there twice',
  missingRow: 'does not fill the grid: a combination is missing',
  sensibleAboveTotal: 'is above the total capacity',
  notAscending: 'does not rise from one value of the axis to the next',
  wrongLength: 'does not have one value for every point of the grid',
  outsideTable: 'lies outside the table',
  hole: 'lies where the printed table has no figure',
} as const;

export type CalcErrorCode = keyof typeof reasons;

/** A bad argument. `min` and `max` are the limits that it broke, in the unit of `value`. */
export class CalcError extends RangeError {
  override readonly name = 'CalcError';
  readonly code: CalcErrorCode;
  readonly quantity: string;
  readonly value: number;
  readonly min: number;
  readonly max: number;

  constructor(code: CalcErrorCode, quantity: string, value: number, min: number, max: number) {
    super(`${quantity} ${reasons[code]}: ${value} (allowed: ${min} to ${max})`);
    this.code = code;
    this.quantity = quantity;
    this.value = value;
    this.min = min;
    this.max = max;
  }
}

/** The error as plain data, able to cross to a worker. */
export function toProblem(error: CalcError): Problem {
  const { code, quantity, value, min, max } = error;
  return { code, quantity, value, min, max };
}

/**
 * Throws unless `value` is a number from `min` to `max`. The comparison is written so that NaN fails it too; the type is
 * looked at because plain JavaScript compares text and `null` with numbers.
 */
export function within(quantity: string, value: number, range: readonly [number, number]): void {
  if (!(value >= range[0] && value <= range[1]) || typeof value !== 'number') {
    throw new CalcError(Number.isFinite(value) ? 'outOfRange' : 'notFinite', quantity, value, range[0], range[1]);
  }
}
