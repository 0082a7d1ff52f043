/** Where to look when it is short: in its order, priced, with what these figures say of a place. */
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { desk, fill, fillJob, openAll, phone, plain, sheet, useSite } from './support.ts';

const { open } = useSite();
const fold = (page: Page) => page.getByText('When it is short', { exact: true });
const place = async (page: Page, name: string) =>
  plain(await page.locator('.where-to-look li').filter({ hasText: name }).innerText());

test('it goes from the measurement to the circuit, which is for licensed people, and prices each leak at these states', async () => {
  const page = await open(`${sheet}?demo`, desk);
  await fold(page).click();
  await page.locator('.where-to-look').waitFor();
  const heads = await page.locator('.where-to-look h3').allInnerTexts();
  expect(heads.map((head) => head.split(' ')[0])).toEqual(['First', 'Then', 'Then', 'Last']);
  expect(await page.locator('.where-to-look section:last-child .caution').count()).toBe(1);
  // Counted as if all the air had been cooled: 1 over 0.9.
  expect(await place(page, 'let back into the return')).toContain('10 % of the air reads 11 % high.');
  // NIST TN 1848: 10 % of the charge is about 4 % of capacity.
  expect(await place(page, 'Too little refrigerant')).toContain(
    '10 % of it missing: 3 to 5 % less cooling. Too little for this test to see.',
  );
  const { violations } = await new AxeBuilder({ page }).include('.where-to-look').setLegacyMode().analyze();
  expect(violations.map(({ id }) => id)).toEqual([]);
});

test('figures that lie wholly beyond the usual point to a place, and say why', async () => {
  const page = await open(sheet, phone);
  await openAll(page);
  await fillJob(page);
  await fill(page, { 'leaving.relativeHumidity': '68' });
  await fold(page).tap();
  await expect
    .poll(() => place(page, 'let back into the return'))
    .toMatch(/These figures point here: .*the supply air is dry/);
});
