/** One job a tab, named by its address; steps back; the list of the visit; the lock; coming back after an hour. */
import type { Page } from 'playwright-core';
import { expect, inject, test } from 'vitest';
import { field, fill, go, keptText, openAll, phone, plain, readings, ready, sheet, step, useSite } from './support.ts';

const { open } = useSite();

const value = (page: Page, key: string) => field(page, key).inputValue();
const undoKey = (page: Page) => page.locator('.sheet-tools').getByRole('button', { name: 'Undo' });
const was = (page: Page, key: string) => page.locator(`.field:has([id="field-${key}"]) .was`);

test('a changed field says what it was and puts it back; steps go back one by one, after a reload too', async () => {
  const page = await open(sheet);
  await openAll(page);
  await fill(page, { 'entering.dryBulb': '75', 'entering.relativeHumidity': '50' });
  await fill(page, { 'entering.dryBulb': '76', 'leaving.dryBulb': '56' });
  await expect.poll(() => was(page, 'entering.dryBulb').innerText().then(plain)).toBe('was 75 °F · put back');
  expect(await was(page, 'leaving.dryBulb').count()).toBe(0);
  await was(page, 'entering.dryBulb').getByRole('button').tap();
  expect(await value(page, 'entering.dryBulb')).toBe('75');
  await expect.poll(() => was(page, 'entering.dryBulb').innerText().then(plain)).toBe('was 76 °F · put back');
  await undoKey(page).tap();
  await expect.poll(() => value(page, 'entering.dryBulb')).toBe('76');
  await page.getByText('Taken back: return temperature is 76 °F again.').waitFor();
  await page.reload();
  await ready(page);
  await openAll(page);
  await expect.poll(() => undoKey(page).isEnabled()).toBe(true);
  await undoKey(page).focus();
  await page.keyboard.press('Control+z');
  await expect.poll(() => value(page, 'leaving.dryBulb')).toBe('');
  await undoKey(page).tap();
  await expect.poll(() => value(page, 'entering.dryBulb')).toBe('75');
  await undoKey(page).tap();
  await undoKey(page).tap();
  await expect.poll(() => value(page, 'entering.dryBulb')).toBe('');
  await expect.poll(() => undoKey(page).isDisabled()).toBe(true);
});

test('each tab keeps to its own job, from sheet to sheet and through a reload; an address of nowhere says so', async () => {
  const first = await open(sheet);
  await fill(first, { 'entering.dryBulb': '71.5' });
  await keptText(first, '71.5');
  const second = await open(`${sheet}?new`, {}, first);
  await fill(second, { 'entering.dryBulb': '72.5' });
  await keptText(second, '72.5');
  const name = (page: Page) => new URL(page.url()).searchParams.get('job');
  expect(name(first)).toMatch(/^[\w-]{8,}$/);
  expect(name(second)).not.toBe(name(first));
  await fill(first, { 'entering.relativeHumidity': '41' });
  await keptText(first, '41');
  await go(first, 'worksheets/line-set/');
  await expect.poll(() => name(first)).not.toBeNull();
  await go(first, sheet);
  await expect.poll(() => value(first, 'entering.dryBulb')).toBe('71.5');
  await first.goto(`${inject('url')}${sheet}?job=${name(second)}`);
  await expect.poll(() => value(first, 'entering.dryBulb')).toBe('72.5');
  await first.goto(`${inject('url')}${sheet}?job=nowhere`);
  await first.getByText('The address names a job that this device does not keep').waitFor();
  await expect.poll(() => value(first, 'entering.dryBulb')).toBe('72.5');
});

test('coming back opens the same step, says after an hour how old the readings are, and leads to them', async () => {
  const page = await open(sheet, { ...phone, timezoneId: 'America/Chicago' });
  await page.clock.setFixedTime('2026-08-12T14:00:00-05:00');
  await openAll(page);
  await fill(page, readings);
  await keptText(page, readings['airflow.volumeFlow']);
  await page.getByRole('button', { name: 'One step at a time' }).tap();
  await step(page, 'outdoors').locator('.step-key').tap();
  await page.getByText('Visit list').tap();
  await page.getByLabel('Running at full speed').tap();
  await page.getByText('Steady, not before 14:15').waitFor();
  await keptText(page, '2026-08-12T19:00:00.000Z');
  await page.clock.setFixedTime('2026-08-12T15:10:00-05:00');
  await page.reload();
  await ready(page);
  await expect.poll(() => step(page, 'outdoors').getAttribute('data-open')).toBe('');
  await page.getByText('Supply air read 1 h ago. Read again?').waitFor();
  await page.getByText('Visit list').tap();
  await page.getByText('Steady, not before 14:15').waitFor();
  await page.getByRole('button', { name: 'Read again' }).tap();
  await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe('field-leaving.dryBulb');
  expect(await page.getByText('read 1 h ago').count()).toBe(0);
});

test('locked figures are stamped with a code; what is changed after is listed, and what is put back leaves the list', async () => {
  const page = await open(`${sheet}?demo`);
  await field(page, 'entering.dryBulb').fill('75.5');
  await page.locator('dialog[open]').getByRole('button', { name: 'Copy the demo' }).tap();
  await page.getByText('Lock the figures').tap();
  const lock = page.locator('.lock');
  await lock.getByRole('button', { name: 'Lock the figures' }).tap();
  await lock.getByText('Nothing was changed since.').waitFor();
  const code = (await lock.locator('.sheet-code').innerText()).replace('Code ', '');
  expect(code).toMatch(/^[A-Z\d]{6}$/);
  await expect.poll(() => page.locator('.title-block').innerText()).toContain(code);
  await field(page, 'entering.dryBulb').fill('76.5');
  await expect
    .poll(async () => (await lock.locator('tbody tr').allInnerTexts()).map(plain))
    .toEqual([expect.stringContaining('return temperature 75.0 °F 76.5 °F')]);
  await keptText(page, '76.5 °F');
  await page.reload();
  await ready(page);
  await page.getByText('Lock the figures').tap();
  await expect.poll(() => lock.locator('tbody tr').count()).toBe(1);
  await was(page, 'entering.dryBulb').getByRole('button').tap();
  await lock.getByText('Nothing was changed since.').waitFor();
});
