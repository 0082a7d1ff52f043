import { describe, expect, test } from 'vitest';
import { type MoistAir, moistAir, saturationHumidityRatio } from '../../src/calc/index.ts';
import type { AirPoint } from '../../src/charts/moistAir/frame.ts';
import { type ReadingUncertainty, region } from '../../src/charts/moistAir/region.ts';
import { chance } from './moistAirSupport.ts';

/** Two independent normal numbers (Box and Muller). */
function normals(random: () => number): [number, number] {
  const size = Math.sqrt(-2 * Math.log(random()));
  const turn = 2 * Math.PI * random();
  return [size * Math.cos(turn), size * Math.sin(turn)];
}

/** Whether a place lies inside a polygon: a ray to the right crosses its sides an odd number of times. */
function encloses(outline: readonly AirPoint[], { dryBulb: t, humidityRatio: W }: AirPoint): boolean {
  let odd = false;
  outline.forEach((a, i) => {
    const b = outline[(i + 1) % outline.length]!;
    const between = a.humidityRatio > W !== b.humidityRatio > W;
    const share = (W - a.humidityRatio) / (b.humidityRatio - a.humidityRatio);
    if (between && t < a.dryBulb + share * (b.dryBulb - a.dryBulb)) odd = !odd;
  });
  return odd;
}

const area = (outline: readonly AirPoint[]) =>
  Math.abs(
    outline.reduce((sum, a, i) => {
      const b = outline[(i + 1) % outline.length]!;
      return sum + a.dryBulb * b.humidityRatio - b.dryBulb * a.humidityRatio;
    }, 0) / 2,
  );

const byHumidity: ReadingUncertainty = { dryBulb: 0.3, humidity: 0.015, measure: 'relativeHumidity' };
const byWetBulb: ReadingUncertainty = { dryBulb: 0.3, humidity: 0.25, measure: 'wetBulb' };

/** The state that two readings with errors would give. */
function misread(
  air: MoistAir,
  { dryBulb, humidity, measure }: ReadingUncertainty,
  [a, b]: [number, number],
): MoistAir {
  return moistAir({
    dryBulb: air.dryBulb + a * dryBulb,
    [measure]: air[measure] + b * humidity,
    pressure: air.pressure,
  });
}

const states = [
  { title: 'return air by relative humidity', air: { dryBulb: 24, relativeHumidity: 0.5 }, sure: byHumidity },
  {
    title: 'supply air by relative humidity, high up',
    air: { dryBulb: 13, relativeHumidity: 0.8, pressure: 83e3 },
    sure: byHumidity,
  },
  { title: 'return air by wet bulb', air: { dryBulb: 26.7, wetBulb: 19.4 }, sure: byWetBulb },
  { title: 'dry air by wet bulb', air: { dryBulb: 30, wetBulb: 16, pressure: 90e3 }, sure: byWetBulb },
] as const;

describe('region', () => {
  test.each(states)('holds 95 of 100 states that the readings may mean: $title', ({ air: input, sure }) => {
    const air = moistAir(input);
    const outline = region(air, sure);
    const random = chance(20_260_101);
    const count = 40_000;
    let inside = 0;
    for (let i = 0; i < count; i++) if (encloses(outline, misread(air, sure, normals(random)))) inside++;
    const standardError = Math.sqrt((0.95 * 0.05) / count);
    expect(Math.abs(inside / count - 0.95)).toBeLessThan(4 * standardError);
  });

  test('is slanted: hotter readings of the same relative humidity mean damper air', () => {
    const outline = region(moistAir({ dryBulb: 24, relativeHumidity: 0.5 }), byHumidity);
    const hottest = outline.reduce((a, b) => (a.dryBulb > b.dryBulb ? a : b));
    const coldest = outline.reduce((a, b) => (a.dryBulb < b.dryBulb ? a : b));
    expect(hottest.humidityRatio).toBeGreaterThan(coldest.humidityRatio);
  });

  test('slants the other way for a wet bulb: hotter readings of the same wet bulb mean drier air', () => {
    const outline = region(moistAir({ dryBulb: 24, wetBulb: 17 }), byWetBulb);
    const hottest = outline.reduce((a, b) => (a.dryBulb > b.dryBulb ? a : b));
    const coldest = outline.reduce((a, b) => (a.dryBulb < b.dryBulb ? a : b));
    expect(hottest.humidityRatio).toBeLessThan(coldest.humidityRatio);
  });

  test.each([0.98, 1])('is cut at saturation, around air at %d of it', (relativeHumidity) => {
    const air = moistAir({ dryBulb: 13, relativeHumidity });
    const outline = region(air, byHumidity);
    const excess = outline.map(
      ({ dryBulb, humidityRatio }) => humidityRatio - saturationHumidityRatio(dryBulb, air.pressure),
    );
    expect(Math.max(...excess)).toBeLessThan(1e-12);
    expect(excess.filter((one) => one > -1e-9).length).toBeGreaterThan(5);
    const whole = area(region(moistAir({ dryBulb: 13, relativeHumidity: 0.8 }), byHumidity));
    expect(area(outline)).toBeLessThan(0.95 * whole);
    expect(area(outline)).toBeGreaterThan(0.4 * whole);
  });

  test('is left whole where it does not reach saturation', () => {
    const outline = region(moistAir({ dryBulb: 13, relativeHumidity: 0.95 }), byHumidity);
    expect(area(outline)).toBeCloseTo(area(region(moistAir({ dryBulb: 13, relativeHumidity: 0.8 }), byHumidity)), 4);
  });

  test('grows in proportion with each uncertainty', () => {
    const air = moistAir({ dryBulb: 24, relativeHumidity: 0.5 });
    const one = area(region(air, byHumidity));
    expect(area(region(air, { ...byHumidity, dryBulb: 0.6 }))).toBeCloseTo(2 * one, 6);
    expect(area(region(air, { ...byHumidity, humidity: 0.03 }))).toBeCloseTo(2 * one, 6);
  });
});
