import { CalcError, type CalcErrorCode, within } from '../errors.ts';
import { attempt } from '../outcome.ts';
import type { Problem } from '../types.ts';
import { type Cause, ofLimit } from './found.ts';

/** A grid as it is typed: lines of readings, `null` where nothing stands yet. */
export type Grid = readonly (readonly (number | null)[])[];

export interface Cells {
  /** The same grid with every bad cell taken out. */
  readonly good: Grid;
  readonly values: readonly number[];
  readonly problems: readonly Problem[];
  /** Cells without a usable reading, as a share of all. */
  readonly missing: number;
}

/** What a bad cell is called. */
type CellName = (line: number, point: number) => string;

/**
 * The usable readings of a grid. A bad one becomes a `Problem` under the name of its cell ('readings.2.0': line 2, point 0,
 * counted from zero) and does not stop the others. Throws a `CalcError` when no reading is left: that of the first bad cell, or
 * `missing`.
 */
export function readCells(
  name: string,
  grid: Grid,
  range: readonly [number, number],
  cellName: CellName = (i, j) => `${name}.${i}.${j}`,
): Cells {
  const problems: Problem[] = [];
  const good = grid.map((line, i) =>
    line.map((value, j) => {
      if (value === null) return null;
      const read = attempt(() => within(cellName(i, j), value, range));
      if (read.ok) return value;
      problems.push(read.problem as Problem);
      return null;
    }),
  );
  const values = good.flat().filter((value) => value !== null);
  const count = grid.flat().length;
  if (values.length === 0) {
    const [first] = problems;
    throw first ? fromProblem(first) : new CalcError('missing', name, 0, 1, Math.max(1, count));
  }
  return { good, values, problems, missing: 1 - values.length / count };
}

/** The usable readings of a plain list; its cells are called 'plates.2'. */
export function readList(name: string, list: Grid[number], range: readonly [number, number]): Cells {
  return readCells(name, [list], range, (_, i) => `${name}.${i}`);
}

/** The error behind plain data that `toProblem` made. */
export function fromProblem({ code, quantity, value, min, max }: Problem): CalcError {
  return new CalcError(code as CalcErrorCode, quantity, value, min, max);
}

/** Least spread to allow for between cells that were not read. Our choice. */
const leastSpread = 0.2;

/**
 * What the cells without a reading leave open: their mean may be as far from that of the others as the farthest of these, and
 * at least 20 %. Our own rule. Nothing for a full grid.
 */
export function missingCause(name: string, values: readonly number[], missing: number): readonly Cause[] {
  if (missing === 0) return [];
  const average = mean(values);
  const spread = Math.max(leastSpread, Math.max(...values) / average - 1, 1 - Math.min(...values) / average);
  return [{ name, u: ofLimit(missing * spread), basis: 'commonPractice', shape: 'rectangular' }];
}

export function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

/** The mean of the readings that are there; `null` where none is. */
export function meanOf(values: readonly (number | null)[]): number | null {
  const there = values.filter((value) => value !== null);
  return there.length === 0 ? null : mean(there);
}
