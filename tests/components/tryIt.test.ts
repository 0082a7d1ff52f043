/** The figures behind the pictures that articles let a hand move. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { btuPerHour, cubicFootPerMinute, fahrenheitDegree, foot, inchOfWater, steadyRule } from '~/calc/index.ts';
import { ahead, dial } from '~/components/tryIt/ahead.ts';
import { withBlower } from '~/components/tryIt/blower.ts';
import { corners, inCell, outdoors, wetBulbs } from '~/components/tryIt/cell.ts';
import { atHeight } from '~/components/tryIt/height.ts';
import { line, outcomes, rangeOf } from '~/components/tryIt/howSure.ts';
import { lineOf } from '~/components/tryIt/lines.ts';
import { atPerTon, printed } from '~/components/tryIt/perTon.ts';
import { reasons, record, seenAt } from '~/components/tryIt/settling.ts';
import { atStatics } from '~/components/tryIt/statics.ts';
import { misread } from '~/components/tryIt/wetAir.ts';
import { rowAt } from '~/islands/article/tryIt/ahead.ts';

const runs = { numRuns: 25 };

test('a page carries the row of the model for every place of its sliders', () => {
  const figures = ahead([dial(0, 3, 1, 2), dial(10, 30, 10, 10)], (a, b) => [a + b, a * b]);
  expect(figures.dials.map(({ start }) => start)).toEqual([2, 0]);
  expect(rowAt(figures, [3, 1])).toEqual([23, 60]);
  expect(rowAt(figures, [0, 2])).toEqual([30, 0]);
  expect(() => rowAt(figures, [4, 0])).toThrow(RangeError);
});

describe('airflow for each ton', () => {
  /** The published flow curve of building models, 0.8 + 0.2·f, read. */
  test.each([
    [0.8, 0.96],
    [1.2, 1.04],
  ])('at %f of the printed airflow a coil makes %f of its total', (ratio, share) => {
    expect(atPerTon(ratio * printed)[0] / atPerTon(printed)[0]).toBeCloseTo(share, 6);
  });

  test('more air cools more and dries less, and comes out less cold', () => {
    const [few, many] = [atPerTon(300 * cubicFootPerMinute), atPerTon(480 * cubicFootPerMinute)];
    expect(many[1]).toBeGreaterThan(few[1]);
    expect(many[0] - many[1]).toBeLessThan(few[0] - few[1]);
    expect(many[2]).toBeLessThan(few[2]);
  });
});

describe('height', () => {
  /** The pressures of the handbook's standard atmosphere: 12.23 of 14.696 psia at 5,000 ft, 10.10 at 10,000 ft. */
  test.each([
    [5000, 12.23],
    [10_000, 10.1],
  ])('at %i ft the air is as thin as its pressure, %f psia', (feet, pressure) => {
    expect(atHeight(feet * foot)[0] / atHeight(0)[0]).toBeCloseTo(pressure / 14.696, 2);
  });

  test('the habit of 4.5 costs more the higher it is', () => {
    const offs = [0, 2500, 5000, 7500, 10_000].map((feet) => atHeight(feet * foot)[1]);
    expect(offs).toEqual(offs.toSorted((a, b) => a - b));
    expect(offs[0]).toBeLessThan(0.04);
  });
});

describe('humidities misread', () => {
  /** From an independent computation at this state: 3.66 and −1.88 % for a point of the return and of the supply humidity. */
  test('a point too high in the supply air, and in the return air, costs what the budget of this state says', () => {
    const [right] = misread(0, 0);
    expect(100 * (misread(0.01, 0)[0] / right - 1)).toBeCloseTo(-1.88, 1);
    expect(100 * (misread(0, 0.01)[0] / right - 1)).toBeCloseTo(3.66, 1);
  });
});

describe('how sure', () => {
  const limits = fc.record({
    dryBulb: fc.double({ min: 0.2, max: 0.9, noNaN: true }),
    airflow: fc.double({ min: 0.03, max: 0.15, noNaN: true }),
    isChecked: fc.constantFrom(0, 1),
  });

  test('wider limits never make the range narrower, and the share stays where it is', () => {
    fc.assert(
      fc.property(limits, ({ dryBulb, airflow, isChecked }) => {
        const [share, low, high] = rangeOf(dryBulb, airflow, isChecked);
        const wider = rangeOf(dryBulb + 0.1, airflow + 0.05, isChecked);
        expect(wider[0]).toBe(share);
        expect(wider[1]).toBeLessThanOrEqual(low);
        expect(wider[2]).toBeGreaterThanOrEqual(high);
      }),
      runs,
    );
  });

  test('it is short of the line where its high end is below, and cannot tell where the line is inside', () => {
    fc.assert(
      fc.property(limits, ({ dryBulb, airflow, isChecked }) => {
        const [, low, high, outcome] = rangeOf(dryBulb, airflow, isChecked);
        const expected = high < line ? 'short' : low >= line ? 'meets' : 'cannotTell';
        expect(outcomes[outcome]).toBe(expected);
      }),
      runs,
    );
  });

  test('a check side by side gets the line out of the range, with ordinary probes and airflow', () => {
    const ordinary = [0.9 * fahrenheitDegree, 0.07] as const;
    expect(outcomes[rangeOf(...ordinary, 0)[3]]).toBe('cannotTell');
    expect(outcomes[rangeOf(...ordinary, 1)[3]]).toBe('short');
  });
});

