/** A job sent as a link: the same figures for who opens it, locked until a copy is kept, and a sentence for what is no job. */
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { demoJob } from '../../src/job/demo.ts';
import { encodeJob } from '../../src/job/linkText.ts';
import { bar, desk, field, fill, fillJob, openAll, phone, readings, sheet, stored, useSite } from './support.ts';

const { open } = useSite();
const link = (page: Page) => page.locator('#send-link');
const sent = { ...demoJob, id: 'sent', invented: true as const };

test('the link of a job shows the same answer to who opens it, and who and where only when asked to', async () => {
  const page = await open(sheet, desk);
  await fillJob(page);
  await expect.poll(() => page.locator('#answer-head').innerText()).toContain('%');
  const answer = await page.locator('#answer-head').innerText();
  await page.getByText('Send this job as a link').click();
  await expect.poll(() => link(page).inputValue()).toContain('#job=1.');
  const first = await link(page).inputValue();
  const other = await open(sheet + new URL(first).hash, desk);
  await expect.poll(() => other.locator('#answer-head').innerText()).toBe(answer);
  expect(await other.locator('.job-line').innerText()).toContain('From a link');
  await fill(page, { 'leaving.dryBulb': '57' });
  await expect.poll(() => link(page).inputValue()).not.toBe(first);
});

test('a job from a link is looked at: typing asks, and a copy is kept only then', async () => {
  const page = await open(`${sheet}#job=${await encodeJob(sent, true)}`, phone);
  await page.locator('.notices', { hasText: 'From a link' }).waitFor();
  expect(await stored(page).then(({ jobs }) => jobs ?? {})).toEqual({});
  await field(page, 'entering.dryBulb').fill('80');
  const dialog = page.locator('dialog[open]');
  await dialog.waitFor();
  expect(await field(page, 'entering.dryBulb').inputValue()).toBe('75.0');
  await dialog.getByRole('button', { name: 'Keep a copy' }).click();
  await field(page, 'entering.dryBulb').fill('80');
  await expect.poll(() => stored(page).then(({ jobs }) => JSON.stringify(jobs ?? {}))).toContain('"80"');
  expect(new URL(page.url()).hash).toBe('');
  expect(Object.keys((await stored(page))['jobs'] ?? {})).not.toContain('sent');
});

test.each([
  ['cut short', '#job=1.abcdef', 'cannot be read'],
  ['no job at all', '#job=%3Cscript%3Ealert(1)%3C/script%3E', 'holds no job'],
  ['of a later version', '#job=7.abc', 'newer version'],
  ['far too long', `#job=1.${'a'.repeat(20_000)}`, 'longer than any job'],
])('a link that is %s gets a sentence, and the job of the device stands there', async (_, hash, sentence) => {
  const page = await open(sheet, phone);
  await openAll(page);
  await fill(page, { 'entering.dryBulb': readings['entering.dryBulb'], 'entering.relativeHumidity': '50' });
  await expect.poll(() => stored(page).then(({ jobs }) => JSON.stringify(jobs ?? {}))).toContain('"50"');
  const beside = await open(sheet + hash, phone, page);
  await expect.poll(() => beside.locator('.notices').innerText()).toContain(sentence);
  await expect.poll(() => field(beside, 'entering.dryBulb').inputValue()).toBe(readings['entering.dryBulb']);
  expect((await bar(beside))[0]).not.toBe('');
});
