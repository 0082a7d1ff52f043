import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Ducts, ductGain, moistAir, type Step } from '../../src/calc/index.ts';
import { codeOf } from './codeOf.ts';

const attic = moistAir({ dryBulb: 50, dewPoint: 18 });
const run = { area: 28, resistance: 1.06, leakage: 0.05, around: attic };
const ducts: Ducts = {
  supply: run,
  return: { ...run, area: 9 },
  dryAirFlow: 0.68,
  total: 10000,
  supplyDryBulb: 13,
  room: moistAir({ dryBulb: 24, relativeHumidity: 0.5 }),
};

test('ducts without surface and without leaks cost nothing', () => {
  const bare = { ...run, area: 0, leakage: 0 };
  expect(ductGain({ ...ducts, supply: bare, return: bare })).toMatchObject({
    effectiveness: 1,
    delivered: 10000,
    lost: 0,
  });
});

test('more leaks, more surface and less insulation leave the rooms less', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 0.3, noNaN: true }),
      fc.double({ min: 1.05, max: 2, noNaN: true }),
      (leakage, by) => {
        const delivered = (change: object) =>
          ductGain({ ...ducts, supply: { ...run, leakage, ...change }, return: { ...run, leakage, ...change } })
            .delivered;
        const here = delivered({});
        expect(delivered({ leakage: leakage + 0.01 })).toBeLessThan(here);
        expect(delivered({ area: run.area * by })).toBeLessThan(here);
        expect(delivered({ resistance: run.resistance / by })).toBeLessThan(here);
      },
    ),
  );
});

test('what comes back to the rooms is a share of what was lost', () => {
  const without = ductGain(ducts);
  const back = ductGain({ ...ducts, regain: 0.1 });
  expect(back.lost).toBeCloseTo(0.9 * without.lost, 9);
  expect(back.delivered + back.lost).toBeCloseTo(10000, 9);
});

test('the working ends at the effectiveness', () => {
  const steps: Step[] = [];
  const { effectiveness } = ductGain({ ...ducts, regain: 0.1 }, (step) => steps.push(step));
  expect(steps.map(({ id }) => id)).toEqual([
    'ductGain.supply',
    'ductGain.return',
    'ductGain.effectiveness',
    'ductGain.regain',
  ]);
  expect(steps.at(-1)?.gives.value).toBe(effectiveness);
});

test.each([
  [{ dryAirFlow: 0 }, 'outOfRange'],
  [{ total: Number.NaN }, 'notFinite'],
  [{ regain: 2 }, 'outOfRange'],
  [{ supply: { ...run, leakage: -0.1 } }, 'outOfRange'],
  [{ return: { ...run, resistance: 0 } }, 'outOfRange'],
  [{ supplyDryBulb: Number.NaN }, 'notFinite'],
  [{ room: { dryBulb: 200, enthalpy: 48e3 } }, 'outOfRange'],
  [{ supply: { ...run, area: -1 } }, 'outOfRange'],
  [{ return: { ...run, around: { dryBulb: Number.NaN, enthalpy: 80e3 } } }, 'notFinite'],
  [{ room: { dryBulb: 24, enthalpy: Number.POSITIVE_INFINITY } }, 'notFinite'],
  [{ supply: { ...run, around: { dryBulb: 50, enthalpy: 1e300 } } }, 'outOfRange'],
])('refuses %o', (change, code) => {
  expect(codeOf(() => ductGain({ ...ducts, ...change }))).toBe(code);
});
