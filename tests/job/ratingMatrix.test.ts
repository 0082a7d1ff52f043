import { expect, test } from 'vitest';
import { ratingMatrix } from '../../src/job/ratingMatrix.ts';

test('rows of a table stand as they are printed: outdoors across, airflow, wet bulb and dry bulb down, holes where nothing stands', () => {
  const { outdoors, lines } = ratingMatrix([
    { outdoorDryBulb: 35, enteringWetBulb: 19.4, dryAirFlow: 0.6, total: 9700 },
    { outdoorDryBulb: 29.4, enteringWetBulb: 19.4, dryAirFlow: 0.6, total: 10300, sensible: 7100 },
    { outdoorDryBulb: 35, enteringWetBulb: 16.7, dryAirFlow: 0.6, total: 9200 },
    { outdoorDryBulb: 29.4, enteringWetBulb: 16.7, dryAirFlow: 0.6, total: null },
    { outdoorDryBulb: 29.4, enteringWetBulb: 19.4, dryAirFlow: 0.5, enteringDryBulb: 26.7, total: 9900 },
  ]);
  expect(outdoors).toEqual([29.4, 35]);
  expect(
    lines.map(({ dryAirFlow, enteringWetBulb, enteringDryBulb, figures }) => [
      dryAirFlow,
      enteringWetBulb,
      enteringDryBulb,
      ...figures.map((one) => one?.total ?? null),
    ]),
  ).toEqual([
    [0.5, 19.4, 26.7, 9900, null],
    [0.6, 16.7, null, null, 9200],
    [0.6, 19.4, null, 10300, 9700],
  ]);
  expect(lines[2]?.figures[0]?.sensible).toBe(7100);
  expect(ratingMatrix([])).toEqual({ outdoors: [], lines: [] });
});