describe('between four figures', () => {
  test('a corner gives its figure, the middle the mean of all four', () => {
    outdoors.forEach((outdoor, column) => {
      wetBulbs.forEach((wetBulb, row) => {
        expect(inCell(outdoor, wetBulb)[2]).toBeCloseTo(corners[column]?.[row] ?? Number.NaN, 6);
      });
    });
    const middle = inCell((outdoors[0] + outdoors[1]) / 2, (wetBulbs[0] + wetBulbs[1]) / 2)[2];
    expect(middle / btuPerHour).toBeCloseTo((31_800 + 34_200 + 29_900 + 32_300) / 4, 3);
  });

  test('the example of the text, worked by hand: 62.6 °F and 91 °F', () => {
    const [cool, hot, between] = inCell((91 - 32) / 1.8, (62.6 - 32) / 1.8);
    expect(cool / btuPerHour).toBeCloseTo(31_800 + 0.9 * 2400, 3);
    expect(hot / btuPerHour).toBeCloseTo(29_900 + 0.9 * 2400, 3);
    expect(between / btuPerHour).toBeCloseTo(33_960 - 0.6 * 1900, 3);
  });
});

test('all that a blower draws is missing from the net, whatever it draws', () => {
  fc.assert(
    fc.property(fc.double({ min: 100, max: 1000, noNaN: true }), (power) => {
      const [gross, net] = withBlower(power);
      expect(gross - net).toBeCloseTo(power, 3);
    }),
    runs,
  );
});

describe('a line set', () => {
  const lines = fc.record({
    length: fc.double({ min: 50, max: 180, noNaN: true }),
    lift: fc.double({ min: -50, max: 40, noNaN: true }),
    tube: fc.constantFrom(0, 1),
  });

  test('longer costs more capacity, a larger vapour tube less, and a climb costs subcooling', () => {
    fc.assert(
      fc.property(lines, ({ length, lift, tube }) => {
        const [low, high, left] = lineOf(length * foot, lift * foot, tube);
        expect(low).toBeLessThanOrEqual(high);
        expect(lineOf((length + 20) * foot, lift * foot, tube)[0]).toBeLessThan(low);
        expect(lineOf(length * foot, (lift + 10) * foot, tube)[2]).toBeLessThan(left);
        expect(lineOf(length * foot, lift * foot, 1)[0]).toBeGreaterThanOrEqual(low);
      }),
      runs,
    );
  });
});

describe('a record that settles', () => {
  const [settle, window] = [steadyRule.settle / 60, steadyRule.window / 60];
  const minutes = (from: number, to: number) => Array.from({ length: to - from + 1 }, (_, i) => from + i);
  const reasonAt = (minute: number) => reasons[seenAt(minute)[0]];

  test('nothing counts that begins before the start, or a change, is over', () => {
    for (const minute of [
      ...minutes(10, settle + window - 1),
      ...minutes(record.change, record.change + settle + window - 1),
    ])
      expect(reasonAt(minute), String(minute)).toBe('tooEarly');
  });

  test('it drifts first, is steady before the damper is opened, and again at its end', () => {
    expect(reasonAt(settle + window)).toBe('trend');
    expect(reasonAt(record.change - 1)).toBe('none');
    expect(reasonAt(record.length)).toBe('none');
  });

  test('what is called steady drifts by no more than the rule allows', () => {
    for (const minute of minutes(10, record.length)) {
      const [reason, trend] = seenAt(minute);
      if (reasons[reason] === 'none') expect(Math.abs(trend)).toBeLessThanOrEqual(steadyRule.trend);
    }
  });
});

describe('two static pressures', () => {
  /** Rows of the invented table, as it is printed. */
  test.each([
    [0.3, 0.2, 1240, 1310],
    [0.5, 0.4, 1060, 1240],
  ])('%f and %f in. w.c. give %i cfm, and %i with the return side forgotten', (supply, returned, flow, alone) => {
    const found = atStatics(supply * inchOfWater, returned * inchOfWater);
    expect(found[0] / cubicFootPerMinute).toBeCloseTo(flow, 6);
    expect(found[1] / cubicFootPerMinute).toBeCloseTo(alone, 6);
  });
});
