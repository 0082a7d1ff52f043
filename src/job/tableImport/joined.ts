/** Figures that were torn in two: 32,300 in a sheet whose columns are parted by commas. */
import type { Sheet } from './types.ts';

const head = /^[1-9]\d{0,2}$/;
const tail = /^\d{3}$/;

/** The sheet with such figures whole again; `null` where the rows do not come to the width of their heads by that. */
export function joinedThousands(sheet: Sheet, separator: string): Sheet | null {
  if (separator !== ',') return null;
  const joined = sheet.map(joinedRow);
  const torn = joined.flatMap((row, at) => (row.length < (sheet[at]?.length ?? 0) ? [row.length] : []));
  const whole = sheet.flatMap((row, at) => (row.length === joined[at]?.length && row.length > 2 ? [row.length] : []));
  const [width] = torn;
  return width !== undefined && torn.every((one) => one === width) && whole.includes(width) ? joined : null;
}

function joinedRow(row: readonly string[]): string[] {
  const cells: string[] = [];
  for (let at = 0; at < row.length; at++) {
    const cell = row[at] ?? '';
    const next = row[at + 1] ?? '';
    if (head.test(cell) && tail.test(next)) {
      cells.push(cell + next);
      at++;
    } else cells.push(cell);
  }
  return cells;
}
