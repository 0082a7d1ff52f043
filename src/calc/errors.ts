import type { Problem } from './types.ts';

/**
 * Every way in which an argument can be bad. The codes are their own English for callers in code: a table of sentences would
 * travel to every phone, where nobody reads it.
 */
export type CalcErrorCode =
  | 'notFinite'
  | 'outOfRange'
  /** More water than air can hold there. */
  | 'aboveSaturation'
  /** Leads to more water vapour than these equations cover. */
  | 'beyondEquations'
  | 'wetBulbAboveDryBulb'
  /** Lower than that of perfectly dry air. */
  | 'wetBulbTooLow'
  | 'dewPointAboveDryBulb'
  /** Lower than that of perfectly dry air. */
  | 'enthalpyTooLow'
  /** Give exactly one measure of humidity. */
  | 'oneHumidityNeeded'
  /** The two streams do not have one pressure. */
  | 'pressuresDiffer'
  /** The mixture would be fog. */
  | 'fogged'
  | 'notPositive'
  /** No such name in the table: a refrigerant or a tube. */
  | 'unknown'
  /** Not given, and the table varies with it. */
  | 'missing'
  | 'noRows'
  /** The axis is stated on some rows only. */
  | 'axisOnSomeRows'
  | 'repeatedRow'
  /** The rows do not fill the grid: a combination is missing. */
  | 'missingRow'
  /** Does not rise from one value of the axis to the next. */
  | 'notAscending'
  /** Does not fall from one row to the next. */
  | 'notDescending'
  /** Does not have one value for every point of the grid. */
  | 'wrongLength'
  | 'outsideTable'
  /** No answer counts: settings only, other speeds, or unfinished. */
  | 'noEvidence'
  /** A machine that chooses its own speed has no such curves. */
  | 'variableSpeed'
  /** No surface takes this share of sensible heat at this airflow. */
  | 'noSurface'
  /** Lies where the printed table has no figure. */
  | 'hole'
  /** Hardly any draw around the readings is a state that can be. */
  | 'hardlyPossible';

/** The words of a code: "above saturation". */
const spelled = (code: CalcErrorCode) => code.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);

/** A bad argument. `min` and `max` are the limits that it broke, in the unit of `value`. */
export class CalcError extends RangeError {
  override readonly name = 'CalcError';
  readonly code: CalcErrorCode;
  readonly quantity: string;
  readonly value: number;
  readonly min: number;
  readonly max: number;

  constructor(code: CalcErrorCode, quantity: string, value: number, min: number, max: number) {
    super(`${quantity}: ${spelled(code)}, ${value} (allowed: ${min} to ${max})`);
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
