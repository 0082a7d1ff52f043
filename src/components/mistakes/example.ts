/** One invented test, and what is shown of it when one thing in it is wrong. All of it is worked out while the site is built. */
import {
  assess,
  btuPerHour,
  type CoilLoad,
  cubicFootPerMinute,
  dryAirFlow,
  emptyRating,
  emptyTest,
  foot,
  fromFahrenheit,
  type Outcome,
  type Test,
  tonOfRefrigeration,
} from '~/calc/index.ts';
import type { mistakeWords } from '~/words/en/articles.ts';

/** By how much a figure is off, relative: 0.1 reads a tenth too high. A band, where one figure would claim too much. */
export interface Cost {
  readonly about: keyof typeof mistakeWords.about;
  readonly by: number | readonly [number, number];
  /** A band whose side is not known. */
  readonly eitherSide?: true;
}

/** The height of the examples in thin air, m: 5000 ft. */
export const high = 5000 * foot;

const printed = [
  [85, 59, 31800],
  [85, 63, 34200],
  [85, 67, 36900],
  [95, 59, 29900],
  [95, 63, 32300],
  [95, 67, 34900],
] as const;

/** Invented: three tons at sea level, 75 °F and 50 % in, 56 °F and 88 % out, 1200 cfm, 91 °F outdoors. */
export const example: Test = {
  ...emptyTest,
  entering: { dryBulb: fromFahrenheit(75), relativeHumidity: 0.5, wetBulb: null },
  leaving: { dryBulb: fromFahrenheit(56), relativeHumidity: 0.88, wetBulb: null },
  airflow: { volumeFlow: 1200 * cubicFootPerMinute, place: 'entering', kind: 'actual', limit: 0.07, sources: null },
  outdoorDryBulb: fromFahrenheit(91),
  fullSpeed: 'oneSpeed',
  rating: {
    ...emptyRating,
    rows: printed.map(([outdoors, wetBulb, total]) => ({
      outdoorDryBulb: fromFahrenheit(outdoors),
      enteringWetBulb: fromFahrenheit(wetBulb),
      dryAirFlow: dryAirFlow({ volumeFlow: 1200 * cubicFootPerMinute, at: 'standard' }),
      total: total * btuPerHour,
    })),
    basis: 'net',
    blowerPower: 300,
  },
  blower: { place: 'outside probes', power: 430, kind: null },
  nominalCapacity: 3 * tonOfRefrigeration,
};

export const aloft: Test = { ...example, altitude: high };

/** The value of a result that the example must have; without it the site is not built. */
export function answerOf<T>(outcome: Outcome<T>): T {
  if (outcome.ok) return outcome.value;
  throw new Error(`the example has no answer: ${outcome.problem?.code ?? outcome.waiting.join(', ')}`);
}
export const loadOf = (test: Test): CoilLoad => answerOf(assess(test).measured);
export const ratioOf = (test: Test) => answerOf(assess(test).ratio);
export const expectedOf = (test: Test) => answerOf(assess(test).expected);
export const verdictOf = (test: Test) => answerOf(assess(test).verdict);
export const states = (test: Test) => {
  const { entering, leaving } = assess(test);
  return { entering: answerOf(entering), leaving: answerOf(leaving) };
};

const alike = { dryBulb: 0, humidity: 0, scatter: null } as const;
/** The example with its probes checked side by side in both airs, which found no difference. */
export const checkedExample: Test = {
  ...example,
  sideBySide: { returnAir: alike, supplyAir: alike, reference: 'neither', drift: null, shared: null },
};

type Change = (test: Test) => Test;

export const off = (shown: number, real: number) => shown / real - 1;

/** What a mistake makes of the measured cooling, of the share, and of what it should make: `real` is the truth. */
export const cooling = (shown: Change, real: Test = example): Cost => ({
  about: 'cooling',
  by: off(loadOf(shown(real)).total, loadOf(real).total),
});
export const share = (shown: Change, real: Test = example): Cost => ({
  about: 'share',
  by: off(ratioOf(shown(real)).value, ratioOf(real).value),
});
export const expected = (shown: Change, real: Test = example): Cost => ({
  about: 'expected',
  by: off(expectedOf(shown(real)).total, expectedOf(real).total),
});

export const flowAs =
  (airflow: Partial<Test['airflow']>): Change =>
  (test) => ({ ...test, airflow: { ...test.airflow, ...airflow } });
