/** Where to look: which figures and remarks speak for a place, which against it, and what an effect of its size would show. */
import { describe, expect, test } from 'vitest';
import { type Assessment, assess, type Budget, explanations, type Outcome, type Remark } from '../../src/calc/index.ts';
import { wholeTest } from './testCase.ts';

const value = <T>(outcome: Outcome<T>): T => {
  if (!outcome.ok) throw new Error(JSON.stringify(outcome));
  return outcome.value;
};
/** A test of which no figure and no remark says anything. */
const whole = assess(wholeTest);
const quiet: Assessment = { ...whole, remarks: [], checks: whole.checks.map((check) => ({ ...check, value: null })) };
const range = (at: number, low: number, high: number): Budget =>
  ({ value: at, u: 1, degreesOfFreedom: null, interval: { probability: 0.9, k: 1, low, high }, shares: [] }) as Budget;
const remarked = (...codes: readonly string[]): Assessment => ({
  ...quiet,
  remarks: codes.map((code) => ({ code }) as unknown as Remark),
});
type Code = Assessment['checks'][number]['code'];
/** One figure with a range and what is usual for it. */
const figure = (code: Code, at: Budget, usual: readonly [number, number]): Assessment => ({
  ...quiet,
  checks: whole.checks.map((check) => (check.code === code ? { ...check, value: at.value, usual } : check)),
  ranges: { ...quiet.ranges, [code === 'airflowPerCapacity' ? 'dryAirFlow' : code]: at },
});
const evidence = (assessment: Assessment) =>
  explanations(assessment)
    .filter((one) => one.evidence !== 'silent')
    .map((one) => `${one.code} ${one.evidence}`)
    .filter((one, i, list) => list.indexOf(one) === i);

describe('what speaks for a place', () => {
  test('is nothing where no figure is out of the usual and nothing was remarked', () => {
    expect(evidence(quiet)).toEqual([]);
    for (const { by } of explanations(quiet)) expect(by).toEqual([]);
    expect(evidence(remarked('somethingElse'))).toEqual([]);
  });

  test.each([
    ['probesApart', ['sideBySide']],
    ['probeHumiditiesApart', ['sideBySide']],
    ['probesDrifted', ['sideBySide']],
    ['supplyUneven', ['probePlace']],
    ['swapped', ['probePlace']],
    ['noTemperatureDrop', ['probePlace']],
    ['supplyWetProbe', ['wetProbe']],
    ['leavingWetter', ['wetProbe']],
    ['airflowPerTon', ['airflowFigure']],
    ['airflowPlaceUnsure', ['airflowFigure']],
    ['airflowKindUnsure', ['airflowFigure']],
    ['airflowPlaceAndKindUnsure', ['airflowFigure']],
    ['seaLevelPressure', ['airflowFigure']],
    ['nominalMismatch', ['wrongRow']],
    ['basisUnknown', ['wrongRow']],
    ['totalFallsWithWetBulb', ['wrongRow']],
    ['totalRisesWithOutdoor', ['wrongRow']],
    ['notFullSpeed', ['stage']],
    ['supplyDry', ['bypass', 'cabinet']],
    ['frost', ['indoorAirflow']],
  ])('is the remark %s', (code, places) => {
    expect(evidence(remarked(code))).toEqual(places.map((place) => `${place} supports`));
    for (const { evidence: said, by } of explanations(remarked(code)))
      expect(by).toEqual(said === 'silent' ? [] : [code]);
  });

  test.each([
    ['airflowPerCapacity', 'low', ['indoorAirflow supports']],
    ['airflowPerCapacity', 'high', ['indoorAirflow against']],
    ['temperatureDrop', 'low', ['indoorAirflow against', 'undercharge supports', 'restriction supports']],
    ['temperatureDrop', 'high', ['indoorAirflow supports']],
    ['supplyHumidity', 'low', ['bypass supports', 'cabinet supports']],
    ['supplyHumidity', 'high', []],
    ['apparatusDewPoint', 'low', ['indoorAirflow supports']],
    ['apparatusDewPoint', 'high', ['undercharge supports']],
    ['bypassFactor', 'low', ['bypass against', 'cabinet against']],
    ['bypassFactor', 'high', ['bypass supports', 'cabinet supports']],
    ['condensate', 'low', []],
  ] as const)('is %s that is %s with its whole range, and not one that only may be', (code, side, said) => {
    const at = range(10, 8, 13);
    const [beyond, touching] =
      side === 'low'
        ? ([
            [13.1, 20],
            [13, 20],
          ] as const)
        : ([
            [2, 7.9],
            [2, 8],
          ] as const);
    expect(evidence(figure(code, at, beyond))).toEqual(said);
    expect(evidence(figure(code, at, touching))).toEqual([]);
    for (const { by, evidence: found } of explanations(figure(code, at, beyond)))
      expect(by).toEqual(found === 'silent' ? [] : [`${code}.${side}`]);
  });

  test('is an airflow for each ton with the range of the airflow, in proportion', () => {
    // 10 with 8 to 13 is 0.8 to 1.3 of it: a figure of 50 lies between 40 and 65.
    const at = { ...figure('airflowPerCapacity', range(10, 8, 13), [65.1, 90]) };
    const of = (usual: readonly [number, number]): Assessment => ({
      ...at,
      checks: at.checks.map((check) => (check.code === 'airflowPerCapacity' ? { ...check, value: 50, usual } : check)),
    });
    expect(evidence(of([65.1, 90]))).toEqual(['indoorAirflow supports']);
    expect(evidence(of([64.9, 90]))).toEqual([]);
    expect(evidence(of([10, 39.9]))).toEqual(['indoorAirflow against']);
    expect(evidence(of([10, 40.1]))).toEqual([]);
  });

  test('is nothing where one figure speaks for it and another against it, but both are named', () => {
    const both = figure('temperatureDrop', range(10, 8, 13), [13.1, 20]);
    const torn = { ...both, remarks: [{ code: 'frost' } as unknown as Remark] };
    const place = explanations(torn).find(({ code }) => code === 'indoorAirflow');
    expect(place).toMatchObject({ evidence: 'silent', by: ['frost', 'temperatureDrop.low'] });
  });

  test('is nothing of a figure that has no range', () => {
    const at = figure('temperatureDrop', range(10, 8, 13), [13.1, 20]);
    expect(evidence({ ...at, ranges: { ...at.ranges, temperatureDrop: null } })).toEqual([]);
  });
});

