import { expect, test } from 'vitest';
import { demoModule, demoRows } from '../../src/build/makeDemoTable.mjs';
import { demoJob } from '../../src/job/demo.ts';
import demoText from '../../src/job/demoTable.ts?raw';

test('making the table of the demo again gives the file that is here', () => {
  expect(demoText).toBe(demoModule());
});

test('the demo says that it is invented', () => {
  expect(demoJob.invented).toBe(true);
  expect(demoJob.notes.address).toMatch(/invented/);
});

test('the table of the demo rises with wet bulb and airflow, falls with outdoor temperature, and is never all sensible and more', () => {
  const rows = demoRows().map((row: readonly string[]) => row.map(Number));
  expect(rows).toHaveLength(40);
  for (const [outdoor = 0, wetBulb = 0, block = 0, total = 0, sensible = 0] of rows) {
    expect(sensible).toBeLessThanOrEqual(total);
    for (const [otherOutdoor = 0, otherWetBulb = 0, otherBlock = 0, otherTotal = 0] of rows) {
      const better = otherOutdoor <= outdoor && otherWetBulb >= wetBulb && otherBlock >= block;
      if (better) expect(otherTotal).toBeGreaterThanOrEqual(total);
    }
  }
});
