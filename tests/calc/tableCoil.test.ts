/** The coil that a table describes, and the quick look that spares looking for it. */
import { describe, expect, test } from 'vitest';
import {
  btuPerHour,
  CalcError,
  dryOut,
  type ExpectationConditions,
  expectedCapacity,
  expectedTotal,
  fromFahrenheit,
  leavingAir,
  moistAir,
  noMultipliers,
  type RatingRow,
  ratedApparatus,
  ratingTable,
  standardPressureAtSeaLevel,
} from '../../src/calc/index.ts';

const flow = 0.68;
const eighty = fromFahrenheit(80);
const base = { outdoorDryBulb: 35, enteringDryBulb: eighty, dryAirFlow: flow };
/** A row of an invented table: wet bulb in °F, capacities in Btu/h. */
const printed = (
  wetBulb: number,
  total: number,
  sensible: number | null,
  change: Partial<RatingRow> = {},
): RatingRow => ({
  ...base,
  enteringWetBulb: fromFahrenheit(wetBulb),
  total: total * btuPerHour,
  sensible: sensible && sensible * btuPerHour,
  ...change,
});
const rows = [
  printed(57, 32500, 32500),
  printed(62, 32700, 31700),
  printed(67, 35500, 26200),
  printed(72, 38800, 20700),
];
const net = { basis: 'net', blowerPower: 300, multipliers: { ...noMultipliers, indoorMatch: 0.95 } } as const;
const at = (dryBulb: number, wetBulb: number, change: Partial<ExpectationConditions> = {}): ExpectationConditions => ({
  ...base,
  enteringWetBulb: fromFahrenheit(wetBulb),
  enteringDryBulb: fromFahrenheit(dryBulb),
  ...change,
});
const coilOf = (list: readonly RatingRow[], conditions: ExpectationConditions, options: object = net) =>
  expectedCapacity(ratingTable(list, { basis: 'net', blowerPower: 300, ...options }), conditions, { blowerPower: 450 })
    .coil;

/** The bypass factor of a coil that makes these printed figures, Btu/h, of air at sea level, °F, as `net` takes them. */
function bypassOf(dryBulb: number, wetBulb: number, total: number, sensible: number, dryAirFlow = flow): number {
  const entering = moistAir({ dryBulb: fromFahrenheit(dryBulb), wetBulb: fromFahrenheit(wetBulb) });
  const gross = (printed: number) => 0.95 * printed * btuPerHour + 300;
  const found = ratedApparatus({ entering, dryAirFlow, total: gross(total) }, gross(sensible));
  return found?.bypassFactor ?? Number.NaN;
}

