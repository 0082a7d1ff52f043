/** Where everything of a ledger of steps stands: a row a step, the scale beside the words, or on a narrow page below them. */
import { textWidth } from '../box.ts';
import { linear } from '../scale.ts';
import { wrapped } from '../wrap.ts';
import type { LedgerProps, LedgerRow } from './ledger.ts';

export interface Row {
  readonly of: LedgerRow;
  readonly top: number;
  readonly bottom: number;
  /** The lines of its name, their first at this height. */
  readonly name: readonly string[];
  readonly nameY: number;
  /** Where its dimension line and its dot lie. */
  readonly dimensionY: number;
  readonly dotY: number;
}

export interface Layout {
  readonly width: number;
  readonly height: number;
  readonly narrow: boolean;
  readonly rows: readonly Row[];
  /** The edges of the scale. */
  readonly left: number;
  readonly right: number;
  readonly head: number;
  readonly foot: number;
  /** The right edge of the column of figures. */
  readonly figures: number;
  /** Shares of the first figure, from edge to edge of the scale. */
  readonly domain: readonly [number, number];
  readonly x: (watts: number) => number;
}

export const letter = 14;
const line = 18;
const head = 40;

export function layoutOf({ rows, width, measured, range, should }: LedgerProps): Layout {
  const narrow = width < 620;
  const amounts = 8 + Math.max(...rows.map(({ amount }) => textWidth(amount, letter + 1)));
  const names = narrow ? width - amounts - 12 : Math.round(width * 0.4) - amounts;
  const figures = narrow ? width : names + amounts;
  const [left, right] = narrow ? [6, width - 6] : [figures + 28, width - 6];
  const start = rows[0]?.value ?? 1;
  const domain = domainOf([...rows.map(({ value }) => value), ...measuredValues({ measured, range })], start);
  let top = head;
  const placed = rows.map((of, i): Row => {
    const name = wrapped(of.name, names - 8, letter);
    const extra = (name.length - 1) * line;
    const first = i === 0;
    const row = narrow
      ? {
          nameY: top + 18,
          dimensionY: top + 36 + extra,
          dotY: top + (first ? 40 : 56) + extra,
          bottom: top + (first ? 56 : 72) + extra,
        }
      : {
          nameY: top + (first ? 24 : 34),
          dimensionY: top + 14,
          dotY: top + (first ? 24 : 34),
          bottom: top + (first ? 42 : 52) + extra,
        };
    const here = { of, top, name, ...row };
    top = row.bottom;
    return here;
  });
  return {
    width,
    height: top + (should === null ? 8 : measured === null ? 46 : 68),
    narrow,
    rows: placed,
    left,
    right,
    head,
    foot: top,
    figures,
    domain,
    x: linear([domain[0] * start, domain[1] * start], [left, right]),
  };
}

const measuredValues = ({ measured, range }: Pick<LedgerProps, 'measured' | 'range'>): readonly number[] =>
  measured === null ? [] : [measured.value, ...(range ?? [])];

/** Round shares of the first figure around all others: steps of five in a hundred, with room for the words beside the marks. */
function domainOf(values: readonly number[], start: number): readonly [number, number] {
  const shares = values.map((value) => value / start);
  const [low, high] = [Math.min(...shares), Math.max(...shares)];
  const room = 0.08 * (high - low) + 0.02;
  return [Math.floor((low - room) * 20) / 20, Math.ceil((high + room) * 20) / 20];
}
