import { highRow, type Place } from './rated.ts';
import { axisOrder } from './tableCheck.ts';
import { amount } from './trace.ts';
import type { Amount, Axis, Kind, RatingConditions, RatingTable, Trace } from './types.ts';

/** How the axes are written in working and remarks, and the letter for the place between two rows. */
export const axisSigns: Readonly<
  Record<Axis, { readonly symbol: string; readonly kind: Kind; readonly share: string }>
> = {
  outdoorDryBulb: { symbol: 'tₒ', kind: 'temperature', share: 'x' },
  enteringWetBulb: { symbol: 't*₁', kind: 'temperature', share: 'y' },
  enteringDryBulb: { symbol: 't₁', kind: 'temperature', share: 'z' },
  dryAirFlow: { symbol: 'ṁ', kind: 'massFlow', share: 'w' },
};

/** The working of a reading between printed rows: the place on each axis that is between two, then the corners. */
export function traceRated(
  table: RatingTable,
  conditions: RatingConditions,
  place: Place,
  total: number,
  t: Trace,
): void {
  const between = axisOrder.filter((_, i) => place.fraction[i] !== 0);
  const shares = between.map((axis) => traceShare(table, conditions, place, axis, t));
  const corners = Array.from({ length: 2 ** between.length }, (_, corner) => {
    const upper = between.map((_axis, i) => (corner & (1 << (between.length - 1 - i))) !== 0);
    const symbol = `Q${upper.map((is) => (is ? '₂' : '₁')).join('') || '₁'}`;
    const weights = between.map((axis, i) => (upper[i] ? axisSigns[axis].share : `(1 − ${axisSigns[axis].share})`));
    return { figure: cornerFigure(table, place, between, upper, symbol), term: [symbol, ...weights].join('·') };
  });
  t({
    id: 'rated.total',
    equation: `Q = ${corners.map(({ term }) => term).join(' + ')}`,
    puts: [...corners.map(({ figure }) => figure), ...shares],
    gives: amount('Q', 'power', total),
    source: table.from === 'table' ? 'makersTable' : 'genericCurves',
  });
}

function traceShare(table: RatingTable, conditions: RatingConditions, place: Place, axis: Axis, t: Trace): Amount {
  const { symbol, kind, share } = axisSigns[axis];
  const i = axisOrder.indexOf(axis);
  const gives = amount(share, 'fraction', place.fraction[i] as number);
  t({
    id: `rated.share.${axis}`,
    equation: `${share} = (${symbol} − ${symbol}ₗ)/(${symbol}ₕ − ${symbol}ₗ)`,
    puts: [
      amount(symbol, kind, conditions[axis] as number),
      amount(`${symbol}ₗ`, kind, table.axes[axis][place.low[i] as number] as number),
      amount(`${symbol}ₕ`, kind, table.axes[axis][highRow(place, i)] as number),
    ],
    gives,
    source: 'definition',
  });
  return gives;
}

function cornerFigure(
  table: RatingTable,
  place: Place,
  between: readonly Axis[],
  upper: readonly boolean[],
  symbol: string,
): Amount {
  const index = axisOrder.reduce((at, axis, i) => {
    const row = upper[between.indexOf(axis)] ? highRow(place, i) : (place.low[i] as number);
    return at * Math.max(1, table.axes[axis].length) + row;
  }, 0);
  return amount(symbol, 'power', table.total[index] as number);
}
