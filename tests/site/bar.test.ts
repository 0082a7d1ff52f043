/** What the answer bar says in each state of a job. */
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import {
  bar,
  choose,
  field,
  fill,
  fillCells,
  fillJob,
  focused,
  openAll,
  openMore,
  readings,
  sheet,
  step,
  useSite,
} from './support.ts';

const { open } = useSite();

async function openSheet(): Promise<Page> {
  const page = await open(sheet);
  await openAll(page);
  return page;
}

const says = (page: Page, big: string | RegExp, small: string | RegExp) =>
  expect
    .poll(() => bar(page))
    .toEqual([big, small].map((one) => (typeof one === 'string' ? one : expect.stringMatching(one))));

test('on an empty sheet it says where to start', async () => {
  const page = await open(sheet);
  await says(page, 'Start with the return air', 'five figures give the first answer');
});

test('with some figures it names those that are still needed, in the order of the sheet', async () => {
  const page = await openSheet();
  const { 'leaving.relativeHumidity': _, 'airflow.volumeFlow': __, ...some } = readings;
  await fill(page, some);
  await says(page, 'Still needed', 'supply humidity, airflow');
});

test('emptied again, the sheet starts as it started', async () => {
  const page = await openSheet();
  await fill(page, { 'entering.dryBulb': '75' });
  await says(page, 'Still needed', /return humidity/);
  await fill(page, { 'entering.dryBulb': '' });
  await says(page, 'Start with the return air', 'five figures give the first answer');
});

test('with the readings alone it says what is measured, and how much of that is assumed', async () => {
  const page = await openSheet();
  await fill(page, readings);
  await page.locator('select').selectOption('flowGrid');
  await says(page, '28,900 Btu/h', /^measured now · \d assumed$/);
});

test('with the table it says the share, and that step 6 is still to be asked', async () => {
  const page = await openSheet();
  await fillJob(page);
  await says(page, /^\d\d % of what it should make$/, 'no verdict yet: step 6 says how sure');
  await choose(page, 'sure', 'No');
  await says(page, 'Cannot tell', /^\d\d %: between \d\d and \d+ %$/);
});

test('a machine whose speed nobody asked about has no verdict yet', async () => {
  const page = await openSheet();
  await fill(page, { ...readings, outdoorDryBulb: '91', nominalCapacity: '3' });
  await fillCells(page);
  await choose(page, 'sure', 'No');
  await says(page, /^\d\d % of what it should make$/, 'no verdict yet: step 4 asks its speed');
});

test('a machine that may choose its own speed gets no verdict', async () => {
  const page = await openSheet();
  await fillJob(page);
  await choose(page, 'outdoors', 'No or not sure');
  await says(page, 'No verdict', 'it may be choosing to make less');
  await choose(page, 'outdoors', 'Yes, held in test mode');
  await says(page, /of what it should make$/, /no verdict yet/);
});

test('a day outside the table gets no verdict; carried on by hand, the table gives a share, marked', async () => {
  const page = await openSheet();
  await fillJob(page);
  await openMore(page);
  await fill(page, { 'rating.outdoorLow': '75', 'rating.outdoorHigh': '85' });
  await fillCells(page);
  await says(page, 'No verdict', /91(\.0)? °F is beyond your table$/);
  expect(await page.locator('#answer .answer .ledger').innerText()).not.toContain('%');
  await page.getByRole('button', { name: 'Carry the table on all the same' }).click();
  await expect.poll(() => page.locator('#answer .answer .ledger').innerText()).toMatch(/\d\d\s+%/);
  expect(await step(page, 'rating').innerText()).toContain('an estimate');
});

test('a figure that cannot be is named before anything else, and a tap leads to its field', async () => {
  const page = await openSheet();
  await fillJob(page);
  await fill(page, { 'leaving.relativeHumidity': '880' });
  await says(page, 'Check supply humidity', /^880 %: usual \d\d to 98/);
  await page.getByRole('button', { name: 'One step at a time' }).click();
  await page.locator('.answer-key').tap();
  await expect.poll(() => focused(page)).toBe('field-leaving.relativeHumidity');
  expect(await field(page, 'leaving.relativeHumidity').isVisible()).toBe(true);
});

test('a figure of the table that cannot be is named too', async () => {
  const page = await openSheet();
  await fillJob(page);
  await page.locator('.cell-fields input').first().fill('abc');
  await page.locator('.cell-fields input').first().blur();
  await says(page, /^Check /, /abc/);
});

test('readings that are numbers each and cannot be together are said to be so', async () => {
  const page = await openSheet();
  await page.getByRole('button', { name: 'My probe shows wet bulb instead' }).click();
  await fill(page, {
    'entering.dryBulb': '75',
    'entering.wetBulb': '80',
    'leaving.dryBulb': '56',
    'leaving.wetBulb': '54',
    'airflow.volumeFlow': '1180',
  });
  await says(page, 'Check the readings', 'together they describe air that cannot be');
});

test('supply air warmer than the return air gets no verdict', async () => {
  const page = await openSheet();
  await fillJob(page);
  await fill(page, { 'leaving.dryBulb': '95', 'leaving.relativeHumidity': '30' });
  await says(page, 'No verdict', 'supply warmer than return');
});

test('a share that no machine makes cannot be told, and is a reason to look again', async () => {
  const page = await openSheet();
  await fillJob(page);
  await choose(page, 'sure', 'No');
  await fill(page, { 'airflow.volumeFlow': '1700' });
  await says(page, 'Cannot tell', /^1\d\d %: higher than it can make$/);
});

test('in SI it says kilowatts', async () => {
  const page = await open(sheet, { viewport: { width: 390, height: 844 }, locale: 'de-DE' });
  await openAll(page);
  await fill(page, { ...readings, 'entering.dryBulb': '23,9', 'leaving.dryBulb': '13,3', 'airflow.volumeFlow': '557' });
  await says(page, /^8\.\d\d kW$/, /^measured now/);
});

test('a tap on it leads to the answer', async () => {
  const page = await openSheet();
  await fillJob(page);
  await step(page, 'entering').locator('.step-key').scrollIntoViewIfNeeded();
  await page.locator('.answer-key').tap();
  await expect.poll(() => focused(page)).toBe('answer');
});
