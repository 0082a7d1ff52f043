import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { drawnCopper, frictionFactor, insideDiameter, pipeDrop, type Tube, tubes } from '../../src/calc/index.ts';
import { codeOf } from './codeOf.ts';

const flow = { massFlow: 0.06, density: 36, viscosity: 1.27e-5, diameter: 0.0169, length: 30 };

describe('frictionFactor', () => {
  test('solves the equation of Colebrook to the last digits', () => {
    fc.assert(
      fc.property(
        fc.double({ min: Math.log(4000), max: Math.log(1e8), noNaN: true }),
        fc.double({ min: 0, max: 0.05, noNaN: true }),
        (logReynolds, roughness) => {
          const reynolds = Math.exp(logReynolds);
          const root = Math.sqrt(frictionFactor(reynolds, roughness));
          const right = -2 * Math.log10(roughness / 3.7 + 2.51 / (reynolds * root));
          expect(Math.abs(root * right - 1)).toBeLessThan(1e-12);
        },
      ),
    );
  });

  test('is 64/Re in a laminar flow, and has no jump up to the turbulent one', () => {
    expect(frictionFactor(1000, 0.01)).toBe(0.064);
    for (const edge of [2300, 4000])
      expect(Math.abs(frictionFactor(edge + 1e-6, 1e-4) - frictionFactor(edge - 1e-6, 1e-4))).toBeLessThan(1e-8);
  });
});

describe('pipeDrop', () => {
  test('doubles with the length, and rises with the flow and with the roughness', () => {
    const { drop } = pipeDrop(flow);
    expect(pipeDrop({ ...flow, length: 60 }).drop).toBeCloseTo(2 * drop, 6);
    expect(pipeDrop({ ...flow, massFlow: 0.07 }).drop).toBeGreaterThan(drop);
    expect(pipeDrop({ ...flow, roughness: 10 * drawnCopper }).drop).toBeGreaterThan(drop);
    expect(pipeDrop({ ...flow, length: 0 }).drop).toBe(0);
  });

  test('names the regime of the flow', () => {
    expect(pipeDrop(flow).regime).toBe('turbulent');
    expect(pipeDrop({ ...flow, massFlow: 1e-4 }).regime).toBe('laminar');
    expect(pipeDrop({ ...flow, massFlow: 5e-4 }).regime).toBe('between');
    // Re = 4·ṁ/(π·D·μ).
    const at = (reynolds: number) =>
      pipeDrop({ ...flow, massFlow: (reynolds * Math.PI * flow.diameter * flow.viscosity) / 4 });
    expect([2299, 2301, 3999, 4001].map((reynolds) => at(reynolds).regime)).toEqual([
      'laminar',
      'between',
      'between',
      'turbulent',
    ]);
  });

  test('a laminar flow follows Hagen and Poiseuille', () => {
    const { massFlow, density, viscosity, diameter, length } = { ...flow, massFlow: 1e-4 };
    const expected = (128 * viscosity * length * (massFlow / density)) / (Math.PI * diameter ** 4);
    expect(pipeDrop({ ...flow, massFlow }).drop / expected).toBeCloseTo(1, 12);
  });

  test('refuses nothing, less than nothing and no number', () => {
    expect(codeOf(() => pipeDrop({ ...flow, massFlow: 0 }))).toBe('outOfRange');
    expect(codeOf(() => pipeDrop({ ...flow, density: Number.NaN }))).toBe('notFinite');
    expect(codeOf(() => pipeDrop({ ...flow, diameter: 0 }))).toBe('outOfRange');
    expect(codeOf(() => pipeDrop({ ...flow, diameter: 1.5 }))).toBe('outOfRange');
    expect(codeOf(() => pipeDrop({ ...flow, viscosity: 0 }))).toBe('outOfRange');
    expect(codeOf(() => pipeDrop({ ...flow, length: -1 }))).toBe('outOfRange');
    expect(codeOf(() => pipeDrop({ ...flow, roughness: 0.01 }))).toBe('outOfRange');
  });
});

test('a tube is narrower inside than its trade name says, by two walls of at least 0.03 in', () => {
  for (const tube of Object.keys(tubes) as Tube[]) {
    const [whole = 0, part = '0'] = tube.includes('-') ? tube.split('-') : [0, tube];
    const [above = 0, below = 1] = part.split('/').map(Number);
    const walls = Number(whole) + above / below - insideDiameter(tube) / 0.0254;
    expect(walls, tube).toBeGreaterThanOrEqual(0.06 - 1e-9);
    expect(walls, tube).toBeLessThan(0.12);
  }
  expect(codeOf(() => insideDiameter('2-1/8' as Tube))).toBe('unknown');
});
