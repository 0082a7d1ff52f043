/** The programs in `examples/`, run as anybody would run them. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { btuPerHour, toFahrenheit } from '../../src/calc/index.ts';
import { goldenJobRows } from '../published/data/goldenJobRows.ts';

const root = fileURLToPath(new URL('../../', import.meta.url));

function run(name: string, ...given: string[]) {
  const { stdout, stderr, status } = spawnSync(
    `${root}node_modules/.bin/node`,
    [`${root}examples/${name}.ts`, ...given],
    {
      encoding: 'utf8',
    },
  );
  return { stdout, stderr, status, numbers: (stdout.match(/\d+(\.\d+)?/g) ?? []).map(Number) };
}

/** The invented system of the examples is that of this job, which was worked out with CoolProp 8.0.0 outside this project. */
const [job] = goldenJobRows;
const near = (ours: number, theirs: number) => expect(Math.abs(ours / theirs - 1)).toBeLessThan(job!.tolerance);

test('one state has the wet bulb of a library of real gases, and refuses what cannot be', () => {
  const [dryBulb, humidity] = job!.entering;
  const { numbers, status } = run('oneState', String(dryBulb), String(100 * humidity), '0');
  expect(numbers[0]).toBeCloseTo(toFahrenheit(job!.enteringWetBulb), 1);
  expect(status).toBe(0);
  const refused = run('oneState', '75', '150');
  expect(refused).toMatchObject({ status: 1, stdout: '' });
  expect(refused.stderr).toContain('relativeHumidity is 1.5');
});

test('one assessment finds what the job makes and should make, and that it cannot be told', () => {
  const { stdout, numbers } = run('oneAssessment');
  const [makes = 0, should = 0, ratio = 0, low = 0, high = 0] = numbers;
  near(makes, job!.total / btuPerHour);
  near(should, job!.expectedNet / btuPerHour);
  near(ratio, job!.ratio);
  expect(low).toBeLessThan(ratio);
  expect(high).toBeGreaterThan(ratio);
  expect(stdout).toContain('cannotTell');
});

test('a CSV of tests gives an answer a line, and a line that lacks a figure what can be told without it', () => {
  const folder = mkdtempSync(join(tmpdir(), 'ton-for-ton-csv-'));
  const file = join(folder, 'jobs.csv');
  // Columns in another order, a column more, and a supply that was not read.
  const [[entering, enteringHumidity], [leaving, leavingHumidity]] = [job!.entering, job!.leaving];
  const figures = [job!.cfm, job!.outdoor, entering, 100 * enteringHumidity];
  const lines = [
    [...figures, leaving, 100 * leavingHumidity, 'attic'],
    [...figures, '', '', 'attic'],
  ];
  writeFileSync(file, `cfm,outdoor_f,return_f,return_rh,supply_f,supply_rh,where\r\n${lines.join('\r\n')}\r\n`);
  const answers = run('thousandJobs', file).stdout.trim().split('\n').slice(1);
  rmSync(folder, { recursive: true });
  const [whole = '', part = ''] = answers;
  near(Number(whole.split(',')[0]), job!.total / btuPerHour);
  near(Number(whole.split(',')[1]), job!.expectedNet / btuPerHour);
  expect(whole).toMatch(/,cannotTell$/);
  expect(answers).toHaveLength(2);
  expect(part.split(',')[0]).toBe('');
  near(Number(part.split(',')[1]), job!.expectedNet / btuPerHour);
});

test('a thousand tests that are made up all have a ratio between its ends', () => {
  const rows = run('thousandJobs').stdout.trim().split('\n').slice(1);
  expect(rows).toHaveLength(1000);
  for (const row of rows) {
    const [, , ratio, low, high] = row.split(',').map(Number) as [number, number, number, number, number];
    expect(ratio > low && ratio < high, row).toBe(true);
  }
});
