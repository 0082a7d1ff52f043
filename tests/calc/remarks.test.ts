import { describe, expect, test } from 'vitest';
import {
  assess,
  btuPerHour,
  cubicFootPerMinute,
  fahrenheitDegree,
  fromFahrenheit,
  type LineRun,
  poundPerHour,
  type Remark,
  remarkRules,
  type Test,
  tonOfRefrigeration,
} from '../../src/calc/index.ts';
import { rows, wholeTest } from './testCase.ts';

const rating = wholeTest.rating as NonNullable<Test['rating']>;
const air = (dryBulb: number, relativeHumidity: number) => ({
  dryBulb: fromFahrenheit(dryBulb),
  relativeHumidity,
  wetBulb: null,
});
const remarks = (change: Partial<Test>): readonly Remark[] => assess({ ...wholeTest, ...change }).remarks;
const withRating = (change: Partial<typeof rating>): Partial<Test> => ({ rating: { ...rating, ...change } });

const apart = (dryBulb: number, humidity: number) => ({ dryBulb, humidity, scatter: null });
const sideBySide: NonNullable<Test['sideBySide']> = {
  returnAir: apart(0, 0),
  supplyAir: null,
  reference: 'neither',
  drift: null,
  shared: null,
};

/** 130 ft of lines. */
const run: LineRun = {
  refrigerant: 'R-410A',
  capacity: 3 * tonOfRefrigeration,
  evaporating: 7,
  superheat: 6,
  liquidTemperature: 38,
  subcooling: 6,
  vaporTube: '7/8',
  ratedVaporTube: '7/8',
  liquidTube: '3/8',
  length: 40,
  ratedLength: 7.62,
  fittings: 0,
  lift: 0,
};