describe('the bypass factor of a table', () => {
  test('is that of its lowest wet row above a reading among dry ones, with the indoor unit’s factor and the blower heat', () => {
    expect(coilOf(rows, at(80, 58))?.bypassFactor).toBeCloseTo(bypassOf(80, 62, 32700, 31700), 9);
    expect(coilOf(rows, at(80, 50))?.bypassFactor).toBeCloseTo(bypassOf(80, 62, 32700, 31700), 9);
  });

  test('is that of the reading itself among wet rows', () => {
    expect(coilOf(rows, at(80, 64))?.bypassFactor).toBeCloseTo(bypassOf(80, 64, 33820, 29500), 9);
  });

  test('goes with one over the airflow: at 0.8 of it the logarithm is 1/0.8 of what it was', () => {
    const before = bypassOf(80, 64, 33820, 29500);
    const found = coilOf(rows, at(80, 64, { dryAirFlow: 0.8 * flow }));
    expect(found?.bypassFactor).toBeCloseTo(Math.exp(Math.log(before) / 0.8), 9);
  });

  test('is read between the dry bulbs and between the airflows of a table that has several', () => {
    const [cool, warm] = [75, 85].map((dryBulb) => ({ enteringDryBulb: fromFahrenheit(dryBulb) }));
    const dryBulbs = [62, 67].flatMap((wetBulb) => [
      printed(wetBulb, 34000, 24000, cool),
      printed(wetBulb, 34000, 29000, warm),
    ]);
    expect(coilOf(dryBulbs, at(79, 64))?.bypassFactor).toBeCloseTo(bypassOf(79, 64, 34000, 26000), 9);
    const flows = [62, 67].flatMap((wetBulb) => [
      printed(wetBulb, 33000, 25000, { dryAirFlow: 0.6 }),
      printed(wetBulb, 35000, 28000, { dryAirFlow: 0.8 }),
    ]);
    const found = coilOf(flows, at(80, 64, { dryAirFlow: 0.65 }));
    expect(found?.bypassFactor).toBeCloseTo(bypassOf(80, 64, 33500, 25750, 0.65), 9);
  });

  test.each([
    ['states no dry bulb', rows.map(({ enteringDryBulb: _, ...row }) => row), at(80, 64)],
    ['states a dry bulb below its wet bulbs', rows.map((row) => ({ ...row, enteringDryBulb: 16 })), at(80, 64)],
    ['has no sensible capacity there', rows.map((row, i) => (i === 2 ? { ...row, sensible: null } : row)), at(80, 64)],
    [
      'has dry rows up to a hole',
      [printed(57, 32500, 32500), printed(62, 32700, 32700), printed(67, 35500, null)],
      at(80, 58),
    ],
    ['has a dry row below a hole', [rows[0]!, { ...rows[1]!, total: null }, rows[2]!], at(80, 57)],
    [
      'has a dry row below one without a sensible capacity',
      [rows[0]!, { ...rows[1]!, sensible: null }, rows[2]!],
      at(80, 57),
    ],
    ['has dry rows only', rows.map((row) => ({ ...row, sensible: row.total ?? null })), at(80, 64)],
  ])('is unknown where it %s', (_, list, conditions) => {
    expect(coilOf(list, conditions)).toBeNull();
  });

  test('is unknown where no dry bulb of the air is', () => {
    const { enteringDryBulb: _, ...conditions } = at(80, 58);
    expect(coilOf(rows, conditions)).toBeNull();
  });
});

describe('where the coil of a table turns dry', () => {
  test.each([
    ['among dry rows, and below them', rows, at(85, 50)],
    ['under the wet rows of a table that prints no dry one', rows.slice(1), at(90, 63)],
    ['with less air', rows, at(85, 50, { dryAirFlow: 0.9 * flow })],
  ])('is where its own gross capacity dries it, at the pressure here: %s', (_, list, conditions) => {
    const table = ratingTable(list, { ...net, multipliers: { ...net.multipliers, lineLength: 0.97 } });
    const pressure = 84e3;
    const { coil, derates } = expectedCapacity(table, conditions, { blowerPower: 450, pressure });
    expect(coil?.dry).toBe(true);
    const { dryBulb, dryAirFlow } = { dryBulb: conditions.enteringDryBulb!, dryAirFlow: conditions.dryAirFlow! };
    const total = derates.at(-1)!.before;
    const found = dryOut({ dryBulb, dryAirFlow, total, bypassFactor: coil!.bypassFactor, pressure });
    expect(coil?.dryOutWetBulb).toBeCloseTo(found!.wetBulb, 6);
  });

  test('the table is not corrected in the air that it was printed for: between a dry row and a wet one it stands as read', () => {
    const table = ratingTable([printed(57, 31000, 31000), printed(67, 35500, 26200)], net);
    for (const wetBulb of [57, 59, 61, 63, 65, 67]) {
      const { total } = expectedCapacity(table, at(80, wetBulb), { blowerPower: 300 });
      expect(total / btuPerHour).toBeCloseTo(0.95 * (31000 + 450 * (wetBulb - 57)), 3);
    }
  });

  test('warmer air between a dry row and a wet one makes as much more as the line of the wet coil rises', () => {
    const table = ratingTable([printed(57, 31000, 31000), printed(67, 35500, 26200)], {
      basis: 'gross',
      blowerPower: 0,
    });
    const of = (dryBulb: number, wetBulb: number) => expectedCapacity(table, at(dryBulb, wetBulb), { blowerPower: 0 });
    const own = of(80, 57).coil!.dryOutWetBulb;
    const warm = of(84, 58);
    const line = (wetBulb: number) => {
      const top = fromFahrenheit(67);
      return (35500 - (4500 * (top - wetBulb)) / (top - own)) * btuPerHour;
    };
    expect(own).toBeGreaterThan(fromFahrenheit(57));
    expect(warm.coil?.dry).toBe(true);
    expect(warm.total).toBeCloseTo(31450 * btuPerHour + line(warm.coil!.dryOutWetBulb) - line(own), 3);
    // Below the table the reading says nothing: the coil makes what it makes where it turns dry.
    expect(of(84, 50).total).toBeCloseTo(line(of(84, 50).coil!.dryOutWetBulb), 3);
  });
});

