/** An invented 3-ton system at sea level, as `assess` takes it: four figures of its maker's table and nothing special about it. */
import { btuPerHour, fromFahrenheit, noMultipliers, type Test } from '../src/calc/index.ts';

/** Outdoor dry bulb and entering wet bulb, °F, and the total that the table has for them, Btu/h. */
const table = [
  [85, 62, 33_600],
  [85, 67, 36_900],
  [95, 62, 31_700],
  [95, 67, 34_900],
] as const;

export const inventedSystem: Omit<Test, 'entering' | 'leaving' | 'airflow' | 'outdoorDryBulb'> = {
  // Sea level, where no barometer says otherwise.
  altitude: null,
  barometer: null,
  fullSpeed: 'oneSpeed',
  rating: {
    rows: table.map(([outdoor, wetBulb, total]) => ({
      outdoorDryBulb: fromFahrenheit(outdoor),
      enteringWetBulb: fromFahrenheit(wetBulb),
      total: total * btuPerHour,
    })),
    // What is rated here has the heat of a 300 W blower taken off already.
    basis: 'net',
    blowerPower: 300,
    blowerKind: null,
    beyond: 'refuse',
    from: 'table',
    stage: null,
    certified: null,
    generic: null,
    multipliers: noMultipliers,
  },
  lineSet: null,
  blower: { place: 'after coil', power: 430, kind: null },
  nominalCapacity: null,
  // Nine tenths of what it should make were agreed on before the test.
  line: 0.9,
  probeLimits: { dryBulb: 0.5, relativeHumidity: 0.03, wetBulb: 0.5 },
  otherLimits: null,
  sideBySide: null,
  supplyPoints: [],
  scatter: [],
  confidence: 0.9,
};
