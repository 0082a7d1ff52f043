import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { refrigerantModule } from '../../src/build/makeRefrigerantData.mjs';
import {
  bubblePointOf,
  dewPointOf,
  type Refrigerant,
  refrigerantState,
  refrigerants,
  throttled,
} from '../../src/calc/index.ts';
import { curvesThrough, type RefrigerantRows } from '../../src/calc/refrigerantCurves.ts';
import { refrigerantData } from '../../src/calc/refrigerantData.ts';
import dataText from '../../src/calc/refrigerantData.ts?raw';
import published from '../published/data/refrigerants.csv?raw';
import { codeOf } from './codeOf.ts';

const last = (name: Refrigerant) => refrigerantData[name].temperature.at(-1) as number;
const anyName = fc.constantFrom(...refrigerants);

test('the rows of the package are those that were published', () => {
  expect(dataText).toBe(refrigerantModule(published));
});

/** Every other row of a refrigerant, the even or the odd ones. */
function half(rows: RefrigerantRows, rest: 0 | 1): RefrigerantRows {
  const kept = Object.entries(rows).map(([column, values]) => [column, values.filter((_, row) => row % 2 === rest)]);
  return Object.fromEntries(kept) as unknown as RefrigerantRows;
}

describe.each(refrigerants)('%s, drawn through every other published row', (name) => {
  const rows: RefrigerantRows = refrigerantData[name];
  const cases = ([0, 1] as const).flatMap((rest) => {
    const curves = curvesThrough(half(rows, rest));
    const inside = (t: number) => t >= curves.range[0] && t <= curves.range[1];
    return rows.temperature.flatMap((t, row) => (row % 2 !== rest && inside(t) ? [{ curves, t, row }] : []));
  });

  test('gives the pressures of the rows between within 0.3 %', () => {
    expect(cases.length).toBeGreaterThan(14);
    for (const { curves, t, row } of cases) {
      expect(Math.abs(Math.exp(curves.lnDew(t)) / rows.dewPressure[row]! - 1), `dew at ${t} °C`).toBeLessThan(0.003);
      const bubble = Math.exp(curves.lnBubble(t)) / rows.bubblePressure[row]!;
      expect(Math.abs(bubble - 1), `bubble at ${t} °C`).toBeLessThan(0.003);
    }
  });

  test('gives the densities of the rows between within 0.5 %, saturated and superheated', () => {
    for (const { curves, t, row } of cases) {
      const pressure = Math.exp(curves.lnDew(t));
      const ratios = {
        liquid: Math.cbrt(curves.liquidDensityCubed(t)) / rows.liquidDensity[row]!,
        saturated: pressure / Math.sqrt(curves.saturated.pv2(t)) / rows.vaporDensity[row]!,
        superheated: pressure / Math.sqrt(curves.superheated.pv2(t)) / rows.superheatedDensity[row]!,
      };
      for (const [what, ratio] of Object.entries(ratios))
        expect(Math.abs(ratio - 1), `${what} at ${t} °C`).toBeLessThan(0.005);
    }
  });

  test('gives enthalpies within 0.5 kJ/kg and viscosities within 1 %', () => {
    for (const { curves, t, row } of cases) {
      expect(Math.abs(curves.liquidEnthalpy(t) - rows.liquidEnthalpy[row]!), `liquid at ${t} °C`).toBeLessThan(500);
      const vapor = curves.saturated.enthalpy(t) - rows.vaporEnthalpy[row]!;
      expect(Math.abs(vapor), `vapour at ${t} °C`).toBeLessThan(600);
      const liquid = Math.exp(curves.lnLiquidViscosity(t)) / rows.liquidViscosity[row]!;
      expect(Math.abs(liquid - 1), `viscosity of liquid at ${t} °C`).toBeLessThan(0.01);
      const superheated = curves.superheated.viscosity(t) / rows.superheatedViscosity[row]!;
      expect(Math.abs(superheated - 1), `viscosity of vapour at ${t} °C`).toBeLessThan(0.01);
    }
  });
});