/** The rows for three dry bulbs: a kelvin of it brings 0.6 kW of sensible capacity, up to all of the total. */
const threeDryBulbs = rows.flatMap((row) =>
  [-3, 0, 3].map((warmer) => ({
    ...row,
    enteringDryBulb: eighty + warmer,
    sensible: Math.min(row.total!, row.sensible! + 600 * warmer),
  })),
);

/** The rows that a coil of one bypass factor makes, of a gross capacity that rises by 2.2 % a kelvin of wet bulb. */
const rowsOf = (bypassFactor: number, gross: number, wetBulbs: readonly number[]): RatingRow[] =>
  wetBulbs.map((enteringWetBulb) => {
    const total = gross * (1 + 0.022 * (enteringWetBulb - 19.4));
    const entering = moistAir({ dryBulb: eighty, wetBulb: enteringWetBulb });
    const { sensible } = leavingAir({ entering, dryAirFlow: flow, total }, bypassFactor)!;
    return { ...base, enteringWetBulb, total: total - 300, sensible: sensible - 300 };
  });

test.each([
  ['a coil that hardly any air misses, with little to do', rowsOf(0.02, 6500, [16, 18.5, 21])],
  ['a coil that a fifth of the air misses', rowsOf(0.2, 9500, [15, 17, 19, 21])],
  ['a table with a dry row', rows],
  ['wet rows only', rows.slice(1)],
  ['wet rows far apart', [rows[1]!, rows[3]!]],
  ['three dry bulbs', threeDryBulbs],
  ['two airflows', rows.flatMap((row) => [row, { ...row, dryAirFlow: 0.9, total: 1.06 * row.total! }])],
])(
  'the number alone, for which a quick look mostly settles that the coil is wet, is that of the whole way: %s',
  (_, list) => {
    const given = (work: () => number) => {
      try {
        return work();
      } catch (error) {
        if (error instanceof CalcError) return error.code;
        throw error;
      }
    };
    for (const [blowerPower, pressure] of [
      [300, standardPressureAtSeaLevel],
      [900, 95e3],
    ] as const) {
      const table = ratingTable(list, { basis: 'net', blowerPower });
      for (let wetBulb = 55.8; wetBulb < 72; wetBulb += 2)
        for (let dryBulb = 62; dryBulb < 105; dryBulb += 6)
          for (const share of [0.75, 1, 1.3])
            for (const beyond of ['extend', 'refuse'] as const) {
              const conditions = at(dryBulb, wetBulb, { dryAirFlow: share * flow, beyond });
              const here = { blowerPower: 400, pressure };
              expect(
                given(() => expectedTotal(table, conditions, here)),
                `${dryBulb} °F, ${wetBulb} °F, ${share}`,
              ).toEqual(given(() => expectedCapacity(table, conditions, here).total));
            }
    }
  },
);
