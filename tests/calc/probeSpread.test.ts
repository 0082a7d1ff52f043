/** What two probes cannot tell from zero, against derivatives that are taken here from states of moist air alone. */
import { describe, expect, test } from 'vitest';
import { type AirReading, type MoistAir, moistAir, type Test } from '../../src/calc/index.ts';
import { probeSpread } from '../../src/calc/probeSpread.ts';
import { wholeTest } from './testCase.ts';

const limits = { dryBulb: 0.5, relativeHumidity: 0.03, wetBulb: 0.4 };
const byHumidity = (dryBulb: number, relativeHumidity: number): AirReading => ({
  dryBulb,
  relativeHumidity,
  wetBulb: null,
});
const byWetBulb = (dryBulb: number, wetBulb: number): AirReading => ({ dryBulb, relativeHumidity: null, wetBulb });
const stateOf = ({ dryBulb, relativeHumidity, wetBulb }: AirReading): MoistAir =>
  moistAir({
    dryBulb: dryBulb as number,
    ...(wetBulb === null ? { relativeHumidity: relativeHumidity as number } : { wetBulb }),
  });

/** How the humidity ratio goes with the dry bulb, K, and with what was read of the humidity, by differences to both sides. */
function slopes(reading: AirReading) {
  const by = (key: keyof AirReading, h: number) => {
    const at = (step: number) => stateOf({ ...reading, [key]: (reading[key] as number) + step }).humidityRatio;
    return (at(h) - at(-h)) / (2 * h);
  };
  return {
    dryBulb: by('dryBulb', 0.01),
    humidity: by(reading.wetBulb === null ? 'relativeHumidity' : 'wetBulb', 0.001),
  };
}

const spread = (entering: AirReading, leaving: AirReading, change: Partial<Test> = {}) =>
  probeSpread({ ...wholeTest, entering, leaving, probeLimits: limits, ...change }, stateOf(entering), stateOf(leaving));
const compared = (humidity: number | null): Test['sideBySide'] => ({
  returnAir: { dryBulb: 0, humidity, scatter: null },
  supplyAir: null,
  reference: 'neither',
  drift: null,
  shared: null,
});
const room = byHumidity(24, 0.5);
const supply = byHumidity(13, 0.9);
const squares = (...list: readonly number[]) => list.reduce((sum, one) => sum + one * one, 0);

describe('two probes that were never compared', () => {
  test('err each on its own: 1.282 standard deviations of rectangular limits', () => {
    expect(spread(room, supply)!.dryBulb).toBeCloseTo(1.282 * Math.sqrt(2 / 3) * 0.5, 9);
    const [one, other] = [slopes(room), slopes(supply)];
    const errors = squares(one.dryBulb * 0.5, other.dryBulb * 0.5, one.humidity * 0.03, other.humidity * 0.03) / 3;
    expect(spread(room, supply)!.humidityRatio / (1.282 * Math.sqrt(errors))).toBeCloseTo(1, 3);
  });

  test('of which one or both read the wet bulb, with its limit', () => {
    const [wetRoom, wetSupply] = [byWetBulb(24, 17), byWetBulb(13, 12)];
    for (const [entering, leaving] of [
      [wetRoom, wetSupply],
      [wetRoom, supply],
      [room, wetSupply],
    ] as const) {
      const errors = [entering, leaving].map((reading) => {
        const { dryBulb, humidity } = slopes(reading);
        return squares(dryBulb * 0.5, humidity * (reading.wetBulb === null ? 0.03 : 0.4)) / 3;
      });
      const expected = 1.282 * Math.sqrt(errors[0]! + errors[1]!);
      expect(spread(entering, leaving)!.humidityRatio / expected).toBeCloseTo(1, 3);
    }
  });
});

describe('two probes that were compared', () => {
  test('share their errors, which count by what they do to both differently, and keep a remainder of their own', () => {
    expect(spread(room, supply, { sideBySide: compared(0) })!.dryBulb).toBeCloseTo(
      (1.282 * Math.SQRT2 * 0.2 * 5) / 9,
      9,
    );
    const [one, other] = [slopes(room), slopes(supply)];
    const both = squares((one.dryBulb - other.dryBulb) * 0.5, (one.humidity - other.humidity) * 0.03) / 3;
    const own = squares(one.dryBulb / 9, other.dryBulb / 9, one.humidity * 0.007, other.humidity * 0.007);
    const found = spread(room, supply, { sideBySide: compared(0) })!.humidityRatio;
    expect(found / (1.282 * Math.sqrt(both + own))).toBeCloseTo(1, 3);
  });

  test('in their dry bulbs alone, err each on its own in the humidity', () => {
    const [one, other] = [slopes(room), slopes(supply)];
    const heat = squares((one.dryBulb - other.dryBulb) * 0.5) / 3 + squares(one.dryBulb / 9, other.dryBulb / 9);
    const water = squares(one.humidity * 0.03, other.humidity * 0.03) / 3;
    const found = spread(room, supply, { sideBySide: compared(null) })!.humidityRatio;
    expect(found / (1.282 * Math.sqrt(heat + water))).toBeCloseTo(1, 3);
  });
});

test('perfectly dry and saturated air are looked at from the side on which there is air', () => {
  for (const humidity of [0, 1]) {
    const found = spread(byHumidity(24, humidity), byHumidity(13, humidity))!.humidityRatio;
    expect(Number.isFinite(found)).toBe(true);
    expect(found).toBeGreaterThan(0);
  }
});

test('limits that are no numbers of zero or more tell nothing; limits of nothing leave nothing unseen', () => {
  for (const bad of [Number.NaN, Number.POSITIVE_INFINITY, -0.1])
    for (const key of ['dryBulb', 'relativeHumidity', 'wetBulb'] as const)
      expect(spread(room, supply, { probeLimits: { ...limits, [key]: bad } })).toBeNull();
  const perfect = { dryBulb: 0, relativeHumidity: 0, wetBulb: 0 };
  expect(spread(room, supply, { probeLimits: perfect })).toEqual({ dryBulb: 0, humidityRatio: 0 });
});
