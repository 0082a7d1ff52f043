/** Remarks on how sure the readings are: at the threshold there is none, past it one that names its figures. */
import { describe, expect, test } from 'vitest';
import { assess, type SideBySide, type Test } from '../../src/calc/index.ts';
import { wholeTest } from './testCase.ts';

const degree = 5 / 9;
const alike = { dryBulb: 0, humidity: 0, scatter: null };
const whole: SideBySide = { returnAir: alike, supplyAir: alike, reference: 'neither', drift: null, shared: null };
const probeLimits = { dryBulb: 0.5, relativeHumidity: 0.03, wetBulb: 0.4 };
/** The figures that a remark names, by symbol; `null` where it is not made. */
function said(code: string, change: Partial<Test>): Readonly<Record<string, number>> | null {
  const remark = assess({ ...wholeTest, probeLimits, ...change }).remarks.find((one) => one.code === code);
  return remark ? Object.fromEntries(remark.amounts.map(({ symbol, value }) => [symbol, value])) : null;
}
const apart = (change: Partial<SideBySide>): Partial<Test> => ({ sideBySide: { ...whole, ...change } });
const bulbs = {
  entering: { dryBulb: 24, relativeHumidity: null, wetBulb: 17.5 },
  leaving: { dryBulb: 13, relativeHumidity: null, wetBulb: 12 },
};

describe('probes further apart than two within their limits can be', () => {
  test('are remarked on by the wider of the two differences, whichever way it goes', () => {
    const by = (returnAir: number, supplyAir: number | null) =>
      said(
        'probesApart',
        apart({
          returnAir: { ...alike, dryBulb: returnAir },
          supplyAir: supplyAir === null ? null : { ...alike, dryBulb: supplyAir },
        }),
      );
    expect(by(1, -1)).toBeNull();
    expect(by(1.01, 0)).toEqual({ Δt: 1.01 });
    expect(by(-1.2, null)).toEqual({ Δt: 1.2 });
    expect(by(1.1, -1.3)).toEqual({ Δt: 1.3 });
    expect(said('probesApart', {})).toBeNull();
  });

  test('are remarked on for their humidities too, where those were compared', () => {
    const by = (returnAir: number | null, supplyAir: number | null, other: Partial<Test> = {}) =>
      said('probeHumiditiesApart', {
        ...other,
        ...apart({ returnAir: { ...alike, humidity: returnAir }, supplyAir: { ...alike, humidity: supplyAir } }),
      });
    expect(by(0.06, -0.06)).toBeNull();
    expect(by(0.061, 0)).toEqual({ Δφ: 0.061 });
    expect(by(-0.07, null)).toEqual({ Δφ: 0.07 });
    expect(by(0, -0.08)).toEqual({ Δφ: 0.08 });
    expect(by(null, 0.09)).toBeNull();
    // Wet bulbs have a limit of their own, and their difference is one of temperatures.
    expect(by(0.8, 0, bulbs)).toBeNull();
    expect(by(0.81, 0, bulbs)).toEqual({ Δφ: 0.81 });
    expect(said('probeHumiditiesApart', {})).toBeNull();
  });

  test('name a humidity as a fraction and a wet bulb as a difference of temperatures', () => {
    const kinds = (other: Partial<Test>, humidity: number) =>
      assess({ ...wholeTest, probeLimits, ...other, ...apart({ returnAir: { ...alike, humidity } }) })
        .remarks.find(({ code }) => code === 'probeHumiditiesApart')
        ?.amounts.map(({ kind }) => kind);
    expect(kinds({}, 0.2)).toEqual(['fraction']);
    expect(kinds(bulbs, 2)).toEqual(['temperatureDifference']);
  });
});

describe('probes whose difference moved', () => {
  test('are remarked on past a fifth of a degree Fahrenheit or one per cent, with both figures', () => {
    const by = (dryBulb: number, humidity: number) => said('probesDrifted', apart({ drift: { dryBulb, humidity } }));
    expect(by(0.2 * degree, 0.01)).toBeNull();
    expect(by(0.12, 0)).toEqual({ Δt: 0.12, Δφ: 0 });
    expect(by(0, 0.011)).toEqual({ Δt: 0, Δφ: 0.011 });
    expect(said('probesDrifted', apart({}))).toBeNull();
    expect(said('probesDrifted', {})).toBeNull();
  });
});

describe('a supply plane', () => {
  test('is remarked on where its points lie further apart than a laboratory allows, 1.5 °F', () => {
    const by = (...supplyPoints: readonly number[]) => said('supplyUneven', { supplyPoints });
    expect(by(13, 13.8, 13.4)).toBeNull();
    expect(by(13.4, 13, 13.9)).toEqual({ 'Δt₂': expect.closeTo(0.9, 9), Δt: expect.closeTo(1.5 * degree, 9) });
    expect([by(), by(40)]).toEqual([null, null]);
  });
});

describe('a ratio higher than the system can make', () => {
  test('is remarked on with its figure, and an ordinary one is not', () => {
    const { ratio } = assess(wholeTest);
    const flow = wholeTest.airflow.volumeFlow as number;
    const more = { airflow: { ...wholeTest.airflow, volumeFlow: 1.3 * flow } };
    const high = assess({ ...wholeTest, ...more });
    expect(said('higherThanItCanMake', more)).toEqual({ r: high.ratio.ok && high.ratio.value.value });
    expect(ratio.ok && ratio.value.value).toBeLessThan(1.1);
    expect(said('higherThanItCanMake', {})).toBeNull();
  });
});
