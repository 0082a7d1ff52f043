/** The demo: invented, says so wherever one looks, and cannot be changed. */
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { goldenJobRows } from '../published/data/goldenJobRows.ts';
import {
  bar,
  choose,
  desk,
  field,
  focused,
  go,
  keptText,
  openAll,
  openMore,
  plain,
  ready,
  sheet,
  step,
  useSite,
} from './support.ts';

const { open } = useSite();
const demo = `${sheet}?demo`;
const [job] = goldenJobRows;

async function openDemo(options?: Parameters<typeof open>[1]): Promise<Page> {
  const page = await open(demo, options);
  await page.locator('.invented').waitFor();
  return page;
}

const asking = (page: Page) => page.locator('dialog[open]');
const figures = (page: Page) =>
  page
    .locator('.step input[type=text]')
    .evaluateAll((all) => all.map((one) => [one.id, (one as HTMLInputElement).value]));
const chosen = (page: Page) =>
  page
    .locator('.step input[type=radio]:checked')
    .evaluateAll((all) => all.map((one) => [(one as HTMLInputElement).name, (one as HTMLInputElement).value]));

test('it says that it is invented in the bar, on the sheet, in its first line and in the title block', async () => {
  const page = await openDemo();
  expect((await bar(page))[1]).toMatch(/^Demo, invented · /);
  expect(await page.locator('.notices').innerText()).toMatch(/^Demo, invented/);
  expect(await page.locator('.job-line').innerText()).toContain('Demo, invented');
  expect(plain(await page.locator('.title-block').innerText())).toMatch(
    /14 Sample Lane \(invented\).*State Demo, invented/,
  );
});

test('its readings are those of a job that was worked out elsewhere, and so is what it makes', async () => {
  const page = await openDemo();
  const makes = await page.locator('#answer .answer .ledger tr').first().locator('.number').innerText();
  expect(Number(makes.replace(',', ''))).toBe(Math.round(job!.total / 0.293_071_07 / 100) * 100);
});

test('typing in it asks first, and the field stays as it was', async () => {
  const page = await openDemo();
  await field(page, 'entering.dryBulb').tap();
  await page.keyboard.press('9');
  await asking(page).waitFor();
  expect(await asking(page).innerText()).toContain('Start your own job, or copy the demo?');
  expect(await field(page, 'entering.dryBulb').inputValue()).toBe('75.0');
  await page.getByRole('button', { name: 'Keep looking' }).tap();
  await expect.poll(() => asking(page).count()).toBe(0);
  expect(await field(page, 'entering.dryBulb').inputValue()).toBe('75.0');
});

test('choosing, listing, switching and noting in it ask too, and change nothing', async () => {
  const page = await openDemo();
  await openAll(page);
  // What was answered before is asked again there.
  await openMore(page);
  const before = [await figures(page), await chosen(page), await bar(page)];
  const acts: readonly (() => Promise<unknown>)[] = [
    () => step(page, 'outdoors').getByRole('radio', { name: 'No or not sure' }).tap(),
    () => step(page, 'rating').getByRole('radio', { name: 'No (gross)' }).tap(),
    () => page.locator('select').selectOption('hood'),
    () => page.getByRole('button', { name: 'My probe shows wet bulb instead' }).tap(),
    () => page.getByRole('button', { name: 'Another reading' }).first().tap(),
    () => page.getByRole('button', { name: /Totals only|Add sensible/ }).tap(),
    () => page.locator('.cell-fields input').first().fill('1'),
  ];
  for (const [index, act] of acts.entries()) {
    await act();
    await expect.poll(() => asking(page).count(), { message: `act ${index + 1}` }).toBe(1);
    await page.keyboard.press('Escape');
    await expect.poll(() => asking(page).count()).toBe(0);
  }
  expect([await figures(page), await chosen(page), await bar(page)]).toEqual(before);
  expect(await page.locator('select').inputValue()).toBe('flowGrid');
});

