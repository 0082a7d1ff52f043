/** Results for a spreadsheet. */
import { expect, test } from 'vitest';
import { simulateAssessment } from '../../src/calc/confidence/simulateAssessment.ts';
import { resultRows, testOf } from '../../src/islands/jobs/resultsTable.ts';
import { csvRows, csvText } from '../../src/job/csv.ts';
import { demoJob } from '../../src/job/demo.ts';
import { emptyJob } from '../../src/job/edit.ts';
import type { Job } from '../../src/job/types.ts';

const named: Job = { ...demoJob, notes: { ...demoJob.notes, address: '=1+2, "Sample" Lane', tester: '@home' } };

test('every job is a row of as many cells as there are heads, an empty one too, in both systems', () => {
  for (const system of ['ip', 'si'] as const) {
    const [heads, ...rows] = resultRows([named, emptyJob('a')], [], system);
    expect(rows).toHaveLength(2);
    for (const row of rows) expect(row).toHaveLength(heads?.length ?? 0);
  }
});

test('the figures are plain numbers, and the same in both systems', () => {
  const of = (system: 'ip' | 'si', head: string) => {
    const [heads = [], row = []] = resultRows([demoJob], [], system);
    return Number(row[heads.indexOf(head)]);
  };
  expect(of('ip', 'Return air (°F)')).toBe(75);
  expect(of('si', 'Return air (°C)')).toBeCloseTo((75 - 32) / 1.8, 1);
  // 1 kW is 3412.14 Btu/h.
  expect(of('ip', 'It makes (Btu/h)') / of('si', 'It makes (kW)')).toBeCloseTo(3412.14, -1);
  expect(of('ip', 'Share (%)')).toBe(of('si', 'Share (%)'));
});

test('the ends and the verdict are those of the range that decides', () => {
  const found = simulateAssessment(testOf(demoJob), { draws: 2000, seed: 1 });
  const drawn = found.ok ? found.value : null;
  const [heads = [], row = []] = resultRows([demoJob], [drawn && { ...drawn, by: 'monteCarlo' }], 'ip');
  const low = Number(row[heads.indexOf('Share, low end (%)')]);
  expect(drawn?.verdict.ok && drawn.verdict.value.low * 100).toBeCloseTo(low, 6);
});

test('no cell begins a formula, unless it is a number, and a reader of RFC 4180 finds what was written', () => {
  const rows = resultRows([named], [], 'ip');
  const text = csvText(rows);
  expect(csvRows(text)).toEqual(rows);
  expect(text).toContain('\r\n"\'=1+2, ""Sample"" Lane"');
  for (const cell of text.split(/\r\n|,/)) expect(cell).not.toMatch(/^"?[=+@\t]|^"?-(?!\d)/);
});
