/** Step 5 in a browser: the rows, the turned grid, a photo above the cells, and the certified rating alone. */
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import {
  bar,
  cellFields,
  cells,
  choose,
  desk,
  fill,
  fillCells,
  fillJob,
  focused,
  keptText,
  openAll,
  openMore,
  phone,
  plain,
  readings,
  ready,
  sheet,
  step,
  stored,
  useSite,
} from './support.ts';

const { open } = useSite();
const rating = (page: Page) => step(page, 'rating');
const tap = (page: Page, name: string) => rating(page).getByRole('button', { name, exact: true }).tap();
const heads = (page: Page) => page.locator('.head-key').allInnerTexts();
const cellNames = (page: Page) => cellFields(page).evaluateAll((all) => all.map(({ id }) => id));

/** Everything read, the cells empty. */
async function readSheet(): Promise<Page> {
  const page = await open(sheet, phone);
  await openAll(page);
  await fill(page, { ...readings, outdoorDryBulb: '91', nominalCapacity: '3' });
  await choose(page, 'outdoors', 'Yes, one speed');
  await cellFields(page).first().waitFor();
  return page;
}

test('the rows that the table has are two taps away, and the heads follow', async () => {
  const page = await readSheet();
  expect(await heads(page)).toEqual(['85', '95', '62', '67']);
  await tap(page, 'Other rows');
  await rating(page).getByRole('radio', { name: '59 63 67 71 °F' }).check();
  expect(await heads(page)).toEqual(['85', '95', '59', '63']);
  await fillCells(page);
  // The question stays while the step stands: nothing moves under what is typed.
  expect(await rating(page).getByRole('radio', { name: '59 63 67 71 °F' }).isVisible()).toBe(true);
});

test('a tap on a head leads to the field that changes it, and a head on the reading leaves one row', async () => {
  const page = await readSheet();
  await page.getByRole('button', { name: 'Wet bulb 62: change this head' }).tap();
  expect(await focused(page)).toBe('field-rating.wetBulbLow');
  await page.keyboard.type('62.5');
  await expect.poll(() => heads(page)).toEqual(['85', '95', '62.5']);
  expect(await cellFields(page).count()).toBe(2);
  await fill(page, { 'rating.wetBulbLow': '61' });
  await expect.poll(() => heads(page)).toEqual(['85', '95', '61', '67']);
});

test('a table with rows of its own is asked for them, and the question stays open until they are there', async () => {
  const page = await readSheet();
  await tap(page, 'Other rows');
  await rating(page).getByRole('radio', { name: 'Other', exact: true }).check();
  await fill(page, { 'rating.wetBulbLow': '60', 'rating.wetBulbHigh': '66' });
  await expect.poll(() => heads(page)).toEqual(['85', '95', '60', '66']);
});

test('turned, the grid is walked in the order in which that table is read, and the figures keep their places', async () => {
  const page = await readSheet();
  await fillCells(page);
  await choose(page, 'rating', 'Yes (net)');
  await expect.poll(() => bar(page).then(([big]) => big)).toMatch(/^\d+ % of/);
  const [big] = await bar(page);
  const [a, b, c, d] = await cellNames(page);
  await openMore(page);
  await tap(page, 'Turn the grid');
  expect(await heads(page)).toEqual(['62', '67', '85', '95']);
  expect(await cellNames(page)).toEqual([a, c, b, d]);
  expect(await cellFields(page).evaluateAll((all) => all.map((one) => (one as HTMLInputElement).value))).toEqual([
    '33.6',
    '36.9',
    '31.7',
    '34.9',
  ]);
  await cellFields(page).first().focus();
  for (const next of [c, b, d]) {
    await page.keyboard.press('Tab');
    expect(await focused(page)).toBe(next);
  }
  await cellFields(page).first().focus();
  await page.keyboard.press('Enter');
  expect(await focused(page)).toBe(c);
  expect((await bar(page))[0]).toBe(big);
  await expect.poll(() => stored(page).then(({ jobs }) => JSON.stringify(jobs))).toContain('"rating.turned":"yes"');
  await page.reload();
  await ready(page);
  await expect.poll(() => heads(page)).toEqual(['62', '67', '85', '95']);
});

test('the next airflow block is one tap away, with fields of its own', async () => {
  const page = await readSheet();
  await fill(page, { 'rating.airflow': '1000' });
  await openMore(page);
  await tap(page, 'Next airflow block');
  await fill(page, { 'rating.airflowSecond': '1200' });
  expect(await cellFields(page).count()).toBe(8);
  await tap(page, 'One block only');
  expect(await cellFields(page).count()).toBe(4);
  await fill(page, { 'rating.airflow': '1190' });
  await expect.poll(() => rating(page).getByRole('button', { name: 'Next airflow block' }).count()).toBe(0);
});

/** A picture of 400 by 300, made in the page. */
async function holdPhoto(page: Page): Promise<void> {
  const data = await page.evaluate(() => {
    const canvas = Object.assign(document.createElement('canvas'), { width: 400, height: 300 });
    const context = canvas.getContext('2d')!;
    context.fillText('a table nobody keeps', 20, 20);
    return canvas.toDataURL('image/png').split(',')[1]!;
  });
  await rating(page)
    .locator('input[type=file]')
    .setInputFiles({ name: 'secret-page.png', mimeType: 'image/png', buffer: Buffer.from(data, 'base64') });
  await page.locator('.photo-window').waitFor();
}

const view = async (page: Page) =>
  ((await page.locator('.photo-window').getAttribute('viewBox')) ?? '').split(' ').map(Number);