describe('refrigerantState', () => {
  test('meets the rows themselves', () => {
    for (const name of refrigerants)
      for (const [row, t] of refrigerantData[name].temperature.entries()) {
        const vapor = refrigerantState(name, { dewPoint: t, superheat: 10 });
        const liquid = refrigerantState(name, { bubblePoint: t, subcooling: 0 });
        expect(vapor.density).toBeCloseTo(refrigerantData[name].superheatedDensity[row]!, 9);
        expect(vapor.pressure).toBeCloseTo(refrigerantData[name].dewPressure[row]!, 4);
        expect(liquid.density).toBeCloseTo(refrigerantData[name].liquidDensity[row]!, 9);
        expect(liquid.pressure).toBeCloseTo(refrigerantData[name].bubblePressure[row]!, 4);
      }
  });

  test('has pressures that rise with temperature, vapour that grows denser and liquid that grows thinner', () => {
    fc.assert(
      fc.property(anyName, fc.double({ min: 0, max: 1, noNaN: true }), (name, share) => {
        const t = -20 + share * (last(name) - 20.1 + 20);
        const vapor = (dewPoint: number) => refrigerantState(name, { dewPoint, superheat: 5 });
        const liquid = (bubblePoint: number) => refrigerantState(name, { bubblePoint, subcooling: 0 });
        expect(vapor(t + 0.05).pressure).toBeGreaterThan(vapor(t).pressure);
        expect(vapor(t + 0.05).density).toBeGreaterThan(vapor(t).density);
        expect(liquid(t + 0.05).density).toBeLessThan(liquid(t).density);
        expect(liquid(t).pressure).toBeGreaterThanOrEqual(vapor(t).pressure);
      }),
    );
  });

  test('finds the dew and the bubble point of its own pressures again', () => {
    fc.assert(
      fc.property(anyName, fc.double({ min: 0, max: 1, noNaN: true }), (name, share) => {
        const t = -20 + share * (last(name) + 20);
        const { pressure } = refrigerantState(name, { dewPoint: t, superheat: 0 });
        expect(dewPointOf(name, pressure)).toBeCloseTo(t, 8);
        const bubble = refrigerantState(name, { bubblePoint: t, subcooling: 0 });
        expect(bubblePointOf(name, bubble.pressure)).toBeCloseTo(t, 8);
      }),
    );
  });

  test('throttled vapour keeps its enthalpy and loses density', () => {
    const state = refrigerantState('R-32', { dewPoint: 8, superheat: 6 });
    const after = throttled('R-32', state, 0.95 * state.pressure);
    expect(after.enthalpy).toBeCloseTo(state.enthalpy, 4);
    expect(after.density).toBeLessThan(state.density);
    expect(after.temperature).toBeLessThan(state.temperature);
  });

  test('is as much warmer than its dew point, or colder than its bubble point, as was asked for', () => {
    expect(refrigerantState('R-32', { dewPoint: 7, superheat: 5 })).toMatchObject({ phase: 'vapor', temperature: 12 });
    expect(refrigerantState('R-32', { bubblePoint: 40, subcooling: 6 })).toMatchObject({
      phase: 'liquid',
      temperature: 34,
    });
  });

  test('says that the viscosity of R-454B is an estimate', () => {
    expect(refrigerantState('R-454B', { dewPoint: 7, superheat: 5 }).viscosityWithin).toBe(0.1);
    expect(refrigerantState('R-32', { dewPoint: 7, superheat: 5 }).viscosityWithin).toBe(0.05);
  });

  test('refuses what its rows do not hold, by a name of what is wrong', () => {
    expect(codeOf(() => refrigerantState('R-12' as Refrigerant, { dewPoint: 7, superheat: 5 }))).toBe('unknown');
    expect(codeOf(() => refrigerantState('toString' as Refrigerant, { dewPoint: 7, superheat: 5 }))).toBe('unknown');
    expect(codeOf(() => refrigerantState('R-22', { dewPoint: -21, superheat: 5 }))).toBe('outOfRange');
    expect(codeOf(() => refrigerantState('R-454B', { dewPoint: 61, superheat: 5 }))).toBe('outOfRange');
    expect(codeOf(() => refrigerantState('R-22', { dewPoint: 7, superheat: 21 }))).toBe('outOfRange');
    expect(codeOf(() => refrigerantState('R-22', { dewPoint: Number.NaN, superheat: 5 }))).toBe('notFinite');
    expect(codeOf(() => refrigerantState('R-22', { bubblePoint: 0, subcooling: 25 }))).toBe('outOfRange');
    expect(codeOf(() => refrigerantState('R-22', { bubblePoint: 70, subcooling: 10 }))).toBe('outOfRange');
    expect(codeOf(() => refrigerantState('R-22', { bubblePoint: 50, subcooling: 31 }))).toBe('outOfRange');
    expect(codeOf(() => refrigerantState('R-22', { bubblePoint: 40, subcooling: -1 }))).toBe('outOfRange');
    expect(codeOf(() => dewPointOf('R-22', 1e8))).toBe('outOfRange');
  });
});
