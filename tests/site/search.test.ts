/** The search, by keyboard alone; that it works without a signal and under a path of its host is seen where links are. */
import { expect, test } from 'vitest';
import { useSite } from './support.ts';

const { open } = useSite();

test('a word is typed, what speaks of it is listed, and a key leads there', async () => {
  const page = await open('search/');
  await page.keyboard.type('zone bypass');
  const first = page.locator('.search-found > li').first();
  await first.waitFor();
  await expect
    .poll(() => page.locator('.search-count').textContent())
    .toMatch(/^(One page speaks|\d+ pages speak) of “zone bypass”/);
  expect(await first.locator('mark').count()).toBeGreaterThan(0);
  await page.keyboard.press('Enter');
  await expect.poll(() => page.url()).toMatch(/\?q=zone%20bypass$/);
  await page.keyboard.press('Tab');
  const focused = page.locator('.search-found a:focus');
  await focused.waitFor();
  const leadsTo = await focused.getAttribute('href');
  await page.keyboard.press('Enter');
  await expect.poll(() => new URL(page.url()).pathname).toBe(leadsTo?.replace(/#.*/, ''));
});

test('what nothing speaks of is said to be nothing, and an empty field lists nothing', async () => {
  const page = await open('search/');
  await page.keyboard.type('qxzzyq');
  await expect.poll(() => page.locator('.search-count').textContent()).toMatch(/^Nothing found for “qxzzyq”/);
  await page.locator('.search-for').fill('');
  await expect.poll(() => page.locator('.search-count').textContent()).toBe('');
  expect(await page.locator('.search-found > li').count()).toBe(0);
});

test('a word of the trade shows its definition after a tap and with the focus, and Escape shuts it', async () => {
  const page = await open('method/measured-cooling/');
  const word = page.locator('.term-word').first();
  const says = page.locator('.term-says').first();
  expect(await says.isVisible()).toBe(false);
  await word.tap();
  await expect.poll(() => says.isVisible()).toBe(true);
  await page.keyboard.press('Escape');
  await expect.poll(() => says.isVisible()).toBe(false);
  await page.locator('h1').click();
  await word.focus();
  await page.keyboard.press('Shift+Tab');
  await page.keyboard.press('Tab');
  await expect.poll(() => says.isVisible()).toBe(true);
  await page.keyboard.press('Escape');
  await expect.poll(() => says.isVisible()).toBe(false);
});
