/** A suction line by itself: what it leaves of the pressure, and whether its vapour carries oil. */
import { describe, expect, test } from 'vitest';
import { refrigerantState } from '../../src/calc/index.ts';
import { pipeDrop } from '../../src/calc/pipeDrop.ts';
import { dewPointOf } from '../../src/calc/refrigerant.ts';
import { oilReturn, vaporLine } from '../../src/calc/vaporLine.ts';
import { codeOf } from './codeOf.ts';

const refrigerant = 'R-410A';
const entering = refrigerantState(refrigerant, { dewPoint: 7, superheat: 6 });
const run = { refrigerant, massFlow: 0.06, diameter: 0.0192, length: 20, lift: 0 } as const;
const gravity = 9.806_65;

describe('the pressure after a vapour line', () => {
  test('falls a little more than the friction at the density of its start, as the vapour grows thinner: p₂² = p₁² − 2·p₁·Δp', () => {
    const { density, viscosity, pressure } = entering;
    const { drop } = pipeDrop({ massFlow: 0.06, density, viscosity, diameter: 0.0192, length: 20 });
    const line = vaporLine(run, entering);
    expect(line.friction).toBe(drop);
    expect(line.drop).toBeGreaterThan(drop);
    expect(line.pressure ** 2).toBeCloseTo(pressure ** 2 - 2 * pressure * drop, -3);
    expect(line.pressure + line.drop).toBeCloseTo(pressure, 6);
  });

  test('gains the weight of the column of vapour that comes down, ρ·g·h', () => {
    const { pressure, density } = entering;
    const { friction, ...level } = vaporLine(run, entering);
    const down = vaporLine({ ...run, lift: 10 }, entering);
    const up = vaporLine({ ...run, lift: -10 }, entering);
    const weight = density * gravity * 10;
    expect(down.pressure ** 2).toBeCloseTo(pressure ** 2 - 2 * pressure * (friction - weight), -3);
    expect(up.pressure ** 2).toBeCloseTo(pressure ** 2 - 2 * pressure * (friction + weight), -3);
    expect(down.pressure).toBeGreaterThan(level.pressure);
  });

  test('is told as dew points too, the second below the first', () => {
    const line = vaporLine(run, entering);
    expect(line.dewDrop).toBeCloseTo(7 - dewPointOf(refrigerant, line.pressure), 6);
    expect(line.dewDrop).toBeGreaterThan(0);
  });

  test('may come down to the coldest dew point of the rows, −20 °C, and no lower', () => {
    const { density, viscosity, pressure } = entering;
    const least = refrigerantState(refrigerant, { dewPoint: -20, superheat: 0 }).pressure;
    const most = (pressure ** 2 - least ** 2) / (2 * pressure);
    const perMetre = pipeDrop({ massFlow: 0.06, density, viscosity, diameter: 0.0192, length: 1 }).drop;
    const longest = most / perMetre;
    expect(vaporLine({ ...run, length: longest * 0.999 }, entering).pressure / least - 1).toBeLessThan(0.003);
    expect(vaporLine({ ...run, length: longest * 0.999 }, entering).pressure).toBeGreaterThan(least);
    expect(codeOf(() => vaporLine({ ...run, length: longest * 1.001 }, entering))).toBe('outOfRange');
  });

  test('may gain a tenth of the pressure from a column, and no more', () => {
    const { density, pressure } = entering;
    const highest = pressure / 10 / (density * gravity);
    // In a short line friction takes next to nothing of it.
    const lift = (share: number) => () => vaporLine({ ...run, length: 0.01, lift: highest * share }, entering);
    expect(lift(0.99)().drop).toBeLessThan(0);
    expect(codeOf(lift(1.01))).toBe('outOfRange');
  });
});

describe('oil is carried back', () => {
  const fpm = 0.3048 / 60;

  test.each([
    ['from 4.5 m/s on a level', 4.5, 0, 'carried'],
    ['not slower', 4.49, 0, 'slow'],
    ['up to 20 m/s', 20, 0, 'carried'],
    ['not faster: it is loud', 20.01, 0, 'fast'],
    ['up a riser from 1000 feet a minute', 1000 * fpm * 1.0001, -3, 'carried'],
    ['not up a riser in a slower vapour', 999 * fpm, -3, 'slowInRiser'],
    ['down, as on a level', 999 * fpm, 3, 'carried'],
  ] as const)('%s', (_, velocity, lift, found) => {
    expect(oilReturn(velocity, lift)).toBe(found);
  });
});