test('the question holds the focus until it is answered, and Escape keeps looking', async () => {
  const page = await openDemo();
  await field(page, 'entering.dryBulb').focus();
  await page.keyboard.press('9');
  await asking(page).waitFor();
  for (let turn = 0; turn < 8; turn++) {
    await page.keyboard.press(turn % 2 ? 'Tab' : 'Shift+Tab');
    const inside = await page.evaluate(
      () => document.activeElement === document.body || document.activeElement?.closest('dialog') !== null,
    );
    expect(inside).toBe(true);
  }
  await page.keyboard.press('Escape');
  await expect.poll(() => asking(page).count()).toBe(0);
  await expect.poll(() => focused(page)).toBe('field-entering.dryBulb');
});

test('[Next] and Enter lead through it without asking', async () => {
  const page = await openDemo();
  await field(page, 'entering.dryBulb').tap();
  await page.keyboard.press('Enter');
  await page.locator('.next').tap();
  await expect.poll(() => focused(page)).toBe('field-leaving.dryBulb');
  expect(await asking(page).count()).toBe(0);
});

test('a copy is a job of one’s own with the same figures, still called invented; the demo stays as it was', async () => {
  const page = await openDemo();
  await openAll(page);
  const verdict = async () => (await bar(page))[0];
  await expect.poll(verdict).toBe('Cannot tell');
  const before = [await figures(page), await chosen(page)];
  await field(page, 'entering.dryBulb').tap();
  await page.keyboard.press('9');
  await page.getByRole('button', { name: 'Copy the demo' }).tap();
  await page.locator('.job-line', { hasText: 'Saved' }).waitFor();
  await expect.poll(async () => [await figures(page), await chosen(page)]).toEqual(before);
  await expect.poll(verdict).toBe('Cannot tell');
  expect(new URL(page.url()).search).toMatch(/^\?job=[\w-]+$/);
  await expect.poll(() => page.locator('.notices').innerText()).toContain('A copy of the demo');
  await field(page, 'leaving.dryBulb').fill('58');
  await openMore(page);
  await choose(page, 'rating', 'No (gross)');
  await keptText(page, 'gross');
  await page.reload();
  await ready(page);
  await expect.poll(() => field(page, 'leaving.dryBulb').inputValue()).toBe('58');
  await go(page, demo);
  await openAll(page);
  await expect.poll(() => figures(page)).toEqual(before[0]);
  expect(await chosen(page)).toEqual(before[1]);
});

test('a job of one’s own starts empty', async () => {
  const page = await openDemo();
  await field(page, 'entering.dryBulb').tap();
  await page.keyboard.press('9');
  await page.getByRole('button', { name: 'Start my own job' }).tap();
  await expect.poll(() => bar(page)).toEqual(['Start with the return air', 'five figures give the first answer']);
  expect(await page.locator('.notices').count()).toBe(0);
});

test('looking at it stores nothing on the device', async () => {
  const page = await openDemo();
  await openAll(page);
  await field(page, 'entering.dryBulb').tap();
  await page.keyboard.press('9');
  await asking(page).waitFor();
  await page.keyboard.press('Escape');
  await expect.poll(() => asking(page).count()).toBe(0);
  await page.locator('summary', { hasText: 'The working' }).tap();
  const kept = await page.evaluate(async () => ({
    databases: (await indexedDB.databases()).map(({ name }) => name),
    local: Object.keys(localStorage),
    session: Object.keys(sessionStorage),
  }));
  expect(kept).toEqual({ databases: [], local: [], session: [] });
});

test('looking at it leaves the job that is kept here alone', async () => {
  const page = await open(sheet, desk);
  await field(page, 'entering.dryBulb').fill('77');
  await keptText(page, '77');
  await go(page, demo);
  await expect.poll(() => field(page, 'entering.dryBulb').inputValue()).toBe('75.0');
  await go(page, sheet);
  await expect.poll(() => field(page, 'entering.dryBulb').inputValue()).toBe('77');
});
