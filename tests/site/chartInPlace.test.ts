/** A picture of an article that can be moved where it stands, and leaves nothing behind. */
import { expect, test } from 'vitest';
import { desk, field, phone, plain, stored, useSite } from './support.ts';

const { open } = useSite();
const article = 'method/measured-cooling/';

/** The article with its picture in view and awake. */
async function opened(options = phone) {
  const page = await open(article, options);
  await page.locator('.chart-in-place').scrollIntoViewIfNeeded();
  await page.waitForFunction(() => document.querySelector('astro-island[ssr]') === null);
  return page;
}

test('the picture of the worked example is moved in the article, and put back', async () => {
  const page = await opened();
  const place = page.locator('.chart-in-place');
  const said = async () => plain(await place.locator('figure > p').innerText());
  await place.getByRole('button', { name: 'Move the points here' }).click();
  await expect.poll(said).toMatch(/^29,[34]00 Btu\/h in all: 24,400 Btu\/h of cooling/);
  const before = await said();
  await field(page, 'leaving.dryBulb').fill('57');
  await expect.poll(said).not.toBe(before);
  expect(await place.locator('[data-handle="leaving"]').getAttribute('aria-valuetext')).toContain('57.0');
  await place.getByRole('button', { name: 'Put the example back' }).click();
  await expect.poll(said).toBe(before);
});

test('an arrow key on a point moves it, and nothing of it is kept', async () => {
  const page = await opened(desk);
  await page.getByRole('button', { name: 'Move the points here' }).click();
  const handle = page.locator('[data-handle="entering"]');
  await handle.focus();
  await page.keyboard.press('ArrowRight');
  await expect.poll(() => handle.getAttribute('aria-valuetext')).toContain('75.1');
  await expect.poll(() => field(page, 'entering.dryBulb').inputValue()).toBe('75.1');
  expect(await stored(page)).toEqual({});
});

test('words in a field are answered beside it, and the chart keeps standing', async () => {
  const page = await opened();
  await page.getByRole('button', { name: 'Move the points here' }).click();
  await field(page, 'entering.relativeHumidity').fill('wet');
  await field(page, 'entering.relativeHumidity').blur();
  await expect.poll(() => page.locator('.chart-in-place .check').innerText()).toContain('is not a number');
  expect(await page.locator('.air-drawing').count()).toBe(1);
});