test('a photo stands above the cells, is enlarged and moved by keys, by buttons and by hand, and put away', async () => {
  const page = await readSheet();
  await holdPhoto(page);
  const photo = (await page.locator('.photo-window').boundingBox())!;
  expect(photo.y + photo.height).toBeLessThan((await cellFields(page).first().boundingBox())!.y);
  expect((await view(page)).slice(0, 3)).toEqual([0, 0, 400]);
  await page.locator('.photo-window').focus();
  await page.keyboard.press('+');
  const [x = 0, , width = 0] = await view(page);
  expect(width).toBeCloseTo(400 / 1.5, 6);
  await page.keyboard.press('ArrowRight');
  expect((await view(page))[0]).toBeGreaterThan(x);
  await page.keyboard.press('0');
  expect((await view(page))[2]).toBe(400);
  await page.getByRole('button', { name: 'Enlarge the photo' }).tap();
  await page.getByRole('button', { name: 'Enlarge the photo' }).tap();
  const [before = 0] = await view(page);
  const box = (await page.locator('.photo-window').boundingBox())!;
  await page.mouse.move(box.x + 200, box.y + 100);
  await page.mouse.down();
  await page.mouse.move(box.x + 140, box.y + 100, { steps: 4 });
  await page.mouse.up();
  expect((await view(page))[0]).toBeGreaterThan(before);
  const { violations } = await new AxeBuilder({ page }).include('#step-rating').analyze();
  expect(violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)])).toEqual([]);
  await tap(page, 'Put it away');
  expect(await page.locator('.photo').count()).toBe(0);
});

test('a photo is stored nowhere, and is gone after a reload', async () => {
  const page = await readSheet();
  await holdPhoto(page);
  await fill(page, { 'rating.airflow': '1234' });
  await keptText(page, '1234');
  const kept = await page.evaluate(async () => {
    const names = await caches.keys();
    const cached = await Promise.all(
      names.map(async (name) => (await (await caches.open(name)).keys()).map(({ url }) => url)),
    );
    return JSON.stringify([{ ...localStorage }, { ...sessionStorage }, cached]);
  });
  for (const text of [kept, JSON.stringify(await stored(page))]) {
    expect(text).not.toMatch(/secret-page|data:image|blob:|image\/png/);
  }
  await page.reload();
  await ready(page);
  expect(await page.locator('.photo').count()).toBe(0);
});

test('a file that is no picture gets its sentence', async () => {
  const page = await readSheet();
  await rating(page)
    .locator('input[type=file]')
    .setInputFiles({ name: 'table.png', mimeType: 'image/png', buffer: Buffer.from('no picture') });
  await expect.poll(() => rating(page).innerText()).toContain('This file is no picture');
});

test('with totals alone the answer says why the cooling part of what it should make cannot be said', async () => {
  const page = await open(sheet, desk);
  await fillJob(page);
  await page.getByText('How much of it should be cooling cannot be said: the table has totals only.').waitFor();
});

test('with the certified capacity alone the share comes as an estimate wherever it stands', async () => {
  const page = await readSheet();
  await openMore(page);
  await tap(page, 'Certified rating only');
  expect(await cellFields(page).count()).toBe(0);
  await fill(page, { 'rating.certified': '35000' });
  await choose(page, 'rating', 'One');
  await expect.poll(() => bar(page).then(([big]) => big)).toMatch(/^\d+ % of what it should make$/);
  await expect.poll(() => bar(page).then(([, small]) => small)).toContain('an estimate');
  await expect
    .poll(() => page.locator('.answer-note').first().innerText().then(plain))
    .toMatch(/^An estimate: .* differ by \d+ % either way/);
  expect(plain(await page.locator('#answer .ledger').first().innerText())).toMatch(/an estimate within \d+ %/);
  await expect
    .poll(() => rating(page).innerText().then(plain))
    .toMatch(/it should make \d\d,\d00 Btu\/h\. An estimate/);
  await keptText(page, '35000');
  await page.reload();
  await ready(page);
  await expect.poll(() => bar(page).then(([, small]) => small)).toContain('an estimate');
});

test('a machine that chooses its own speed gets no estimate, and is told why', async () => {
  const page = await readSheet();
  await openMore(page);
  await tap(page, 'Certified rating only');
  await fill(page, { 'rating.certified': '35000' });
  await choose(page, 'rating', 'Variable speed');
  await expect
    .poll(() => rating(page).innerText())
    .toContain('Published curves do not cover machines that choose their own speed');
  expect((await bar(page))[0]).toMatch(/Btu\/h$/);
  await tap(page, 'I have the table');
  await expect.poll(() => cellFields(page).count()).toBe(4);
});

test('a job that was typed before opens on a phone without what is settled, and shorter than the phone', async () => {
  const page = await open(sheet);
  await openAll(page);
  await fillJob(page);
  await keptText(page, cells[3]);
  await keptText(page, 'net');
  await page.reload();
  await ready(page);
  await openAll(page);
  await expect.poll(() => rating(page).locator('.cell-fields input').count()).toBe(4);
  await expect.poll(async () => plain(await rating(page).innerText())).toContain('The table is net.');
  expect(await rating(page).getByRole('radio', { name: 'Yes (net)' }).count()).toBe(0);
  expect((await rating(page).boundingBox())!.height).toBeLessThanOrEqual(664);
  await openMore(page);
  expect(await rating(page).getByRole('radio', { name: 'Yes (net)' }).isChecked()).toBe(true);
  expect(await rating(page).getByText('Paste or open a whole table').isVisible()).toBe(true);
});
