import { describe, expect, test } from 'vitest';
import { atticTemperatures, ductGain, fromFahrenheit, moistAir } from '../../src/calc/index.ts';
import { allChoices, allQuantities } from '../../src/job/allKeys.ts';
import { type AtTheCoil, aroundDucts, ductsOf } from '../../src/job/ducts/index.ts';
import { toSi } from '../../src/job/units.ts';
import { jobWith } from './jobs.ts';

const coil: AtTheCoil = {
  entering: moistAir({ dryBulb: fromFahrenheit(75), relativeHumidity: 0.5 }),
  leavingDryBulb: fromFahrenheit(56),
  dryAirFlow: 0.68,
  total: toSi(34000, 'btuh'),
};
const typed = {
  'ducts.supplyArea': ['300', 'ft2'],
  'ducts.returnArea': ['100', 'ft2'],
} as const;
const chosen = { 'ducts.where': 'ventedDarkShingle', 'ducts.insulation': 'r6' } as const;

describe('the ducts of a job', () => {
  test('need a surface, an insulation and a place, and nothing more', () => {
    expect(ductsOf(jobWith({}), coil).needs).toEqual(['ducts.supplyArea', 'ducts.insulation', 'ducts.where']);
    expect(ductsOf(jobWith({}, { 'ducts.where': 'other' }), coil).needs).toContain('ducts.around');
    const { input, needs } = ductsOf(jobWith({ 'ducts.supplyArea': ['300', 'ft2'] }, chosen), coil);
    expect(needs).toEqual([]);
    expect(input?.return).toMatchObject({ area: 0, leakage: 0 });
    expect(input?.supply.leakage).toBe(0);
  });

  test('wait for what is measured at the coil', () => {
    expect(ductsOf(jobWith(typed, chosen), null)).toMatchObject({ input: null, needs: [] });
  });

  test('come out at the worked example of the standard but for what the rooms get back', () => {
    // The example has no regain, and an attic as damp as it says: 46.86 Btu/lb at 130 °F is a dew point near 64 °F.
    const job = jobWith({ ...typed, 'ducts.dewPoint': ['64', 'degF'] }, chosen);
    const { input } = ductsOf(job, { ...coil, dryAirFlow: 0.6804 });
    const { effectiveness, supplyLeft, returnLeft } = ductGain({ ...input!, regain: 0 });
    expect(supplyLeft).toBeCloseTo(0.96215, 3);
    expect(returnLeft).toBeCloseTo(0.98722, 3);
    expect(effectiveness).toBeCloseTo(0.8665, 2);
    expect(input?.regain).toBe(0.1);
  });

  test('stand in the attic of a design day until a temperature is typed, which outranks it', () => {
    expect(aroundDucts(jobWith({}, chosen))).toBe(atticTemperatures.ventedDarkShingle);
    expect(aroundDucts(jobWith({ 'ducts.around': ['100', 'degF'] }, chosen))).toBeCloseTo(fromFahrenheit(100), 9);
    expect(aroundDucts(jobWith({}, { 'ducts.where': 'other' }))).toBeNull();
  });

  test('give nothing back to the rooms from another place than an attic', () => {
    const job = jobWith({ ...typed, 'ducts.around': ['85', 'degF'] }, { ...chosen, 'ducts.where': 'other' });
    expect(ductsOf(job, coil).input?.regain).toBe(0);
  });

  test('are not worked out around a figure that cannot be read', () => {
    const job = jobWith({ ...typed, 'ducts.supplyLeakage': ['many', 'percent'] }, chosen);
    expect(ductsOf(job, coil)).toMatchObject({ input: null, bad: 'ducts.supplyLeakage' });
  });

  test('in air colder than the dew point of the return hold that air saturated', () => {
    const job = jobWith({ ...typed, 'ducts.around': ['40', 'degF'] }, { ...chosen, 'ducts.where': 'other' });
    expect(ductsOf(job, coil).input?.supply.around).toMatchObject({ relativeHumidity: expect.closeTo(1, 6) });
  });

  test('are part of every record', () => {
    expect(Object.keys(allQuantities)).toContain('ducts.supplyArea');
    expect(allChoices['ducts.where'].values).toEqual([...Object.keys(atticTemperatures), 'other']);
  });
});
