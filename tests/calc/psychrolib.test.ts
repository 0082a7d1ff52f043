import psychrolib from 'psychrolib';
import { describe, expect, test } from 'vitest';
import {
  enhancementFactor,
  enthalpy,
  humidityRatioFromWetBulb,
  moistAir,
  saturationPressure,
  specificVolume,
} from '../../src/calc/index.ts';

psychrolib.SetUnitSystem(psychrolib.SI);

/**
 * psychrolib works the same equations without the enhancement factor, so its humidity ratio is lower by the factor's worth,
 * d(ln W) = d(ln f)·p/(p − p_w). Fed with that much more relative humidity it must agree. Its wet bulb and dew point are
 * found to 0.001 K, which is the limit there.
 */
const grid = [-20, -5, 0, 5, 15, 25, 35, 45, 60].flatMap((t) =>
  [0.05, 0.3, 0.6, 0.9].flatMap((rh) => [70108, 84556, 101325].map((p) => ({ t, rh, p }))),
);

describe('the same as psychrolib, the enhancement factor given to it', () => {
  test.each(grid)('$t °C, $rh, $p Pa', ({ t, rh, p }) => {
    const ours = moistAir({ dryBulb: t, relativeHumidity: rh, pressure: p });
    const raised = rh * enhancementFactor(t, p);
    const theirs = psychrolib.GetHumRatioFromRelHum(t, raised, p);
    expect(ours.humidityRatio / theirs).toBeCloseTo(1, 5);
    expect(ours.enthalpy / psychrolib.GetMoistAirEnthalpy(t, theirs)).toBeCloseTo(1, 5);
    // Its gas constant has more digits than the handbook's: 2e-6.
    expect(ours.specificVolume / psychrolib.GetMoistAirVolume(t, theirs, p)).toBeCloseTo(1, 5);
  });
});

describe('lower humidity there than here, by the enhancement factor’s worth and no more', () => {
  test.each(grid)('$t °C, $rh, $p Pa', ({ t, rh, p }) => {
    const ours = moistAir({ dryBulb: t, relativeHumidity: rh, pressure: p });
    const theirs = psychrolib.GetHumRatioFromRelHum(t, rh, p);
    const share = ours.humidityRatio / theirs - 1;
    const worth = ((enhancementFactor(t, p) - 1) * p) / (p - ours.vaporPressure);
    expect(share).toBeGreaterThan(0.002);
    expect(share).toBeCloseTo(worth, 4);
  });
});

describe('wet bulb and dew point near psychrolib’s', () => {
  const away = grid.filter(
    ({ t, rh, p }) => Math.abs(moistAir({ dryBulb: t, relativeHumidity: rh, pressure: p }).wetBulb) > 1,
  );
  test.each(away)('$t °C, $rh, $p Pa', ({ t, rh, p }) => {
    const ours = moistAir({ dryBulb: t, relativeHumidity: rh, pressure: p });
    const [, wetBulb, dewPoint] = psychrolib.CalcPsychrometricsFromRelHum(t, rh, p) as [number, number, number];
    // The factor at the wet bulb and at the dew point takes back most of what it gave at the dry bulb; 0.1 % of the
    // water is left where air is hot and dry, worth 0.035 K.
    expect(Math.abs(ours.wetBulb - wetBulb)).toBeLessThan(0.04);
    expect(Math.abs(ours.dewPoint - dewPoint)).toBeLessThan(0.04);
  });
});

/** f·p_ws/(p − f·p_ws) is p_ws/(p/f − p_ws): at a pressure lower by f it has our saturated air, and so the same equations. */
describe('the same wet-bulb equations as psychrolib, liquid and ice', () => {
  const pairs = [
    [40, 20],
    [30, 25],
    [26.7, 19.4],
    [12, 11],
    [5, 0],
    [5, -0.5],
    [-1, -5],
    [2, -3],
    [-20, -21],
  ] as const;
  test.each(pairs)('%d °C with %d °C on the bulb', (t, tw) => {
    for (const p of [70e3, 101325]) {
      const theirs = psychrolib.GetHumRatioFromTWetBulb(t, tw, p / enhancementFactor(tw, p));
      expect(humidityRatioFromWetBulb(t, tw, p)).toBeCloseTo(theirs, 10);
    }
  });
});

test('saturation pressure, enthalpy and volume are the same equations', () => {
  for (const t of [-60, -20, 0, 0.0099, 0.0101, 5, 25, 60, 100, 150]) {
    expect(saturationPressure(t) / psychrolib.GetSatVapPres(t)).toBeCloseTo(1, 9);
  }
  expect(enthalpy(33, 0.012)).toBeCloseTo(psychrolib.GetMoistAirEnthalpy(33, 0.012), 6);
  expect(specificVolume(33, 0.012, 9e4) / psychrolib.GetMoistAirVolume(33, 0.012, 9e4)).toBeCloseTo(1, 5);
});
