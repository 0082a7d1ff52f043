/** The part of a table by which a range is worked out: the cell around the reading, and no row beside it. */
import { describe, expect, test } from 'vitest';
import { cellAround } from '../../src/calc/confidence/cell.ts';
import { type RatingRow, ratingTable } from '../../src/calc/index.ts';

const outdoors = [25, 30, 35, 40];
const wetBulbs = [16, 18, 20];
const flows = [0.5, 0.6];
/** A total that says where it stands: 1000 · outdoor + 10 · wet bulb + flow. */
const totalAt = (outdoor: number, wetBulb: number, flow = 0) => 1000 * outdoor + 10 * wetBulb + flow;
function tableOf(holes: readonly (readonly [number, number])[] = [], withFlow = false) {
  const rows: RatingRow[] = outdoors.flatMap((outdoorDryBulb) =>
    wetBulbs.flatMap((enteringWetBulb) =>
      (withFlow ? flows : [null]).map((flow) => ({
        outdoorDryBulb,
        enteringWetBulb,
        ...(flow === null ? {} : { dryAirFlow: flow }),
        total: holes.some(([o, w]) => o === outdoorDryBulb && w === enteringWetBulb)
          ? null
          : totalAt(outdoorDryBulb, enteringWetBulb, flow ?? 0),
      })),
    ),
  );
  return ratingTable(rows, { basis: 'gross', blowerPower: 0 });
}
const cellAt = (
  table: ReturnType<typeof tableOf>,
  outdoorDryBulb: number,
  enteringWetBulb: number,
  dryAirFlow = 0.55,
) => cellAround(table, { outdoorDryBulb, enteringWetBulb, dryAirFlow });
const rowsOf = ({ axes }: ReturnType<typeof tableOf>) => [axes.outdoorDryBulb, axes.enteringWetBulb];

describe('the cell around a reading', () => {
  test.each([
    ['between rows has the rows on both sides', 32, 17, [30, 35], [16, 18]],
    ['on a printed row takes the next one too', 30, 17, [30, 35], [16, 18]],
    ['on two printed rows takes the next of each', 30, 18, [30, 35], [18, 20]],
    ['on the last row takes the one before it', 40, 20, [35, 40], [18, 20]],
    ['below the table has its first two rows', 20, 12, [25, 30], [16, 18]],
    ['above the table has its last two rows', 50, 25, [35, 40], [18, 20]],
  ])('%s', (_, outdoor, wetBulb, outdoorRows, wetBulbRows) => {
    const cell = cellAt(tableOf(), outdoor, wetBulb);
    expect(rowsOf(cell)).toEqual([outdoorRows, wetBulbRows]);
    expect(cell.total).toEqual(outdoorRows.flatMap((o) => wetBulbRows.map((w) => totalAt(o, w))));
    expect([cell.sensible, cell.power]).toEqual([null, null]);
  });

  test('takes the row before where the next one has a hole beside the reading', () => {
    expect(rowsOf(cellAt(tableOf([[35, 16]]), 30, 17))).toEqual([
      [25, 30],
      [16, 18],
    ]);
    // A hole elsewhere does no harm.
    expect(rowsOf(cellAt(tableOf([[35, 20]]), 30, 17))).toEqual([
      [30, 35],
      [16, 18],
    ]);
  });

  test('stands still on the row where there is a hole on either side', () => {
    expect(
      rowsOf(
        cellAt(
          tableOf([
            [35, 16],
            [25, 18],
          ]),
          30,
          17,
        ),
      ),
    ).toEqual([[30], [16, 18]]);
  });

  test('has every axis of the table, in its order, and leaves empty one that it does not have', () => {
    const cell = cellAt(tableOf([], true), 32, 17, 0.55);
    expect(cell.axes).toEqual({
      outdoorDryBulb: [30, 35],
      enteringWetBulb: [16, 18],
      enteringDryBulb: [],
      dryAirFlow: [0.5, 0.6],
    });
    expect(cell.total).toEqual(
      [30, 35].flatMap((o) => [16, 18].flatMap((w) => [0.5, 0.6].map((f) => totalAt(o, w, f)))),
    );
  });

  test('keeps the one row of an axis that has no other', () => {
    const rows = [16, 18].map((enteringWetBulb) => ({
      outdoorDryBulb: 35,
      enteringWetBulb,
      total: totalAt(35, enteringWetBulb),
    }));
    const cell = cellAround(ratingTable(rows, { basis: 'gross', blowerPower: 0 }), {
      outdoorDryBulb: 35,
      enteringWetBulb: 17,
    });
    expect(cell.axes.outdoorDryBulb).toEqual([35]);
    expect(cell.total).toEqual([totalAt(35, 16), totalAt(35, 18)]);
  });
});
