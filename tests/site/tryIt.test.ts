/** A picture of an article that is moved by its sliders, and leaves nothing behind. */
import { expect, inject, test } from 'vitest';
import { holdScripts, phone, plain, stored, useSite } from './support.ts';

const { blank, open } = useSite();

test('keys on a slider move the picture, its sentence and its table; a box to tick decides the verdict', async () => {
  const page = await open('method/how-sure/', phone);
  const picture = page.locator('.try-it');
  await picture.scrollIntoViewIfNeeded();
  await page.waitForFunction(() => document.querySelector('astro-island[ssr]') === null);
  const said = async () => plain(await picture.getByRole('status').innerText());
  await expect.poll(said).toBe('Between 69 % and 93 %, with the line inside: these readings cannot tell.');
  const airflow = picture.getByRole('slider', { name: 'The airflow is good to' });
  await airflow.focus();
  await page.keyboard.press('End');
  await expect.poll(said).toMatch(/^Between 65 % and 97 %/);
  expect(plain((await airflow.getAttribute('aria-valuetext')) ?? '')).toBe('±20 %');
  await page.keyboard.press('Home');
  await picture.getByRole('checkbox').check();
  await expect.poll(said).toMatch(/short of the line/);
  expect(await picture.locator('.ledger td.number').allInnerTexts()).toEqual(['74', '81', '88']);
  expect(await stored(page)).toEqual({});
});

test('what was moved and ticked before the scripts of the page have come stays where it is', async () => {
  const { page } = await blank(phone);
  const release = await holdScripts(page);
  await page.goto(`${inject('url')}method/how-sure/`, { waitUntil: 'commit' });
  const picture = page.locator('.try-it');
  await picture.getByRole('slider', { name: 'The airflow is good to' }).focus();
  await page.keyboard.press('End');
  await picture.getByRole('checkbox').check();
  release();
  // Ticked alone it is 74 to 88, moved alone 65 to 97.
  const said = async () => plain(await picture.getByRole('status').innerText());
  await expect.poll(said).toMatch(/^Between 69 % and 94 %/);
  expect(await picture.getByRole('slider', { name: 'The airflow is good to' }).getAttribute('aria-valuetext')).toMatch(
    /20/,
  );
  expect(await picture.getByRole('checkbox').isChecked()).toBe(true);
});

test('on a phone the contents of an article are a line that opens and leads there', async () => {
  const page = await open('method/how-sure/', phone);
  const contents = page.getByRole('navigation', { name: 'On this page' });
  await contents.locator('summary').click();
  await contents.getByRole('link', { name: 'What helps' }).click();
  await expect.poll(() => page.evaluate(() => location.hash)).toBe('#what-helps');
  await expect
    .poll(() => page.locator('#what-helps').evaluate((one) => Math.abs(one.getBoundingClientRect().top) < 60))
    .toBe(true);
});
