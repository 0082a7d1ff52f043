/** A text as a square of dark and light modules (QR, ISO/IEC 18004), drawn as one path. */
import { encode } from 'uqr';

export interface SquareCode {
  /** Modules on a side, without the quiet zone around them. */
  readonly size: number;
  readonly version: number;
  /** Share of the damage that can be mended: L 7 %, M 15 %. */
  readonly mends: 'L' | 'M';
  /** Path data, a module being one unit: each run of dark modules of a row is one rectangle. */
  readonly path: string;
}

/** Longer texts get no square: phones no longer read from paper what they would need. */
export const longestInSquare = 1500;
/** 129 modules on a side; on 50 mm each is still 0.39 mm. */
const largest = 28;

/** The square of a text, as robust as its largest size allows; `null` for a text that is too long for it. */
export function squareCode(text: string): SquareCode | null {
  if (text.length > longestInSquare) return null;
  for (const mends of ['M', 'L'] as const) {
    try {
      const { data, size, version } = encode(text, { ecc: mends, border: 0, maxVersion: largest });
      return { size, version, mends, path: pathOf(data) };
    } catch {
      // It does not fit with that much to spare for damage.
    }
  }
  return null;
}

function pathOf(rows: readonly (readonly boolean[])[]): string {
  return rows
    .map((row, y) =>
      runs(row)
        .map(([from, to]) => `M${from} ${y}h${to - from}v1h${from - to}z`)
        .join(''),
    )
    .join('');
}

/** Where dark modules follow one another: from the first to behind the last. */
function runs(row: readonly boolean[]): readonly (readonly [from: number, to: number])[] {
  const starts = row.flatMap((dark, x) => (dark && !row[x - 1] ? [x] : []));
  const ends = row.flatMap((dark, x) => (dark && !row[x + 1] ? [x + 1] : []));
  return starts.map((from, index) => [from, ends[index] ?? row.length] as const);
}
