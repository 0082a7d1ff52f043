/** How sure each result of a test is, in closed form where there is one; and what a verdict waits for. */
import { describe, expect, test } from 'vitest';
import { resultsOf } from '../../src/calc/assess.ts';
import { testEffects } from '../../src/calc/confidence/sure.ts';
import { assess, type Budget, type Outcome, type Test } from '../../src/calc/index.ts';
import { wholeTest } from './testCase.ts';

const value = <T>(outcome: Outcome<T>): T => {
  if (!outcome.ok) throw new Error(JSON.stringify(outcome));
  return outcome.value;
};
const made = (change: Partial<Test>): Test => ({ ...wholeTest, ...change });
const whole = assess(wholeTest);
const ranges = whole.ranges as Readonly<Record<string, Budget>>;
const root3 = Math.sqrt(3);
const rating = wholeTest.rating as NonNullable<Test['rating']>;

describe('the range of a figure', () => {
  test('stands around the figure that was found', () => {
    const { total, sensible, latent, sensibleHeatRatio, condensate, dryAirFlow, apparatus } = value(whole.measured);
    const found = {
      total,
      sensible,
      latent,
      sensibleHeatRatio,
      condensate,
      dryAirFlow,
      apparatusDewPoint: apparatus?.dewPoint,
      bypassFactor: apparatus?.bypassFactor,
    };
    for (const [name, figure] of Object.entries(found)) expect(ranges[name]?.value).toBe(figure);
    expect(ranges['temperatureDrop']?.value).toBeCloseTo(
      value(whole.entering).dryBulb - value(whole.leaving).dryBulb,
      12,
    );
    expect(ranges['supplyHumidity']?.value).toBeCloseTo(0.88, 12);
    expect(Object.keys(ranges).length).toBe(10);
    for (const { interval, value: figure, u } of Object.values(ranges)) {
      expect(interval.low).toBeLessThan(figure);
      expect(interval.high + interval.low).toBeCloseTo(2 * figure, 6);
      expect((interval.high - figure) / u).toBeCloseTo(1.2815516, 6);
    }
  });

  test('of the temperature drop has the two probes and the place of the one, and nothing else', () => {
    // Half-widths of 0.5 K each and of 5/9 K.
    expect(ranges['temperatureDrop']?.u).toBeCloseTo(Math.hypot(0.5, 0.5, 5 / 9) / root3, 9);
    const names = ranges['temperatureDrop']?.shares.filter(({ share }) => share > 1e-12).map(({ name }) => name);
    expect([...(names ?? [])].sort()).toEqual(['entering.dryBulb', 'leaving.dryBulb', 'supplyMixing']);
  });

  test('of the supply humidity that was read is the limit of its probe', () => {
    expect(ranges['supplyHumidity']?.u).toBeCloseTo(0.03 / root3, 9);
  });

  test('has of the airflow the same share of each capacity', () => {
    for (const name of ['total', 'sensible', 'latent', 'condensate', 'dryAirFlow']) {
      const range = ranges[name] as Budget;
      const airflow = range.shares.find((one) => one.name === 'airflow');
      expect((airflow?.u ?? 0) / range.value).toBeCloseTo(0.07 / root3, 9);
    }
    expect(ranges['sensibleHeatRatio']?.shares.find(({ name }) => name === 'airflow')?.u).toBeCloseTo(0, 9);
  });

  test('is not given of a coil that has no temperature of its own, and of all else it is', () => {
    // The supply air is so dry that the line of the process never meets saturation.
    const dry = assess(made({ leaving: { ...wholeTest.leaving, relativeHumidity: 0.2 } }));
    expect(value(dry.measured).apparatus).toBeNull();
    expect([dry.ranges.apparatusDewPoint, dry.ranges.bypassFactor]).toEqual([null, null]);
    expect(dry.ranges.total?.u).toBeGreaterThan(0);
  });

  test('of everything is left out, and the problem said, where a cause cannot be or the confidence is none', () => {
    const bad = [{ name: 'readings', u: -1, shape: 'normal', degreesOfFreedom: null, moves: { airflow: 1 } }] as const;
    for (const [change, quantity] of [
      [{ confidence: 0.3 }, 'confidence'],
      [{ scatter: bad }, 'readings.u'],
    ] as const) {
      const { ratio, ranges: none, improvements, measured } = assess(made(change));
      expect(ratio).toMatchObject({ ok: false, problem: { code: 'outOfRange', quantity } });
      expect([...new Set(Object.values(none)), improvements, measured.ok]).toEqual([null, [], true]);
      // Without a rating it is the rating that the ratio waits for.
      expect(assess(made({ ...change, rating: null })).ratio).toMatchObject({
        ok: false,
        waiting: ['rating'],
        problem: null,
      });
    }
  });

  test('is there without a rating, and nothing is waited for but that', () => {
    const bare = assess(made({ rating: null }));
    expect(bare.ratio).toEqual({ ok: false, waiting: ['rating'], problem: null });
    expect(bare.improvements).toEqual([]);
    expect(bare.ranges.total?.u).toBeCloseTo(ranges['total']?.u ?? 0, 6);
    const nothing = assess(made({ leaving: { ...wholeTest.leaving, dryBulb: null } }));
    expect(nothing.ratio).toMatchObject({ ok: false, waiting: ['leaving.dryBulb'] });
    expect([...new Set(Object.values(nothing.ranges))]).toEqual([null]);
  });
});

