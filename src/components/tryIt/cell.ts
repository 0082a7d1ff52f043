import { btuPerHour, fahrenheitDegree, fromFahrenheit, rated, ratingTable } from '~/calc/index.ts';
import { ahead, dial } from './ahead.ts';

/** The cell: its two columns and two rows, °C. */
export const outdoors = [fromFahrenheit(85), fromFahrenheit(95)] as const;
export const wetBulbs = [fromFahrenheit(59), fromFahrenheit(63)] as const;
/** Its invented figures, W, column by column. */
export const corners = [
  [31_800 * btuPerHour, 34_200 * btuPerHour],
  [29_900 * btuPerHour, 32_300 * btuPerHour],
] as const;

const table = ratingTable(
  outdoors.flatMap((outdoorDryBulb, column) =>
    wetBulbs.map((enteringWetBulb, row) => ({
      outdoorDryBulb,
      enteringWetBulb,
      total: corners[column]?.[row] ?? null,
    })),
  ),
  { basis: 'net', blowerPower: 0 },
);

/** Read along the wet bulb in each column, and then between the two, W; both temperatures in °C. */
export function inCell(outdoor: number, wetBulb: number): readonly [cool: number, hot: number, between: number] {
  const at = (outdoorDryBulb: number) => {
    const { total } = rated(table, { outdoorDryBulb, enteringWetBulb: wetBulb }, { beyond: 'extend' });
    if (total === null) throw new RangeError('the cell has a hole');
    return total;
  };
  return [at(outdoors[0]), at(outdoors[1]), at(outdoor)];
}

export const cell = ahead(
  [
    dial(outdoors[0], outdoors[1], fahrenheitDegree, fromFahrenheit(91)),
    dial(wetBulbs[0], wetBulbs[1], fahrenheitDegree / 5, fromFahrenheit(62.6)),
  ],
  inCell,
);
