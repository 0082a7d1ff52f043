import type { RatingTable } from './types.ts';

type Columns = 'total' | 'sensible' | 'power' | 'band';

const known = new WeakMap<RatingTable, Map<number, RatingTable>>();

/**
 * The table that a return air is read in: beyond the printed entering dry bulbs that of the nearest of them alone, since totals
 * hardly hang on the dry bulb and the sensible is moved from there; else the table as it is. °C.
 */
export function nearestDryBulb(table: RatingTable, enteringDryBulb: number | undefined): RatingTable {
  const rows = table.axes.enteringDryBulb;
  const [low, high] = [rows[0], rows.at(-1)];
  if (rows.length < 2 || low === undefined || high === undefined || enteringDryBulb === undefined) return table;
  if (enteringDryBulb >= low && enteringDryBulb <= high) return table;
  const row = enteringDryBulb < low ? 0 : rows.length - 1;
  const before = known.get(table)?.get(row);
  if (before) return before;
  const alone = atRow(table, row);
  known.set(table, new Map([...(known.get(table) ?? []), [row, alone]]));
  return alone;
}

/** What a table prints for one of its dry bulbs: its airflows vary faster than they, its wet bulbs slower. */
function atRow(table: RatingTable, row: number): RatingTable {
  const { enteringDryBulb: rows, dryAirFlow } = table.axes;
  const flows = Math.max(1, dryAirFlow.length);
  const isThere = (_: unknown, at: number) => Math.floor(at / flows) % rows.length === row;
  const column = <Key extends Columns>(key: Key) => (table[key]?.filter(isThere) ?? null) as RatingTable[Key];
  return {
    ...table,
    axes: { ...table.axes, enteringDryBulb: [rows[row] as number] },
    total: column('total'),
    sensible: column('sensible'),
    power: column('power'),
    band: column('band'),
  };
}
