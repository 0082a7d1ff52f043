import { describe, expect, test } from 'vitest';
import { curvesThrough, type RefrigerantRows } from '../../src/calc/refrigerantCurves.ts';
import { placeOf, smoothCurve } from '../../src/calc/smoothCurve.ts';

describe('the smooth curve through points', () => {
  const xs = [-2, -1.5, 0, 0.5, 3, 4];
  const places = Array.from({ length: 71 }, (_, i) => -2.5 + 0.1 * i);

  test('is the parabola that they lie on, between them and a little beyond', () => {
    const parabola = (x: number) => 3 - 2 * x + 0.7 * x * x;
    const curve = smoothCurve(xs, xs.map(parabola));
    for (const x of places) expect(curve(x), `at ${x}`).toBeCloseTo(parabola(x), 10);
  });

  test('meets its points and has one slope on both sides of each, whatever they are', () => {
    const ys = [1, 4, -2, 0, 0, 7];
    const curve = smoothCurve(xs, ys);
    const h = 1e-6;
    for (const [i, x] of xs.entries()) expect(curve(x)).toBeCloseTo(ys[i]!, 12);
    for (const x of xs.slice(1, -1)) {
      expect((curve(x) - curve(x - h)) / h).toBeCloseTo((curve(x + h) - curve(x)) / h, 3);
    }
  });

  test('has at a point the slope of the parabola through it and its two neighbours', () => {
    // Through (−1, 0), (0, 1), (3, 1): the chords rise by 1 and by 0, weighed with the other side's width: 3/4.
    const curve = smoothCurve([-2, -1, 0, 3, 4], [0, 0, 1, 1, 1]);
    expect((curve(1e-6) - curve(-1e-6)) / 2e-6).toBeCloseTo(0.75, 6);
  });
});

describe('the place of a value', () => {
  test('is found on curves that are flat at one end and steep at the other, either way round', () => {
    for (const power of [1, 3, 9, 15]) {
      const flatFirst = (x: number) => x ** power;
      const flatLast = (x: number) => 1 - (1 - x) ** power;
      for (const value of [1e-6, 0.2, 0.5, 0.9, 1 - 1e-6]) {
        for (const curve of [flatFirst, flatLast])
          expect(Math.abs(curve(placeOf(curve, value, 0, 1)) - value), `${power}, ${value}`).toBeLessThan(1e-12);
      }
    }
  });

  test('is an end where the value stands there', () => {
    expect(placeOf((x) => x * x, 4, 2, 5)).toBe(2);
    expect(placeOf((x) => x * x, 25, 2, 5)).toBe(5);
  });

  test('is found to the last digits where the values are too large to be met exactly', () => {
    for (const value of [0.3, 0.5, 0.7]) {
      expect(placeOf((x) => 1e12 * x ** 3, 1e12 * value, 0, 1)).toBeCloseTo(Math.cbrt(value), 12);
    }
  });
});

test('each property of a refrigerant is drawn in the form in which it is straight', () => {
  const temperature = [-20, -10, 0, 15, 40, 60];
  const kelvin = (t: number) => t + 273.15;
  // An invented refrigerant all of whose properties are straight lines in their forms.
  const dew = (t: number) => Math.exp(22 - 2300 / kelvin(t));
  const bubble = (t: number) => Math.exp(22.1 - 2310 / kelvin(t));
  const liquid = (t: number) => Math.cbrt(1.5e9 - 4e6 * t);
  const thin = (t: number) => Math.exp(-8.6 - 0.008 * t);
  const ofVapor = (by: number) => (t: number) => dew(t) / Math.sqrt(by * (6e8 + 1e6 * t));
  const line = (from: number, by: number) => (t: number) => from + by * t;
  const column = (of: (t: number) => number) => temperature.map(of);
  const rows: RefrigerantRows = {
    temperature,
    dewPressure: column(dew),
    bubblePressure: column(bubble),
    liquidDensity: column(liquid),
    liquidEnthalpy: column(line(200e3, 1500)),
    liquidViscosity: column(thin),
    vaporDensity: column(ofVapor(1)),
    vaporEnthalpy: column(line(420e3, 300)),
    vaporViscosity: column(line(1.2e-5, 5e-8)),
    superheatedDensity: column(ofVapor(1.1)),
    superheatedEnthalpy: column(line(430e3, 310)),
    superheatedViscosity: column(line(1.3e-5, 6e-8)),
  };
  const curves = curvesThrough(rows);
  expect(curves.range).toEqual([-20, 60]);
  for (const t of [-20, -14, 3, 26, 55, 60]) {
    const near = (value: number, expected: number) => expect(value / expected, `at ${t} °C`).toBeCloseTo(1, 9);
    near(curves.lnDew(t), 22 - 2300 / kelvin(t));
    near(curves.lnBubble(t), 22.1 - 2310 / kelvin(t));
    near(curves.liquidDensityCubed(t), 1.5e9 - 4e6 * t);
    near(curves.liquidEnthalpy(t), 200e3 + 1500 * t);
    near(curves.lnLiquidViscosity(t), -8.6 - 0.008 * t);
    near(curves.saturated.pv2(t), 6e8 + 1e6 * t);
    near(curves.superheated.pv2(t), 1.1 * (6e8 + 1e6 * t));
    near(curves.saturated.enthalpy(t), 420e3 + 300 * t);
    near(curves.superheated.enthalpy(t), 430e3 + 310 * t);
    near(curves.saturated.viscosity(t), 1.2e-5 + 5e-8 * t);
    near(curves.superheated.viscosity(t), 1.3e-5 + 6e-8 * t);
  }
});
