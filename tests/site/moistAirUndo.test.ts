/** Steps back on the air chart, and two pages that change the same chart at once. */
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { chart, chartOpener, dragBy, handle, said, textField, typeReturn } from './moistAir.ts';
import { keptText, stored, useSite } from './support.ts';

const { open } = useSite();
const openChart = chartOpener(open);

const undoKey = (page: Page) => page.getByRole('button', { name: 'Undo' });

test('what was typed and moved is taken back step by step, by its key and by Ctrl+Z', async () => {
  const page = await openChart(chart);
  expect(await undoKey(page).isDisabled()).toBe(true);
  await typeReturn(page);
  await dragBy(page, 'entering', 60, -40);
  const dragged = await said(page, 'entering');
  expect(dragged).not.toBe('75.0 °F, 50.0 %');
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('ArrowRight');
  expect(await said(page, 'entering')).not.toBe(dragged);
  await page.keyboard.press('Control+z');
  await expect.poll(() => said(page, 'entering')).toBe(dragged);
  await undoKey(page).click();
  await expect.poll(() => said(page, 'entering')).toBe('75.0 °F, 50.0 %');
  expect(await textField(page, 'field-entering.dryBulb').inputValue()).toBe('75');
  await undoKey(page).click();
  await expect.poll(() => handle(page, 'entering').count()).toBe(0);
  expect(await textField(page, 'field-entering.dryBulb').inputValue()).toBe('75');
  await undoKey(page).click();
  await expect.poll(() => textField(page, 'field-entering.dryBulb').inputValue()).toBe('');
  await expect.poll(() => undoKey(page).isDisabled()).toBe(true);
});

test('a state that was taken away comes back whole, with the process that began there', async () => {
  const page = await openChart(chart);
  await typeReturn(page);
  await page.getByRole('button', { name: 'Add a state' }).click();
  await textField(page, 'state-a-name').fill('Roof');
  await textField(page, 'state-a-dryBulb').fill('95');
  await textField(page, 'state-a-humidity').fill('40');
  await page.getByRole('button', { name: 'Add a process' }).click();
  await textField(page, 'process-p1-from').selectOption('a');
  await page.locator('#point-a .step-key').click();
  await page.getByRole('button', { name: 'Remove Roof' }).click();
  expect(await handle(page, 'a').count()).toBe(0);
  await undoKey(page).click();
  await expect.poll(() => said(page, 'a')).toBe('95.0 °F, 40.0 %');
  await page.locator('#process-p1 .step-key').click();
  await expect.poll(() => textField(page, 'process-p1-from').inputValue()).toBe('a');
});

test('Ctrl+Z in a field is the field’s own', async () => {
  const page = await openChart(chart);
  await typeReturn(page);
  await textField(page, 'field-entering.relativeHumidity').focus();
  await page.keyboard.type('5');
  await page.keyboard.press('Control+z');
  expect(await said(page, 'entering')).toContain('75.0 °F');
});

test('two pages with the same chart keep each other’s states, row by row', async () => {
  const first = await openChart(chart);
  await typeReturn(first);
  await first.getByRole('button', { name: 'Add a state' }).click();
  await textField(first, 'state-a-name').fill('Roof');
  await first.getByRole('button', { name: 'Add a state' }).click();
  await textField(first, 'state-b-name').fill('Room');
  await keptText(first, 'Room');
  const second = await open(chart, {}, first);
  await second.locator('#point-b .step-key').click();
  await textField(second, 'state-b-dryBulb').waitFor();
  await first.locator('#point-a .step-key').click();
  // What each page does is done before it can have heard of the other's.
  const type = async (page: Page, key: string, dryBulb: string, humidity: string) => {
    await textField(page, `state-${key}-dryBulb`).fill(dryBulb);
    await textField(page, `state-${key}-humidity`).fill(humidity);
  };
  await Promise.all([type(first, 'a', '96', '41'), type(second, 'b', '74', '52')]);
  for (const page of [first, second]) {
    await expect.poll(() => said(page, 'a')).toBe('96.0 °F, 41.0 %');
    await expect.poll(() => said(page, 'b')).toBe('74.0 °F, 52.0 %');
  }
  await expect.poll(async () => JSON.stringify(await stored(first))).toMatch(/"Roof","96","41".*"Room","74","52"/);
});
