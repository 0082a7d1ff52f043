import { readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { sources } from '../../src/calc/index.ts';
import { published } from './all.ts';
import type { Check } from './check.ts';
import { notOurs } from './notOurs.ts';

const subjects: readonly (readonly [string, readonly Check[]])[] = Object.entries(published);
const all = subjects.flatMap(([, checks]) => checks);

describe.each(subjects)('outside figures: %s', (_, checks) => {
  test.each(checks)('$title', ({ ours, expected, tolerance, unit }) => {
    const value = ours();
    const distance = Math.abs(value - expected);
    expect(distance, `${value} ${unit} here, ${expected} there, allowed ${tolerance}`).toBeLessThanOrEqual(tolerance);
  });
});

test('every list stands in all.ts and none is empty', () => {
  const helpers = ['all', 'check', 'fitEnhancement', 'notOurs', 'printFit'];
  const modules = readdirSync(new URL('.', import.meta.url))
    .filter((name) => name.endsWith('.ts') && !name.endsWith('.test.ts'))
    .map((name) => name.slice(0, -3))
    .filter((name) => !helpers.includes(name));
  expect(Object.keys(published).sort()).toEqual(modules.sort());
  for (const [subject, checks] of subjects) expect(checks.length, subject).toBeGreaterThan(0);
});

test('no two checks have the same title', () => {
  const titles = all.map(({ title }) => title);
  expect(titles.filter((title, index) => titles.indexOf(title) !== index)).toEqual([]);
});

test('every check has a finite figure, a tolerance above zero, a unit and a source', () => {
  for (const { title, expected, tolerance, unit, source } of all) {
    expect(Number.isFinite(expected), title).toBe(true);
    expect(tolerance, title).toBeGreaterThan(0);
    expect(unit, title).not.toBe('');
    expect(source in sources || source.includes(' '), title).toBe(true);
  }
});

test('no figure of the moist-air lists has been dropped', () => {
  const count = (subject: keyof typeof published) => published[subject].length;
  expect({
    saturation: count('saturation'),
    enhancement: count('enhancement'),
    handbookTables: count('handbookTables'),
    handbookExamples: count('handbookExamples'),
    realGas: count('realGas'),
    realGasStates: count('realGasStates'),
    otherStates: count('otherStates'),
    atmosphere: count('atmosphere'),
    factors: count('factors'),
    notOurs: notOurs.length,
  }).toEqual({
    saturation: 32,
    enhancement: 25,
    handbookTables: 145,
    handbookExamples: 31,
    realGas: 18,
    realGasStates: 81,
    otherStates: 13,
    atmosphere: 24,
    factors: 18,
    notOurs: 12,
  });
});
