/** The range by draws beside the one to first order: off the page, the same each time, and said where it decides. */
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { choose, desk, fill, fillJob, plain, sheet, useSite } from './support.ts';

const { open } = useSite();

async function openFigures(page: Page): Promise<void> {
  await page.getByText('How sure, in figures', { exact: true }).click();
  await page.locator('.sure-figures').waitFor();
}

/** The ends that stand in a line of the fold, in per cent. */
async function ends(page: Page, name: RegExp): Promise<number[]> {
  const line = page.locator('.sure-figures .ledger tr').filter({ hasText: name });
  await line.waitFor();
  return [...plain(await line.locator('.number').innerText()).matchAll(/[\d.]+/g)].map(Number);
}

async function typedJob(humidity: string): Promise<Page> {
  const page = await open(sheet, desk);
  await fillJob(page);
  await fill(page, { 'leaving.relativeHumidity': humidity });
  await choose(page, 'sure', 'No');
  await openFigures(page);
  return page;
}

test('both ways stand beside each other and agree to half a point, and the draws are the same each time', async () => {
  const page = await typedJob('88');
  const drawn = await ends(page, /^The same by 100,000 draws/);
  const first = await ends(page, /^The same to first order/);
  expect(drawn).toHaveLength(2);
  expect(Math.max(...drawn.map((end, index) => Math.abs(end - first[index]!)))).toBeLessThanOrEqual(0.5);
  await fill(page, { 'leaving.relativeHumidity': '87' });
  await expect.poll(() => ends(page, /^The same by 100,000 draws/), { timeout: 20_000 }).not.toEqual(drawn);
  await fill(page, { 'leaving.relativeHumidity': '88' });
  await expect.poll(() => ends(page, /^The same by 100,000 draws/), { timeout: 20_000 }).toEqual(drawn);
  expect(await page.getByText('The ends come from').count()).toBe(0);
});

// No air is damper than saturated: half of what first order counts with cannot be, and is drawn again.
test('at saturation the draws decide, and the page says so', async () => {
  const page = await typedJob('99');
  await page.getByText('The ends come from 100,000 draws').waitFor();
  const drawn = await ends(page, /^The same by 100,000 draws/);
  const range = await ends(page, /^Range, /);
  expect(range).toEqual([Math.floor(drawn[0]!), Math.ceil(drawn[1]!)]);
});