describe('what each cause does', () => {
  test('to the load and to the ratio adds up to their ranges, signs and all', () => {
    const { ratio, total } = value(testEffects(wholeTest, resultsOf(wholeTest)));
    expect(Math.hypot(...total.effects.map(({ u }) => u))).toBeCloseTo(ranges['total']?.u ?? 0, 6);
    expect(Math.hypot(...(ratio?.effects ?? []).map(({ u }) => u))).toBeCloseTo(value(whole.ratio).u, 12);
    expect([total.value, ratio?.value]).toEqual([value(whole.measured).total, value(whole.ratio).value]);
    const of = (name: string) => total.effects.find((one) => one.name === name)?.u ?? 0;
    // Warmer or damper return air is more heat to take, warmer or damper supply air less.
    expect(
      [of('entering.humidity'), of('leaving.humidity'), of('entering.dryBulb'), of('leaving.dryBulb')].map(Math.sign),
    ).toEqual([1, -1, 1, -1]);
  });

  test('to a ratio is nothing without a rating, and is waited for without a load', () => {
    const bare = made({ rating: null });
    expect(value(testEffects(bare, resultsOf(bare))).ratio).toBeNull();
    const open = made({ airflow: { ...wholeTest.airflow, volumeFlow: null } });
    expect(testEffects(open, resultsOf(open))).toMatchObject({ ok: false, waiting: ['airflow.volumeFlow'] });
  });
});

describe('a verdict', () => {
  test('waits for an answer whether the machine ran at full speed, and for all that the ratio waits for', () => {
    expect(assess(made({ fullSpeed: null })).verdict).toEqual({ ok: false, waiting: ['fullSpeed'], problem: null });
    expect(assess(made({ fullSpeed: null, rating: null })).verdict).toMatchObject({ waiting: ['rating', 'fullSpeed'] });
  });

  test('is withheld without anything to wait for by a remark of that weight', () => {
    const slow = assess(made({ fullSpeed: 'unsure' }));
    expect(slow.remarks.some(({ weight }) => weight === 'stop')).toBe(true);
    expect(slow.verdict).toEqual({ ok: false, waiting: [], problem: null });
    expect(slow.ratio.ok).toBe(true);
  });

  test('is an estimate by published curves, and none by a maker’s table', () => {
    expect(value(whole.verdict)).toMatchObject({ estimateOnly: false, by: 'firstOrder', line: 0.9, confidence: 0.9 });
    const generic = { unit: 'airConditioner', stage: 'one', dryAirFlow: null } as const;
    const curves = assess(made({ rating: { ...rating, from: 'generic', rows: [], certified: 10e3, generic } }));
    expect(value(curves.verdict)).toMatchObject({ estimateOnly: true });
  });

  test('has a problem with a line that is no number', () => {
    expect(assess(made({ line: Number.NaN })).verdict).toMatchObject({
      ok: false,
      problem: { code: 'notFinite', quantity: 'limit' },
    });
  });
});
