/** The jobs of the device: open, copy, delete and put back, out to a file and in again. */
import { mkdtemp, readFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { fill, go, keptText, openAll, phone, plain, readings, sheet, stored, useSite } from './support.ts';

const { open } = useSite();
const names = async (page: Page) => (await page.locator('.shelf li h2').allInnerTexts()).map(plain);
const kept = async (page: Page) => Object.keys((await stored(page))['jobs'] ?? {}).length;

/** A job with an address, and the page of jobs beside it. */
async function withJob(): Promise<Page> {
  const page = await open(`${sheet}?new`, phone);
  await openAll(page);
  await fill(page, readings);
  await page.getByText('The job and the system').tap();
  await page.getByLabel('Address').fill('7 Elm Row');
  await keptText(page, '7 Elm Row').catch(() => {});
  await expect.poll(() => stored(page).then(({ jobs }) => JSON.stringify(jobs ?? {}))).toContain('7 Elm Row');
  await go(page, 'jobs/');
  await expect.poll(() => names(page)).toEqual(['7 Elm Row']);
  return page;
}

test('nothing kept is said, and leads to a new job', async () => {
  const page = await open('jobs/', phone);
  await page.getByText('No job is kept here yet.').waitFor();
  await page.getByRole('link', { name: 'Start a new job' }).tap();
  await page.waitForURL(/worksheets\/capacity/);
});

test('a job is copied, deleted and put back, and opening another one shows it on the sheet', async () => {
  const page = await withJob();
  await page.getByRole('button', { name: 'Copy 7 Elm Row', exact: true }).tap();
  await expect.poll(() => names(page)).toHaveLength(2);
  await page.getByRole('button', { name: 'Delete 7 Elm Row', exact: true }).tap();
  await expect.poll(() => names(page)).toEqual(['7 Elm Row (copy)']);
  await page.getByRole('button', { name: 'Put it back' }).tap();
  await expect.poll(async () => (await names(page)).sort()).toEqual(['7 Elm Row', '7 Elm Row (copy)']);
  await page.getByRole('link', { name: 'Open 7 Elm Row (copy)' }).tap();
  await page.locator('.job-line', { hasText: '7 Elm Row (copy)' }).waitFor();
});

test('a job is given another name in the list, by keyboard alone, and keeps its figures', async () => {
  const page = await withJob();
  await page.getByRole('button', { name: 'Rename 7 Elm Row' }).press('Enter');
  const field = page.getByLabel('Address (the name of the job)');
  await field.fill('  9 Oak Lane ');
  await field.press('Enter');
  await expect.poll(() => names(page)).toEqual(['9 Oak Lane']);
  await page.getByRole('button', { name: 'Rename 9 Oak Lane' }).press('Enter');
  await field.fill('no');
  await field.press('Escape');
  await expect.poll(() => field.count()).toBe(0);
  expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Rename');
  expect(await names(page)).toEqual(['9 Oak Lane']);
  const [job] = Object.values((await stored(page))['jobs'] ?? {});
  expect(JSON.stringify(job)).toContain(`"text":"${readings['leaving.dryBulb']}"`);
  await page.getByRole('link', { name: 'Open 9 Oak Lane' }).tap();
  await page.locator('.job-line', { hasText: '9 Oak Lane' }).waitFor();
});

test('all jobs go into a file, and come back from it after they were deleted', async () => {
  const page = await withJob();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save all as a file' }).tap(),
  ]);
  const saved = join(await mkdtemp(join(tmpdir(), 'jobs-')), 'jobs.json');
  await download.saveAs(saved);
  const text = await readFile(saved, 'utf8');
  await page.getByRole('button', { name: 'Delete 7 Elm Row', exact: true }).tap();
  await page.getByText('No job is kept here yet.').waitFor();
  const bring = (content: string) =>
    page
      .locator('input[type=file]')
      .setInputFiles({ name: 'jobs.json', mimeType: 'application/json', buffer: Buffer.from(content) });
  await bring(text.slice(0, 300));
  await page.getByText('That is no file of jobs from this site.').waitFor();
  expect(await kept(page)).toBe(0);
  await bring(text);
  await page.getByText('The file holds: 1 new.').waitFor();
  expect(await kept(page)).toBe(0);
  await page.getByRole('button', { name: 'Take them in' }).tap();
  await expect.poll(() => names(page)).toEqual(['7 Elm Row']);
  await bring(text);
  await page.getByText('1 here already, the same').waitFor();
});
