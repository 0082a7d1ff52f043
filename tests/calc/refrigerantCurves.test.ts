/** Curves through rows, on substances whose properties are known everywhere: made up, and straight in the form that each is drawn in. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { curvesThrough } from '../../src/calc/refrigerantCurves.ts';
import { placeOf, smoothCurve } from '../../src/calc/smoothCurve.ts';

describe('a substance whose properties are straight in the forms in which they are drawn', () => {
  const kelvin = (t: number) => t + 273.15;
  const dew = (t: number) => Math.exp(21 - 2100 / kelvin(t));
  const bubble = (t: number) => Math.exp(21.1 - 2090 / kelvin(t));
  const liquidDensity = (t: number) => Math.cbrt(1.4e9 - 9e6 * t);
  const liquidEnthalpy = (t: number) => 2e5 + 1400 * t;
  const liquidViscosity = (t: number) => Math.exp(-8.5 - 0.012 * t);
  /** Square of p/ρ, J²/kg². */
  const saturatedSquare = (t: number) => 4e8 + 1.1e6 * t;
  const superheatedSquare = (t: number) => 4.4e8 + 1.2e6 * t;
  const vaporEnthalpy = (t: number) => 4e5 + 500 * t;
  const vaporViscosity = (t: number) => 1.1e-5 + 5e-8 * t;

  const temperature = [-20, -10, 0, 5, 10, 20, 40, 60];
  const along = (of: (t: number) => number) => temperature.map(of);
  const rows = {
    temperature,
    dewPressure: along(dew),
    bubblePressure: along(bubble),
    liquidDensity: along(liquidDensity),
    liquidEnthalpy: along(liquidEnthalpy),
    liquidViscosity: along(liquidViscosity),
    vaporDensity: along((t) => dew(t) / Math.sqrt(saturatedSquare(t))),
    vaporEnthalpy: along(vaporEnthalpy),
    vaporViscosity: along(vaporViscosity),
    superheatedDensity: along((t) => dew(t) / Math.sqrt(superheatedSquare(t))),
    superheatedEnthalpy: along((t) => vaporEnthalpy(t) + 9000),
    superheatedViscosity: along((t) => vaporViscosity(t) * 1.03),
  };

  test('is given everywhere between its rows, to rounding', () => {
    const curves = curvesThrough(rows);
    for (const t of [-19, -13.7, -4, 2.5, 7.1, 13, 33.3, 59]) {
      const pairs: readonly (readonly [ours: number, known: number])[] = [
        [curves.lnDew(t), Math.log(dew(t))],
        [curves.lnBubble(t), Math.log(bubble(t))],
        [Math.cbrt(curves.liquidDensityCubed(t)), liquidDensity(t)],
        [curves.liquidEnthalpy(t), liquidEnthalpy(t)],
        [Math.exp(curves.lnLiquidViscosity(t)), liquidViscosity(t)],
        [curves.saturated.pv2(t), saturatedSquare(t)],
        [curves.saturated.enthalpy(t), vaporEnthalpy(t)],
        [curves.saturated.viscosity(t), vaporViscosity(t)],
        [curves.superheated.pv2(t), superheatedSquare(t)],
        [curves.superheated.enthalpy(t), vaporEnthalpy(t) + 9000],
        [curves.superheated.viscosity(t), vaporViscosity(t) * 1.03],
      ];
      for (const [index, [ours, known]] of pairs.entries())
        expect(Math.abs(ours / known - 1), `${index} at ${t} °C`).toBeLessThan(1e-10);
    }
  });

  test('reaches from its first row to its last', () => {
    expect(curvesThrough(rows).range).toEqual([-20, 60]);
  });
});

describe('the smooth curve', () => {
  const xs = [0, 1, 3, 4, 8];

  test('is the parabola, however far apart its points stand, and goes on along it a little beyond them', () => {
    const of = (x: number) => 2 - 3 * x + 0.5 * x * x;
    const curve = smoothCurve(xs, xs.map(of));
    for (const x of [-0.2, 0, 0.3, 1, 2.2, 3, 3.9, 4, 6, 8, 8.4]) expect(curve(x)).toBeCloseTo(of(x), 12);
  });

  test('meets its points, with one slope to either side of each', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: -9, max: 9, noNaN: true }), { minLength: 5, maxLength: 5 }), (ys) => {
        const curve = smoothCurve(xs, ys);
        const step = 1e-6;
        for (const [index, x] of xs.entries()) {
          expect(curve(x)).toBeCloseTo(ys[index]!, 9);
          const slopes = [curve(x) - curve(x - step), curve(x + step) - curve(x)].map((rise) => rise / step);
          expect(slopes[0]).toBeCloseTo(slopes[1]!, 3);
        }
      }),
      { numRuns: 30 },
    );
  });
});

describe('the place of a value on a rising curve', () => {
  test('is the root that is known in closed form, wherever in the bracket it lies', () => {
    for (const root of [0.001, 0.2, 1, 1.7, 1.999]) {
      expect(placeOf((x) => x ** 3 + x, root ** 3 + root, 0, 2)).toBeCloseTo(root, 11);
      expect(placeOf(Math.exp, Math.exp(root), -3, 2)).toBeCloseTo(root, 11);
    }
  });

  test('is found in few steps where the curve is far from straight: one end that stands still does not hold it up', () => {
    let asked = 0;
    const steep = (x: number) => {
      asked++;
      return x ** 9;
    };
    expect(placeOf(steep, 1e-3, 0, 10)).toBeCloseTo(1e-3 ** (1 / 9), 9);
    expect(asked).toBeLessThan(60);
  });
});
