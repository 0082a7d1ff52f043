import { axisOrder } from './tableCheck.ts';
import { pointOf, rowOf, stride } from './tablePlaces.ts';
import { amount } from './trace.ts';
import type { Axis, RatingTable, Remark } from './types.ts';

/** The columns that are looked through, and the code of what is found there. */
const columns = [
  { of: 'total', code: 'oddTotal', symbol: 'Q' },
  { of: 'sensible', code: 'oddSensible', symbol: 'Qₛ' },
  { of: 'power', code: 'oddPower', symbol: 'P' },
] as const;

/** A figure so far from the line through its neighbours is odd, as a share of what the line gives. Our choice. */
const odd = 0.03;

/**
 * The axes along which figures are smooth, and how far from a line they may lie by themselves. Along the wet bulb there is a
 * knee where the coil goes dry. Our choice.
 */
const smoothAxes: readonly { readonly axis: Axis; readonly bend: number }[] = [
  { axis: 'outdoorDryBulb', bend: odd },
  { axis: 'enteringWetBulb', bend: 0.08 },
  { axis: 'dryAirFlow', bend: odd },
];

/**
 * Single figures among smooth neighbours that a finger put there: `oddTotal`, `oddSensible`, `oddPower`. A figure is named when
 * it lies off the line through its neighbours, the same way along every axis that can tell, and when the rows are smooth with
 * the line's figure in its place. A table of two rows cannot tell. Amounts: the axes of the point, the figure, and what the
 * neighbours make of it.
 */
export function oddFigures(table: RatingTable): readonly Remark[] {
  return columns.flatMap(({ of, code, symbol }) => {
    const values = table[of] ?? [];
    const found = values.flatMap((value, at): Odd[] => {
      const expected = value === null ? null : expectedAmong(table, values, at, value);
      return value === null || expected === null ? [] : [{ at, value, expected }];
    });
    return found
      .filter((one) => !found.some((other) => gapOf(other) > gapOf(one) && areInLine(table, one.at, other.at)))
      .map(({ at, value, expected }): Remark => {
        const amounts = [amount(symbol, 'power', value), amount(`${symbol}′`, 'power', expected)];
        return { code, weight: 'doubt', about: 'rating', amounts: [...pointOf(table, at), ...amounts] };
      });
  });
}

interface Odd {
  readonly at: number;
  readonly value: number;
  readonly expected: number;
}

const gapOf = ({ value, expected }: Odd) => Math.abs(value / expected - 1);

/** Whether two figures differ on one axis only: the worse of them then bends the line of the other. */
function areInLine(table: RatingTable, one: number, other: number): boolean {
  return axisOrder.filter((axis) => rowOf(table, one, axis) !== rowOf(table, other, axis)).length === 1;
}

/** What the neighbours make of a figure that is odd among them; `null` for a figure in order, or where they cannot tell. */
function expectedAmong(
  table: RatingTable,
  values: readonly (number | null)[],
  at: number,
  value: number,
): number | null {
  const lines = smoothAxes
    .map(({ axis, bend }) => ({ ...lineThrough(table, values, at, axis), bend }))
    .filter(({ line }) => line.length >= 3);
  const [only] = lines;
  // Of three figures in one line any one may be the odd one.
  if (!only || (lines.length === 1 && only.line.length < 4)) return null;
  const least = lines.length === 1 ? only.bend : odd;
  const guesses = lines.map(({ line, here }) => onLine(line, here));
  const gaps = guesses.map((guess) => (value - guess) / guess);
  const sameWay = gaps.every((gap) => gap >= least) || gaps.every((gap) => gap <= -least);
  if (!sameWay || guesses.some((guess) => guess <= 0)) return null;
  const smooth = lines.every(({ line, here, bend }, i) =>
    isSmooth(line.with(here, pointAt(line, here, guesses[i])), bend),
  );
  return smooth ? guesses.reduce((sum, guess) => sum + guess, 0) / guesses.length : null;
}

type Point = readonly [x: number, y: number];

/** The printed figures that differ from one in a single axis, in order, and which of them it is. */
function lineThrough(table: RatingTable, values: readonly (number | null)[], at: number, axis: Axis) {
  const row = rowOf(table, at, axis);
  const line: Point[] = [];
  let here = 0;
  table.axes[axis].forEach((x, other) => {
    const y = values[at + (other - row) * stride(table, axis)];
    if (other === row) here = line.length;
    if (y !== null && y !== undefined) line.push([x, y]);
  });
  return { line, here };
}

function pointAt(line: readonly Point[], here: number, y = 0): Point {
  return [line[here]?.[0] ?? 0, y];
}

/** What the two nearest others make of a point: between them, or at an end in the line that they begin. */
function onLine(line: readonly Point[], here: number): number {
  const last = line.length - 1;
  const near = here === 0 ? 1 : here - 1;
  const far = here === 0 ? 2 : here === last ? here - 2 : here + 1;
  const [x1, y1] = line[near] as Point;
  const [x2, y2] = line[far] as Point;
  return y1 + ((pointAt(line, here)[0] - x1) / (x2 - x1)) * (y2 - y1);
}

function isSmooth(line: readonly Point[], bend: number): boolean {
  return line.every(([, y], here) => {
    if (here === 0 || here === line.length - 1) return true;
    const guess = onLine(line, here);
    return Math.abs(y - guess) < bend * guess;
  });
}