describe('an effect of the size of a fault', () => {
  const list = explanations(whole);
  const of = (code: string, size: number | null) => list.find((one) => one.code === code && one.size === size);

  test('is given as what it makes of the reading: what is left of the capacity, less one', () => {
    expect(of('undercharge', 0.2)).toMatchObject({
      reads: { low: expect.closeTo(-0.115, 9), high: expect.closeTo(-0.081, 9) },
      source: 'chargeFaults',
      licensed: true,
    });
    expect(of('nonCondensables', 0.3)?.reads).toEqual({
      low: expect.closeTo(0.002, 9),
      high: expect.closeTo(0.035, 9),
    });
    // A tenth of the supply air let back: the coil cools only nine tenths of what is counted.
    expect(of('bypass', 0.1)).toMatchObject({
      reads: { low: expect.closeTo(1 / 9, 9), high: expect.closeTo(1 / 9, 9) },
      source: 'definition',
    });
    expect(of('stage', null)).toMatchObject({
      reads: null,
      isVisible: null,
      source: 'commonPractice',
      group: 'measurement',
    });
    expect(list.filter(({ code }) => code === 'undercharge').map(({ size }) => size)).toEqual([0.1, 0.2, 0.3]);
  });

  test('is visible where its smaller end is more than the range of the ratio above its figure, relative', () => {
    const ratio = value(whole.ratio);
    const seen = (reach: number) => {
      const interval = { ...ratio.interval, low: 0, high: ratio.value * (1 + reach) };
      const assessment = { ...whole, ratio: { ok: true, value: { ...ratio, interval } } } as Assessment;
      return explanations(assessment).find(({ code, size }) => code === 'undercharge' && size === 0.2)?.isVisible;
    };
    // 0.081 to 0.115 less: the smaller end is 0.081.
    expect([seen(0.08), seen(0.082), seen(0.1)]).toEqual([true, false, false]);
  });

  test('is not said to be visible or not where there is no ratio', () => {
    const bare = explanations(assess({ ...wholeTest, rating: null }));
    expect(new Set(bare.map(({ isVisible }) => isVisible))).toEqual(new Set([null]));
    expect(bare.length).toBe(list.length);
  });

  test('needs both states of the air', () => {
    const nothing = { dryBulb: null, relativeHumidity: null, wetBulb: null };
    expect(explanations(assess({ ...wholeTest, leaving: nothing }))).toEqual([]);
  });
});
