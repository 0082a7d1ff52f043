/**
 * Records of earlier versions. There are none yet: version 1 is the first. The versions and steps here are invented, to show that
 * the way from one to the next works before it is needed.
 */
import { expect, test } from 'vitest';
import { emptyJob } from '../../src/job/edit.ts';
import { jobVersion, readJob } from '../../src/job/schema.ts';
import { type UpgradeStep, upgraded, upgradeSteps } from '../../src/job/upgrades.ts';

const steps: Readonly<Record<number, UpgradeStep>> = {
  1: ({ entered, ...record }) => ({ ...record, version: 2, typed: entered }),
  2: (record) => ({ ...record, version: 3, weather: 'fine' }),
};

test('a record of this version stays as it is', () => {
  const job = emptyJob('a');
  expect(upgraded({ ...job }, jobVersion)).toEqual(job);
  expect(readJob(job)).toEqual({ ok: true, job });
});

test('a record goes step by step to the version that is asked for, and its old face stays as it was', () => {
  const old = Object.freeze({ version: 1, id: 'a', entered: 'figures' });
  expect(upgraded(old, 2, steps)).toEqual({ version: 2, id: 'a', typed: 'figures' });
  expect(upgraded(old, 3, steps)).toEqual({ version: 3, id: 'a', typed: 'figures', weather: 'fine' });
  expect(old.entered).toBe('figures');
});

test('there is no way from a version that never was, nor one that does not come to an end', () => {
  for (const version of [0, 0.5, -1, Number.NaN, '1', undefined, 'toString', 9])
    expect(upgraded({ version }, 3, steps), String(version)).toBeNull();
  expect(upgraded({ version: 1 }, 3, { 1: (record) => record })).toBeNull();
  expect(upgraded({ version: 1 }, 3, { 1: (record) => ({ ...record, version: 0 }) })).toBeNull();
});

test('every version before this one has its step', () => {
  const before = Array.from({ length: jobVersion - 1 }, (_, index) => String(index + 1));
  expect(Object.keys(upgradeSteps)).toEqual(before);
});
