/** An invented 3-ton system at sea level, as `assess` takes it: four figures of its maker's table and nothing special about it. */
import { btuPerHour, emptyRating, emptyTest, fromFahrenheit, type Test } from '../src/calc/index.ts';

/** Outdoor dry bulb and entering wet bulb, °F, and the total that the table has for them, Btu/h. */
const table = [
  [85, 62, 33_600],
  [85, 67, 36_900],
  [95, 62, 31_700],
  [95, 67, 34_900],
] as const;

export const inventedSystem: Test = {
  ...emptyTest,
  fullSpeed: 'oneSpeed',
  rating: {
    ...emptyRating,
    rows: table.map(([outdoor, wetBulb, total]) => ({
      outdoorDryBulb: fromFahrenheit(outdoor),
      enteringWetBulb: fromFahrenheit(wetBulb),
      total: total * btuPerHour,
    })),
    // What is rated here has the heat of a 300 W blower taken off already.
    basis: 'net',
    blowerPower: 300,
  },
  blower: { place: 'after coil', power: 430, kind: null },
};
