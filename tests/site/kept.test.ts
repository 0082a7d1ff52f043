/** What is typed stays on the device: through a reload, a closed page, a page that dies, and two pages at once. */
import type { Page } from 'playwright-core';
import { expect, inject, test } from 'vitest';
import {
  bar,
  field,
  fill,
  fillJob,
  go,
  holdScripts,
  keptText,
  openAll,
  readings,
  ready,
  sheet,
  step,
  useSite,
} from './support.ts';

const { blank, open } = useSite();

const saved = (page: Page) => page.locator('.job-line', { hasText: 'Saved' }).waitFor();

async function typed(page: Page): Promise<Record<string, string>> {
  const inputs = await page
    .locator('.step input[type=text]')
    .evaluateAll((all) => all.map((one) => [one.id, (one as HTMLInputElement).value] as const));
  return Object.fromEntries(inputs.filter(([, value]) => value !== ''));
}

test('a reload in the middle of a job loses nothing', async () => {
  const page = await open(sheet);
  await openAll(page);
  await fillJob(page);
  await step(page, 'leaving').getByRole('button', { name: 'Note', exact: true }).click();
  await step(page, 'leaving').locator('textarea').fill('Behind the tee,\n2 ft after the coil.');
  await keptText(page, 'Behind the tee,\n2 ft after the coil.');
  const before = await typed(page);
  const answer = await bar(page);
  await page.reload();
  await ready(page);
  await openAll(page);
  await expect.poll(() => typed(page)).toEqual(before);
  expect(await bar(page)).toEqual(answer);
  expect(await page.locator('select').inputValue()).toBe('flowGrid');
  expect(await step(page, 'leaving').locator('textarea').inputValue()).toBe('Behind the tee,\n2 ft after the coil.');
  expect(await page.getByRole('radio', { name: 'Yes, one speed' }).isChecked()).toBe(true);
});

/** As fast as a thumb types. */
const thumb = { delay: 80 };

test.each([
  ['closed', (page: Page) => page.close()],
  ['reloaded', (page: Page) => page.reload()],
  ['left for another page', (page: Page) => page.goto(`${inject('url')}reference/`)],
])('a page that is %s right after a key loses at most that key', async (_, leave) => {
  const page = await open(sheet);
  const { page: other } = await blank({}, page);
  await field(page, 'entering.dryBulb').tap();
  await page.keyboard.type('75.25', thumb);
  await leave(page);
  await go(other, sheet);
  await expect.poll(() => field(other, 'entering.dryBulb').inputValue()).toMatch(/^75\.25?$/);
});

test('a page that dies loses at most what was typed after the last save', async () => {
  const page = await open(sheet);
  const { page: other } = await blank({}, page);
  await field(page, 'entering.dryBulb').tap();
  await page.keyboard.type('75.2');
  await keptText(page, '75.2');
  await page.keyboard.press('5');
  const died = page.waitForEvent('crash');
  await page.goto('chrome://crash').catch(() => {});
  await died;
  await go(other, sheet);
  await expect.poll(() => field(other, 'entering.dryBulb').inputValue()).toMatch(/^75\.25?$/);
});

test('two pages on the same job take over each other’s fields, and both are kept', async () => {
  const first = await open(sheet);
  await openAll(first);
  await fill(first, { 'entering.dryBulb': '75' });
  await saved(first);
  const second = await open(sheet, {}, first);
  await openAll(second);
  await expect.poll(() => field(second, 'entering.dryBulb').inputValue()).toBe('75');
  await Promise.all([
    fill(first, { 'entering.relativeHumidity': '50', 'airflow.volumeFlow': '1180' }),
    fill(second, { 'leaving.dryBulb': '56', 'leaving.relativeHumidity': '88' }),
  ]);
  const whole = Object.fromEntries(Object.entries(readings).map(([key, text]) => [`field-${key}`, text]));
  await expect.poll(() => typed(first)).toEqual(whole);
  await expect.poll(() => typed(second)).toEqual(whole);
  await expect.poll(() => bar(first)).toEqual(await bar(second));
  await first.close();
  await second.reload();
  await ready(second);
  await expect.poll(() => typed(second)).toEqual(whole);
});

test('the same field typed in two pages ends alike in both', async () => {
  const first = await open(sheet);
  await fill(first, { 'entering.dryBulb': '75' });
  await saved(first);
  const second = await open(sheet, {}, first);
  await expect.poll(() => field(second, 'entering.dryBulb').inputValue()).toBe('75');
  await fill(second, { 'entering.dryBulb': '74.5' });
  await expect.poll(() => field(first, 'entering.dryBulb').inputValue()).toBe('74.5');
  await fill(first, { 'entering.dryBulb': '74' });
  await expect.poll(() => field(second, 'entering.dryBulb').inputValue()).toBe('74');
});

test('two pages that were opened before anything was typed are one job too', async () => {
  const first = await open(sheet);
  const second = await open(sheet, {}, first);
  await openAll(second);
  await fill(first, { 'entering.dryBulb': '75' });
  await saved(first);
  await fill(second, { 'leaving.dryBulb': '56' });
  await saved(second);
  await first.reload();
  await ready(first);
  await expect.poll(() => typed(first)).toEqual({ 'field-entering.dryBulb': '75', 'field-leaving.dryBulb': '56' });
});

test('what is typed before the scripts of the page have come is not lost', async () => {
  const { page } = await blank({ viewport: { width: 390, height: 844 } });
  const release = await holdScripts(page);
  await page.goto(inject('url') + sheet, { waitUntil: 'commit' });
  await field(page, 'entering.dryBulb').click();
  await page.keyboard.type('75');
  release();
  await ready(page);
  await page.keyboard.type('.5');
  await expect.poll(() => field(page, 'entering.dryBulb').inputValue()).toBe('75.5');
  await saved(page);
});
