/**
 * What a system should make: a reading of a table, the number alone, and the whole chain with its steps, sensible capacity and
 * coil, from a maker's table and from published curves, in weather from dry to damp and up to 2000 m. The fastest of 40 batches
 * of each, after warming up, every call with other input: `npm run bench`. A whole line set beside it, as its sheet asks for one.
 */
import {
  type ExpectationConditions,
  expectedCapacity,
  expectedTotal,
  fromFahrenheit,
  genericRating,
  type Installation,
  lineSet,
  type RatingTable,
  rated,
  ratingTable,
  standardPressure,
  standardPressureAtSeaLevel,
} from '../../src/calc/index.ts';

const batches = 40;
/** Calls a batch: long enough that the clock does not count. */
const calls = 250;

interface Input {
  readonly conditions: ExpectationConditions;
  readonly installation: Installation;
}

/** Spread evenly without a pattern (golden-ratio steps): 78 to 112 °F outdoors, 70 to 82 °F entering, 58 to 71 °F wet bulb. */
const inputs: readonly Input[] = Array.from({ length: 997 }, (_, i) => {
  const spread = (step: number, low: number, high: number) => low + (high - low) * ((i * step) % 1);
  const pressure = standardPressure(spread(0.5698, 0, 2000));
  const flow = spread(0.4503, 0.55, 0.75) * (pressure / standardPressureAtSeaLevel);
  return {
    conditions: {
      outdoorDryBulb: fromFahrenheit(spread(0.618034, 78, 112)),
      enteringWetBulb: fromFahrenheit(spread(0.754878, 58, 70)),
      enteringDryBulb: fromFahrenheit(spread(0.3247, 71, 83)),
      dryAirFlow: flow,
      nominal: 10550,
      beyond: 'extend',
    },
    installation: { blowerPower: spread(0.2541, 200, 600), pressure },
  };
});

/** An invented maker's table: six columns, four rows, three airflows, and a dry row. */
const printed = ratingTable(
  [75, 85, 95, 105, 115, 125].flatMap((outdoor) =>
    [57, 62, 67, 72].flatMap((wetBulb, row) =>
      [0.5, 0.65, 0.8].map((dryAirFlow) => {
        const total = 10000 - 55 * (outdoor - 95) + 230 * Math.max(0, wetBulb - 62) + 1300 * (dryAirFlow - 0.65);
        const share = [1, 0.96, 0.74, 0.53][row] as number;
        return {
          outdoorDryBulb: fromFahrenheit(outdoor),
          enteringWetBulb: fromFahrenheit(wetBulb),
          enteringDryBulb: fromFahrenheit(80),
          dryAirFlow,
          total,
          sensible: total * share,
        };
      }),
    ),
  ),
  { basis: 'net', blowerPower: 300 },
);
const curves = genericRating({
  total: 10200,
  basis: 'net',
  blowerPower: 300,
  unit: 'heatPump',
  stage: 'one',
  dryAirFlow: 0.65,
});

let sink = 0;
let next = 0;

/** Nanoseconds a call: the fastest batch. */
function fastest(work: (input: Input) => number): number {
  const batch = (): number => {
    const start = performance.now();
    for (let n = 0; n < calls; n++) {
      sink += work(inputs[next] as Input);
      next = next + 1 === inputs.length ? 0 : next + 1;
    }
    return performance.now() - start;
  };
  for (let warm = 0; warm < 300; warm++) batch();
  return (Math.min(...Array.from({ length: batches }, batch)) * 1e6) / calls;
}

const works: readonly (readonly [string, (table: RatingTable) => (input: Input) => number, number])[] = [
  [
    'rated',
    (table) =>
      ({ conditions }) =>
        rated(table, conditions, { beyond: 'extend' }).total ?? 0,
    1000,
  ],
  [
    'expectedTotal',
    (table) =>
      ({ conditions, installation }) =>
        expectedTotal(table, conditions, installation),
    2000,
  ],
  [
    'expectedCapacity, with its steps',
    (table) =>
      ({ conditions, installation }) => {
        const found = expectedCapacity(table, conditions, installation);
        return found.total + (found.sensible ?? 0) + found.derates.length;
      },
    10_000,
  ],
];

for (const [name, table] of [
  ['a maker’s table', printed],
  ['published curves', curves],
] as const) {
  for (const [title, work, limit] of works) {
    const time = fastest(work(table));
    console.log(`${`${title}, ${name}`.padEnd(52)} ${time.toFixed(0).padStart(6)} ns  of ${limit} ns`);
  }
}
{
  const time = fastest(({ conditions, installation }) => {
    const found = lineSet({
      equipment: 'split',
      metering: 'indoors',
      maker: { factor: null, maximumLength: null, maximumLift: null },
      run: {
        refrigerant: 'R-410A',
        capacity: 10550,
        evaporating: 7 + 0.01 * conditions.outdoorDryBulb,
        superheat: 5,
        liquidTemperature: conditions.outdoorDryBulb + 5,
        subcooling: 5,
        vaporTube: '7/8',
        ratedVaporTube: '7/8',
        liquidTube: '3/8',
        length: 0.05 * installation.blowerPower,
        ratedLength: 7.62,
        fittings: 2.4,
        lift: 3,
      },
    });
    return (found.factor?.factor ?? 0) + (found.liquid?.flashes ? 1 : 0);
  });
  console.log(`${'lineSet, both lines'.padEnd(52)} ${time.toFixed(0).padStart(6)} ns`);
}

if (!Number.isFinite(sink)) throw new Error('something gave something that is no number');