/** A change of the whole test, and the remarks that it must get and no others. */
const cases: readonly (readonly [string, Partial<Test>, readonly string[]])[] = [
  ['an ordinary test', {}, []],
  ['return and supply exchanged', { entering: air(56, 0.88), leaving: air(75, 0.5) }, ['swapped', 'outsideTable']],
  ['no temperature drop', { leaving: air(74.5, 0.5) }, ['noTemperatureDrop']],
  ['supply air too dry to be behind a wet coil', { leaving: air(56, 0.6) }, ['higherThanItCanMake', 'supplyDry']],
  ['a supply probe that got wet', { leaving: air(56, 0.985) }, ['supplyWetProbe', 'latentUnseen']],
  ['supply air wetter than the probes can err', { leaving: air(65, 0.95) }, ['leavingWetter']],
  ['less water than the probes can see', { leaving: air(57, 0.93) }, ['latentUnseen']],
  [
    'a dry coil',
    { entering: air(80, 0.25), leaving: air(60, 0.49) },
    ['outsideTable', 'supplyDry', 'latentUnseen', 'dryCoil'],
  ],
  [
    'published curves in place of a table',
    withRating({
      from: 'generic',
      rows: [],
      certified: 35000 * btuPerHour,
      generic: { unit: 'airConditioner', stage: 'one', dryAirFlow: null },
    }),
    ['genericUsed'],
  ],
  [
    'published curves and a return so dry that the coil should be',
    {
      ...withRating({
        from: 'generic',
        rows: [],
        certified: 35000 * btuPerHour,
        generic: { unit: 'airConditioner', stage: 'one', dryAirFlow: null },
      }),
      entering: air(80, 0.2),
      leaving: air(58, 0.42),
    },
    ['supplyDry', 'dryCoil', 'genericUsed', 'shouldBeDry', 'latentUnseen'],
  ],
  ['a table of the low stage', withRating({ stage: 'low' }), ['lowStageTable']],
  ['a table of the high stage', withRating({ stage: 'high' }), []],
  [
    'a table of the low stage, and a speed that nobody knows',
    { ...withRating({ stage: 'low' }), fullSpeed: 'unsure' },
    ['notFullSpeed'],
  ],
  ['a system high up', { altitude: 1000, entering: air(75, 0.52) }, ['altitudeBand']],
  [
    'a coil near freezing',
    {
      leaving: air(37.5, 0.95),
      airflow: { ...wholeTest.airflow, volumeFlow: 0.25 },
      blower: { place: 'after coil', power: 50, kind: null },
    },
    ['frost', 'airflowPerTon'],
  ],
  [
    'air so cold that the coil must freeze',
    {
      leaving: air(34, 0.7),
      airflow: { ...wholeTest.airflow, volumeFlow: 0.2 },
      blower: { place: 'after coil', power: 50, kind: null },
    },
    ['frost', 'supplyDry', 'airflowPerTon'],
  ],
  ['half the airflow of any system', { airflow: { ...wholeTest.airflow, volumeFlow: 0.3 } }, ['airflowPerTon']],
  ['twice the airflow', { airflow: { ...wholeTest.airflow, volumeFlow: 1 } }, ['higherThanItCanMake', 'airflowPerTon']],
  ['a pressure of the forecast in the mountains', { altitude: 1600, barometer: 101.6e3 }, ['seaLevelPressure']],
  ['a pressure of the weather', { altitude: 300, barometer: 96.5e3 }, []],
  ['outdoors beyond the table', { outdoorDryBulb: fromFahrenheit(99) }, ['outsideTable']],
  [
    'outdoors beyond the table, asked to extend',
    { ...withRating({ beyond: 'extend' }), outdoorDryBulb: fromFahrenheit(99) },
    ['outsideTable'],
  ],
  ['a table nobody knows the basis of', withRating({ basis: 'unsure' }), ['basisUnknown']],
  ['an own blower nobody knows', { blower: { place: 'after coil', power: null, kind: null } }, ['blowerAssumed']],
  ['a blower of the rating nobody knows', withRating({ blowerPower: null }), ['ratingBlowerAssumed']],
  [
    'two blowers nobody knows',
    { ...withRating({ blowerPower: null }), blower: { place: 'after coil', power: null, kind: null } },
    ['blowersTakenEqual'],
  ],
  [
    'two blowers nobody knows but by their kinds',
    {
      ...withRating({ blowerPower: null, blowerKind: 'ratedWithBlower' }),
      blower: { place: 'after coil', power: null, kind: 'permanentSplit' },
    },
    ['blowersByKind'],
  ],
  [
    'lines longer than the maker allows',
    {
      lineSet: {
        equipment: 'split',
        metering: 'indoors',
        maker: { factor: null, maximumLength: 25, maximumLift: null },
        run,
      },
    },
    ['linesBeyondMaker'],
  ],
  ['a table of a bigger machine', { nominalCapacity: 42000 * btuPerHour }, ['nominalMismatch']],
  [
    'a block of another airflow',
    withRating({ rows: rows.map((row) => ({ ...row, dryAirFlow: 0.57 })) }),
    ['blockAirflow'],
  ],
  [
    'a block of an airflow beyond the curve',
    withRating({ rows: rows.map((row) => ({ ...row, dryAirFlow: 1.2 })) }),
    ['outsideTable', 'blockAirflow'],
  ],
  ['a machine that may choose its speed', { fullSpeed: 'unsure' }, ['notFullSpeed']],
  [
    'more than the system can make',
    { airflow: { ...wholeTest.airflow, volumeFlow: 1500 * cubicFootPerMinute } },
    ['higherThanItCanMake'],
  ],
  ['two thermometers too far apart', { sideBySide: { ...sideBySide, returnAir: apart(-1.05, 0) } }, ['probesApart']],
  [
    'two humidities too far apart',
    { sideBySide: { ...sideBySide, supplyAir: apart(0, -0.07) } },
    ['probeHumiditiesApart'],
  ],
  [
    'probes that moved since',
    { sideBySide: { ...sideBySide, drift: { dryBulb: 0.3, humidity: 0 } } },
    ['probesDrifted'],
  ],
  ['an uneven supply plane', { supplyPoints: [12.8, 13.9] }, ['supplyUneven']],
  [
    'a figure typed in the wrong cell',
    withRating({ rows: rows.map((row, i) => (i === 1 ? { ...row, total: 30000 * btuPerHour } : row)) }),
    ['totalFallsWithWetBulb', 'totalRisesWithOutdoor'],
  ],
];

