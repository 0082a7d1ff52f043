import fc from 'fast-check';
import { rows, wholeTest } from './testCase.ts';

const number = fc.oneof(
  fc.constantFrom(null, 0, -1, 1e-300, 1e300, Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY),
  fc.double({ min: -100, max: 100, noNaN: true }),
  fc.double({ min: 0, max: 1, noNaN: true }),
  fc.double(),
);
const reading = fc.record({ dryBulb: number, relativeHumidity: number, wetBulb: number });
const row = fc.record(
  {
    outdoorDryBulb: number,
    enteringWetBulb: number,
    enteringDryBulb: number,
    dryAirFlow: number,
    total: number,
    sensible: number,
  },
  { requiredKeys: ['outdoorDryBulb', 'enteringWetBulb', 'total'] },
);
/** What has the shape of a test, and may be any nonsense inside. */
export const hostile = fc.record({
  entering: fc.oneof(reading, fc.constant(wholeTest.entering)),
  leaving: fc.oneof(reading, fc.constant(wholeTest.leaving)),
  airflow: fc.record({
    limit: number,
    sources: fc.constant(null),
    volumeFlow: fc.oneof(number, fc.constant(0.5)),
    place: fc.constantFrom('entering', 'leaving', 'unsure', 'nowhere'),
    kind: fc.constantFrom('actual', 'standard', 'unsure', ''),
  }),
  altitude: fc.oneof(number, fc.constant(null)),
  barometer: fc.oneof(number, fc.constant(null)),
  outdoorDryBulb: fc.oneof(number, fc.constant(32)),
  fullSpeed: fc.constantFrom('oneSpeed', 'unsure', null),
  rating: fc.oneof(
    fc.constant(null),
    fc.constant(wholeTest.rating),
    fc.record({
      rows: fc.oneof(fc.array(row, { maxLength: 6 }), fc.constant(rows)),
      basis: fc.constantFrom('net', 'gross', 'unsure', 'half'),
      blowerPower: number,
      beyond: fc.constantFrom('refuse', 'extend'),
      from: fc.constantFrom('table', 'generic', 'hearsay'),
      stage: fc.constantFrom('one', 'low', 'penthouse', null),
      certified: fc.oneof(number, fc.constant(10e3)),
      generic: fc.option(
        fc.record({
          unit: fc.constantFrom('airConditioner', 'heatPump', 'fridge'),
          stage: fc.constantFrom('one', 'low', 'high', 'variable', 'none'),
          dryAirFlow: fc.oneof(number, fc.constant(null)),
        }),
      ),
      multipliers: fc.record({
        airflow: fc.array(fc.record({ dryAirFlow: number, total: number, sensible: number }), { maxLength: 3 }),
        indoorMatch: fc.oneof(number, fc.constant(null), fc.constant(0.98)),
        lineLength: fc.oneof(number, fc.constant(null), fc.constant(0.98)),
      }),
    }),
  ),
  lineSet: fc.oneof(
    fc.constant(null),
    fc.record({
      equipment: fc.constantFrom('split' as const, 'packaged' as const),
      metering: fc.constantFrom('indoors' as const, 'outdoors' as const),
      maker: fc.record({ factor: number, maximumLength: number, maximumLift: number }),
      run: fc.constant(null),
    }),
  ),
  blower: fc.record({
    place: fc.constantFrom('before coil', 'after coil', 'outside probes', 'attic'),
    power: fc.oneof(number, fc.constant(400)),
    kind: fc.constant(null),
  }),
  nominalCapacity: number,
  line: number,
  probeLimits: fc.record({ dryBulb: number, relativeHumidity: number, wetBulb: number }),
  otherLimits: fc.option(fc.record({ outdoorDryBulb: number, pressure: number, blowerPower: number })),
  sideBySide: fc.option(
    fc.record({
      returnAir: fc.record({ dryBulb: number, humidity: number, scatter: fc.constant(null) }),
      supplyAir: fc.option(fc.record({ dryBulb: number, humidity: number, scatter: fc.constant(null) })),
      reference: fc.constantFrom('neither', 'entering', 'leaving', 'both'),
      drift: fc.option(fc.record({ dryBulb: number, humidity: number })),
      shared: fc.option(
        fc.record({ dryBulb: number, humidity: number, error: fc.record({ dryBulb: number, humidity: number }) }),
      ),
    }),
  ),
  supplyPoints: fc.array(number, { maxLength: 3 }),
  scatter: fc.array(
    fc.record({
      name: fc.constant('readings'),
      u: number,
      shape: fc.constantFrom('normal', 'rectangular', 'triangular', 'round'),
      degreesOfFreedom: fc.oneof(number, fc.constant(null)),
      moves: fc.record({ airflow: number }),
    }),
    { maxLength: 2 },
  ),
  confidence: fc.oneof(number, fc.constant(0.9), fc.constant(0.95)),
});
