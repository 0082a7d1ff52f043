/** Two jobs of the device side by side. */
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { demoJob } from '../../src/job/demo.ts';
import { writeJobFile } from '../../src/job/jobFile.ts';
import type { Job } from '../../src/job/types.ts';
import { faults } from './axe.ts';
import { go, phone, plain, useSite } from './support.ts';

const { open } = useSite();

/** The demo with another supply temperature, under a name of its own. */
const read = (id: string, supply: string): Job => ({
  ...demoJob,
  id,
  entered: { ...demoJob.entered, 'leaving.dryBulb': { ...demoJob.entered['leaving.dryBulb']!, text: supply } },
  notes: { ...demoJob.notes, address: id },
});

async function withJobs(...jobs: readonly Job[]): Promise<Page> {
  const page = await open('jobs/', phone);
  const buffer = Buffer.from(writeJobFile(jobs));
  await page.locator('input[type=file]').setInputFiles({ name: 'jobs.json', mimeType: 'application/json', buffer });
  await page.getByRole('button', { name: 'Take them in' }).tap();
  await expect.poll(() => page.locator('.shelf li h2').count()).toBe(jobs.length);
  return page;
}

const said = (page: Page) => page.locator('.answer-plain').innerText().then(plain);

test('two jobs say whether they differ, the surer the more they share, and the address keeps which they are', async () => {
  const page = await withJobs(read('spring', '57'), read('summer', '56'));
  await page.getByRole('link', { name: 'Before and after' }).tap();
  await page.getByLabel('Before').selectOption('spring');
  await page.getByLabel('After').selectOption('summer');
  await page.getByText('These readings cannot tell the two apart.').waitFor();
  const apart = await said(page);
  expect(apart).toMatch(
    /^The share went from \d+ % to \d+ %: \d+ points more, between \d+ points less and \d+ points more\./,
  );
  for (const tick of [
    'The same two probes',
    'The same instrument',
    'The supply probe at the same spot',
    'The same system',
  ])
    await page.getByLabel(tick).check();
  await page.getByText('by more than these readings are unsure.').waitFor();
  expect(await said(page)).not.toBe(apart);
  expect(await faults(page, 'two jobs')).toEqual([]);
  await page.reload();
  await expect.poll(() => page.getByLabel('After').inputValue()).toBe('summer');
});

test('with fewer than two jobs the page says what is needed', async () => {
  const page = await open('jobs/compare/', phone);
  await page.getByText('Two jobs are needed').waitFor();
  await go(page, 'jobs/compare/?before=nowhere&after=%3Cscript%3E');
  await page.getByText('Two jobs are needed').waitFor();
});

test('the results of all jobs come as a table', async () => {
  const page = await withJobs(read('spring', '59'));
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save results for a spreadsheet' }).tap(),
  ]);
  expect(download.suggestedFilename()).toMatch(/^results-\d{4}-\d\d-\d\d\.csv$/);
});