describe('remarks', () => {
  test.each(cases)('%s', (_, change, codes) => {
    expect(
      remarks(change)
        .map(({ code }) => code)
        .sort(),
    ).toEqual([...codes].sort());
  });

  test('come with stops first, then doubts, then notes', () => {
    const found = remarks({ entering: air(80, 0.25), leaving: air(60, 0.49) });
    expect(found.map(({ weight }) => weight)).toEqual(['stop', 'doubt', 'note', 'note']);
  });

  test('the cases and the tests of the airflow and the table leave no rule without a case', () => {
    const tested = new Set([...cases.flatMap(([, , codes]) => codes)]);
    const elsewhere = ['airflowPlaceUnsure', 'airflowKindUnsure', 'airflowPlaceAndKindUnsure'];
    const untested = remarkRules
      .map(({ code }) => code)
      .filter((code) => !tested.has(code) && !elsewhere.includes(code));
    expect(untested).toEqual([]);
  });

  test('a stop withholds the verdict of a test that is complete', () => {
    expect(assess({ ...wholeTest, fullSpeed: 'unsure' }).verdict).toEqual({ ok: false, waiting: [], problem: null });
  });

  test('outside the table names the reading and what the table covers', () => {
    const [remark] = remarks({ outdoorDryBulb: fromFahrenheit(99) });
    expect(remark).toMatchObject({ weight: 'stop', about: 'outdoors' });
    expect(remark?.amounts.map(({ value }) => value)).toEqual([99, 85, 95].map(fromFahrenheit));
  });

  test('sharper probes see water that blunt ones do not', () => {
    const sharp = { dryBulb: 0.05, relativeHumidity: 0.002, wetBulb: 0.05 };
    const codes = (change: Partial<Test>) => remarks({ leaving: air(56.5, 0.92), ...change }).map(({ code }) => code);
    expect(codes({})).toContain('latentUnseen');
    expect(codes({ probeLimits: sharp })).not.toContain('latentUnseen');
  });

  test('what the probes cannot see is k·u of two rectangular limits each, with the slopes of Clausius and Clapeyron', () => {
    const { remarks: list, entering, leaving } = assess({ ...wholeTest, leaving: air(57, 0.93) });
    const remark = list.find(({ code }) => code === 'latentUnseen');
    /** The error of one humidity ratio at the limits of its probe: dW = W·(1 + W/0.622)·(L/(R·T²)·dt + dφ/φ). */
    const error = (state: typeof entering) => {
      if (!state.ok) return Number.NaN;
      const { humidityRatio: W, relativeHumidity, dryBulb } = state.value;
      const perKelvin = (2501e3 - 2380 * dryBulb) / (461.5 * (dryBulb + 273.15) ** 2);
      return W * (1 + W / 0.622) * Math.hypot(perKelvin * 0.5, 0.03 / relativeHumidity);
    };
    const expected = (1.282 / Math.sqrt(3)) * Math.hypot(error(entering), error(leaving));
    expect((remark?.amounts[1]?.value ?? 0) / expected).toBeGreaterThan(0.99);
    expect((remark?.amounts[1]?.value ?? 0) / expected).toBeLessThan(1.01);
  });

  test('a wet bulb reading is judged by the limit of its own', () => {
    const leaving = { dryBulb: fromFahrenheit(57), relativeHumidity: null, wetBulb: fromFahrenheit(54) };
    const seen = (wetBulb: number) =>
      !remarks({ leaving, probeLimits: { ...wholeTest.probeLimits, wetBulb } }).some(
        ({ code }) => code === 'latentUnseen',
      );
    expect([seen(0.1), seen(5)]).toEqual([true, false]);
  });
});

describe('the six figures that should agree', () => {
  const checks = (change: Partial<Test>) =>
    Object.fromEntries(assess({ ...wholeTest, ...change }).checks.map((check) => [check.code, check]));

  test('are known in a whole test, in their usual order', () => {
    const { checks: list } = assess(wholeTest);
    expect(list.map(({ code }) => code)).toEqual([
      'airflowPerCapacity',
      'temperatureDrop',
      'supplyHumidity',
      'condensate',
      'apparatusDewPoint',
      'bypassFactor',
    ]);
    for (const { value, source } of list) {
      expect(value).not.toBeNull();
      expect(source).toBe('commonPractice');
    }
  });

  test('say cfm per ton, the drop in °F and the water in lb/h', () => {
    const found = checks({});
    expect(found.temperatureDrop?.value).toBeCloseTo(19 * fahrenheitDegree, 9);
    expect((found.airflowPerCapacity?.value ?? 0) / cubicFootPerMinute).toBeCloseTo(390, 0);
    expect((found.condensate?.value ?? 0) / poundPerHour).toBeCloseTo(4.53, 1);
    expect(found.supplyHumidity?.value).toBe(0.88);
  });

  test('scale the usual water with the size of the system', () => {
    const upTo = (tons: number | null) =>
      (checks({ nominalCapacity: tons && tons * tonOfRefrigeration }).condensate?.usual[1] ?? 0) / poundPerHour;
    expect([upTo(3), upTo(null), upTo(6)].map((most) => Math.round(most * 1e6) / 1e6)).toEqual([9, 9, 18]);
  });

  test('are unknown where their readings are', () => {
    const found = checks({ leaving: { dryBulb: null, relativeHumidity: null, wetBulb: null }, nominalCapacity: null });
    expect(Object.values(found).map(({ value }) => value)).toEqual([null, null, null, null, null, null]);
  });
});
