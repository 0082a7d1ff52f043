import { expect, test } from 'vitest';
import { expectedCapacity, fromFahrenheit, rated, ratingTable } from '../../src/calc/index.ts';
import { nearestDryBulb } from '../../src/calc/nearestDryBulb.ts';

/** An invented table at three dry bulbs and two airflows, its total a little different at each. */
const rows = [85, 95].flatMap((outdoors) =>
  [62, 67].flatMap((wetBulb) =>
    [75, 80, 85].flatMap((dryBulb) =>
      [0.5, 0.6].map((dryAirFlow) => {
        const total = 9000 - 55 * (outdoors - 85) + 210 * (wetBulb - 62) + 8 * (dryBulb - 80) + 900 * dryAirFlow;
        return {
          outdoorDryBulb: fromFahrenheit(outdoors),
          enteringWetBulb: fromFahrenheit(wetBulb),
          enteringDryBulb: fromFahrenheit(dryBulb),
          dryAirFlow,
          total,
          sensible: total * (0.72 + 0.02 * (dryBulb - 80) - 0.03 * (wetBulb - 65)),
          power: 2300 + 20 * (outdoors - 85),
        };
      }),
    ),
  ),
);
const options = { basis: 'net', blowerPower: 300 } as const;
/** A table that nothing has been kept of yet. */
const newTable = () => ratingTable(rows, options);
const place = { outdoorDryBulb: fromFahrenheit(91), enteringWetBulb: fromFahrenheit(64), dryAirFlow: 0.56 };

test.each([75, 77, 85])('inside its dry bulbs, at %i °F, a table is read as it is', (dryBulb) => {
  const table = newTable();
  expect(nearestDryBulb(table, fromFahrenheit(dryBulb))).toBe(table);
});

test.each([
  [71, 75],
  [90, 85],
])('beyond them, at %i °F, it is the table that was printed for %i °F alone', (dryBulb, nearest) => {
  const table = newTable();
  const alone = ratingTable(
    rows.filter(({ enteringDryBulb }) => enteringDryBulb === fromFahrenheit(nearest)),
    options,
  );
  expect(nearestDryBulb(table, fromFahrenheit(dryBulb))).toEqual(alone);
  const conditions = { ...place, enteringDryBulb: fromFahrenheit(dryBulb) };
  const near = nearestDryBulb(table, conditions.enteringDryBulb);
  expect(rated(near, conditions, { beyond: 'refuse' }).outside).toEqual([]);
  expect(expectedCapacity(near, conditions, { blowerPower: 300 }).outside).toEqual([]);
  expect(() => expectedCapacity(table, conditions, { blowerPower: 300 })).toThrow('enteringDryBulb');
});

test('is worked out once for each end', () => {
  const table = newTable();
  expect(nearestDryBulb(table, 20)).toBe(nearestDryBulb(table, 19));
  expect(nearestDryBulb(table, 20)).not.toBe(nearestDryBulb(table, 35));
  expect(nearestDryBulb(table, 20)).toBe(nearestDryBulb(table, 19));
});

test('leaves a table with one dry bulb, or none, and a return air that nobody read, as they are', () => {
  const table = newTable();
  const one = ratingTable(
    rows.filter(({ enteringDryBulb }) => enteringDryBulb === fromFahrenheit(80)),
    options,
  );
  expect(nearestDryBulb(one, 20)).toBe(one);
  expect(nearestDryBulb(table, undefined)).toBe(table);
  const none = ratingTable([{ outdoorDryBulb: 35, enteringWetBulb: 19, total: 9000 }], options);
  expect(nearestDryBulb(none, 20)).toBe(none);
});

test('reads a table without airflows, and without a sensible capacity, as well', () => {
  const plain = rows
    .filter(({ dryAirFlow }) => dryAirFlow === 0.5)
    .map(({ dryAirFlow: _, sensible: __, ...row }) => row);
  const alone = plain.filter(({ enteringDryBulb }) => enteringDryBulb === fromFahrenheit(85));
  expect(nearestDryBulb(ratingTable(plain, options), fromFahrenheit(88))).toEqual(ratingTable(alone, options));
});
