/** The explorer of what a system should make: its surface, its lines, its steps, by hand, by keys and on paper. */
import type { BrowserContextOptions, Page } from 'playwright-core';
import { expect, inject, test } from 'vitest';
import { asText, layouts, plainPrint } from '../job/tableImport/sheets.ts';
import { pdfText } from './pdfText.ts';
import {
  desk,
  field,
  fill,
  fillJob,
  go,
  keptText,
  openAll,
  openMore,
  phone,
  plain,
  sheet,
  step,
  stored,
  useSite,
} from './support.ts';

const { blank, open } = useSite();
const explorer = 'worksheets/expected/';

async function openExplorer(path = `${explorer}?demo`, options: BrowserContextOptions = desk): Promise<Page> {
  const page = await open(path, options);
  await page.locator('.derating-room svg').waitFor();
  return page;
}

const handle = (page: Page) => page.locator('.surface-handle');
const said = async (page: Page) => plain((await handle(page).getAttribute('aria-valuetext')) ?? '');
const slider = (page: Page, id: string) => page.locator(`[id="${id}"]`);
const total = (page: Page) => page.locator('.expected-reading .ledger .number').first();
const sum = async (page: Page) =>
  plain(await page.locator('.derating-room svg').getAttribute('aria-label').then(String));

test('before any script there is a picture of an invented table, which says so', async () => {
  const { page } = await blank({ ...desk, javaScriptEnabled: false });
  await page.goto(inject('url') + explorer);
  expect(await page.locator('.expected-origin .invented').innerText()).toBe('Demo, invented.');
  expect(await page.locator('.only-ip svg.wide, .only-si svg.wide').count()).toBe(2);
  expect(await page.locator('noscript').count()).toBe(1);
});

test('without a table of its own it draws an invented one and leads to where figures are typed', async () => {
  const page = await openExplorer(explorer);
  expect(plain(await page.locator('.expected-origin').innerText())).toContain('This job has no table yet');
  expect(await page.getByRole('link', { name: 'Type the figures of its table' }).getAttribute('href')).toContain(sheet);
  expect(await page.locator('.line-contour').count()).toBe(1);
});

// By hand from the four figures that stand around 91 and 62.5 on the drawing: the slopes between them, to the tenth of a thousand that they show.
test('what one more is worth is the slope between the figures around the place', async () => {
  const page = await openExplorer();
  const worth = async (name: string) => {
    const line = page.locator('.expected-worth tr').filter({ hasText: name });
    return Number(
      plain(await line.locator('.number').innerText())
        .replace('−', '-')
        .replace(',', ''),
    );
  };
  const [outdoors, wetBulb] = [(91 - 85) / 10, (62.5 - 62) / 5];
  const [lowCool, lowHot, highCool, highHot] = [32_600, 31_000, 34_700, 32_900];
  const byOutdoors = ((lowHot - lowCool) * (1 - wetBulb) + (highHot - highCool) * wetBulb) / 10;
  const byWetBulb = ((highCool - lowCool) * (1 - outdoors) + (highHot - lowHot) * outdoors) / 5;
  expect(Math.abs((await worth('1 °F warmer outdoors')) - byOutdoors)).toBeLessThanOrEqual(15);
  expect(Math.abs((await worth('1 °F more wet bulb')) - byWetBulb)).toBeLessThanOrEqual(25);
});

test('arrow keys move the place, Escape brings the job’s own back, and the job stays as it was', async () => {
  const page = await openExplorer();
  const before = await said(page);
  expect(before).toMatch(/^91\.0 °F outdoors, 62\.5 °F entering wet bulb: 31,900 Btu\/h$/);
  await handle(page).focus();
  await page.keyboard.press('ArrowRight');
  expect(await said(page)).toContain('91.5 °F outdoors');
  await page.keyboard.press('Shift+ArrowUp');
  expect(await said(page)).toContain('67.5 °F entering wet bulb');
  await page.keyboard.press('End');
  expect(await said(page)).toContain('115.0 °F outdoors');
  expect(await page.locator('#expected-place').innerText()).toContain('Tried out');
  await page.keyboard.press('Escape');
  expect(await said(page)).toBe(before);
  expect(await stored(page)).toEqual({});
});

test('a tap on the surface and a drag of the point read it there', async () => {
  const page = await openExplorer();
  const box = (await page.locator('.expected-drawing').boundingBox())!;
  await page.mouse.click(box.x + box.width * 0.7, box.y + box.height * 0.3);
  const there = await said(page);
  expect(there).not.toContain('91.0');
  const grip = (await handle(page).boundingBox())!;
  await page.mouse.move(grip.x + grip.width / 2, grip.y + grip.height / 2);
  await page.mouse.down();
  await page.mouse.move(grip.x - 80, grip.y + 60, { steps: 4 });
  await page.mouse.up();
  expect(await said(page)).not.toBe(there);
  await page.getByRole('button', { name: 'Back to the job' }).click();
  expect(await said(page)).toContain('91.0 °F outdoors');
});

test('slider and field are the same value; nonsense is answered and changes nothing', async () => {
  const page = await openExplorer();
  const field = slider(page, 'try-outdoorDryBulb');
  await field.fill('105');
  expect(await said(page)).toContain('105.0 °F outdoors');
  const slide = page.getByRole('slider', { name: 'Outdoors, slide' }).first();
  expect(await slide.inputValue()).toBe('105');
  await slide.press('ArrowLeft');
  expect(await said(page)).toContain('104.5 °F outdoors');
  await field.fill('warm');
  expect(plain(await page.locator('#try-outdoorDryBulb-check').innerText())).toMatch(/^Check: Type a number from/);
  expect(await field.inputValue()).toBe('warm');
  expect(await said(page)).toContain('104.5 °F outdoors');
  await field.blur();
  expect(await field.inputValue()).toBe('104.5');
});

test('a moved place touches nothing of the bands under it', async () => {
  const page = await openExplorer();
  await page.evaluate(() => {
    const still = document.querySelector('.line-contour')!.parentElement!;
    const seen = { changes: 0 };
    Object.assign(globalThis, { seen });
    new MutationObserver((list) => {
      seen.changes += list.length;
    }).observe(still, { subtree: true, childList: true, attributes: true, characterData: true });
  });
  const changes = () => page.evaluate(() => (globalThis as unknown as { seen: { changes: number } }).seen.changes);
  await handle(page).focus();
  for (let i = 0; i < 5; i++) await page.keyboard.press('ArrowRight');
  await page.waitForTimeout(300);
  expect(await changes()).toBe(0);
  await slider(page, 'try-dryAirFlow').fill('1050');
  await expect.poll(changes).toBeGreaterThan(0);
});

test('what the table has no figures for cannot be chosen, and says why', async () => {
  const page = await openExplorer();
  const key = (name: string) => page.getByRole('button', { name, exact: true });
  expect(await key('Power').isDisabled()).toBe(true);
  expect(await page.locator('.expected-quantity .hint').innerText()).toBe('This table has no power.');
  await key('Sensible').click();
  expect(await key('Sensible').getAttribute('aria-pressed')).toBe('true');
  await expect.poll(() => said(page)).toContain('23,');
  expect(plain(await page.locator('.expected-title').innerText())).toContain('Sensible capacity');
});

test('on a phone it opens as two lines, each over its slider; the filled surface is a tap away', async () => {
  const page = await openExplorer(`${explorer}?demo`, phone);
  expect(await page.locator('.expected-slice').count()).toBe(2);
  expect(await page.locator('.expected-drawing').count()).toBe(0);
  await slider(page, 'try-outdoorDryBulb').fill('100');
  expect(plain(await page.locator('#expected-place').innerText())).toContain('100.0 °F outdoors');
  await page.getByRole('button', { name: 'Show the filled surface' }).tap();
  await page.locator('.expected-drawing').waitFor();
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
});

test('a step can be left out, tried with something else, traced and put back; the job stays as it was', async () => {
  const page = await openExplorer();
  const own = await sum(page);
  expect(own).toMatch(/^From 36,000 Btu\/h to 31,3\d0 Btu\/h, step by step$/);
  const fold = page.locator('[data-step="blowerHere"]');
  await fold.locator('> summary').click();
  await fold.getByRole('checkbox', { name: 'This step counts' }).uncheck();
  await expect.poll(() => sum(page)).not.toBe(own);
  expect(plain(await page.locator('.derating-tried').innerText())).toMatch(
    /^Tried out: 32,8\d0 Btu\/h instead of 31,3/,
  );
  await fold.getByRole('checkbox').check();
  await slider(page, 'step-blowerHere').fill('800');
  expect(await sum(page)).toMatch(/to 30,1\d0 Btu\/h/);
  await fold.locator('summary', { hasText: 'The working' }).click();
  await fold.locator('.working-list').waitFor();
  expect(plain(await fold.locator('.working-list').innerText())).toContain('800 W');
  await page.getByRole('button', { name: 'Put everything back' }).click();
  expect(await sum(page)).toBe(own);
  expect(await stored(page)).toEqual({});
});

test('the place that is tried on the surface is the place of its step, and the other way round', async () => {
  const page = await openExplorer();
  await slider(page, 'try-outdoorDryBulb').fill('105');
  const fold = page.locator('[data-step="temperatures"]');
  expect(plain(await fold.locator('> summary').innerText())).toContain('105 °F outdoors');
  await fold.locator('> summary').click();
  await slider(page, 'step-outdoorDryBulb').fill('80');
  expect(await said(page)).toContain('80.0 °F outdoors');
});

test('“Why not 36,000?” on the sheet leads to the steps, of the job that was typed there', async () => {
  const page = await open(sheet);
  await openAll(page);
  await fillJob(page);
  const fold = page.locator('summary', { hasText: 'Why not' });
  await fold.click();
  await page.getByRole('link', { name: 'See it drawn' }).click();
  await page.locator('#why-not').waitFor();
  await expect
    .poll(() => page.evaluate(() => document.querySelector('#why-not')!.getBoundingClientRect().top))
    .toBeLessThan(400);
  expect(plain(await page.locator('.expected-origin').innerText())).toContain('The 4 figures of this job’s table.');
  expect(await page.locator('#why-not-head').innerText()).toContain('36,000');
  // Four figures are a surface of one cell.
  await page.getByRole('button', { name: 'Show the filled surface' }).click();
  await page.locator('.expected-drawing .line-cell').waitFor();
});

test('a whole table that was pasted is drawn whole, with what was measured and its range beside it', async () => {
  const page = await open(sheet, desk);
  await fillJob(page);
  await page.locator('.table-fold > summary').click();
  await page.locator('#table-paste').fill(asText(layouts.tidy.rows(plainPrint), plainPrint));
  await page.getByRole('button', { name: 'Use this table' }).click();
  await page.locator('.table-in-use').waitFor();
  await expect.poll(async () => JSON.stringify((await stored(page))['jobs'])).toContain('ratingSheet');
  await go(page, explorer);
  await expect
    .poll(async () => plain(await page.locator('.expected-origin').innerText()))
    .toContain('The 240 figures of this job’s table.');
  await expect.poll(() => said(page)).toMatch(/^91\.0 °F outdoors, 62\.5 °F entering wet bulb: 34,\d00 Btu\/h$/);
  const scale = page.locator('.expected-scale svg');
  await expect
    .poll(async () => plain((await scale.getAttribute('aria-label')) ?? ''))
    .toMatch(/measured 28,\d00 Btu\/h, between 2\d,\d00 and 3\d,\d00 Btu\/h/);
  expect(await page.getByRole('button', { name: 'Power', exact: true }).isEnabled()).toBe(true);
});

test('a certified capacity alone is drawn as an estimate, with its band', async () => {
  const page = await open(sheet, desk);
  await fillJob(page);
  await openMore(page);
  await step(page, 'rating').getByRole('button', { name: 'Certified rating only' }).click();
  await fill(page, { 'rating.certified': '34000' });
  await expect.poll(async () => plain(await step(page, 'rating').innerText())).toContain('An estimate: open sources');
  await keptText(page, '34000');
  await go(page, explorer);
  await expect
    .poll(async () => plain(await page.locator('.expected-origin').innerText()))
    .toContain('published curves through the certified capacity. An estimate.');
  expect(plain(await page.locator('.expected-reading').innerText())).toMatch(
    /Here open sources differ by \d+ % either way/,
  );
  expect(await page.locator('.expected-slice path[fill="url(#hatch-expected)"]').count()).toBe(2);
});

test('what the rooms get of it is asked for in a fold: figures are kept with the job, nonsense gets a sentence', async () => {
  const page = await open(sheet, desk);
  await fillJob(page);
  await keptText(page, 'flowGrid');
  await go(page, explorer);
  await page.getByText('What the rooms get of it').click();
  await page.getByLabel('Where do they run?').selectOption('ventedLightShingle');
  await page.getByRole('radio', { name: 'R-6' }).check({ force: true });
  await fill(page, { 'ducts.supplyArea': '180', 'ducts.supplyLeakage': '4' });
  const says = page.locator('.rooms-says');
  await expect
    .poll(async () => plain(await says.innerText()))
    .toMatch(/^Of 28,\d00 Btu\/h made at the coil the rooms get 2\d,\d00 Btu\/h: \d\d %\.$/);
  await field(page, 'ducts.supplyLeakage').fill('many');
  await field(page, 'ducts.supplyLeakage').blur();
  await expect.poll(() => says.count()).toBe(0);
  await expect.poll(() => page.locator('[id="field-ducts.supplyLeakage-check"]').count()).toBe(1);
  expect(await field(page, 'ducts.supplyLeakage').inputValue()).toBe('many');
  expect(JSON.stringify(await stored(page))).toContain('"ducts.where":"ventedLightShingle"');
});

test('the same in the other units has round scales of its own', async () => {
  const page = await openExplorer();
  await page.locator('.frame-settings > summary').click();
  await page.getByRole('radio', { name: '°C, kW' }).check({ force: true });
  await expect.poll(() => said(page)).toMatch(/^32\.8 °C outdoors, .* kW$/);
  const texts = await page.locator('.expected-drawing text').allTextContents();
  for (const text of ['25', '30', '40']) expect(texts).toContain(text);
});

test('on paper stand the drawings, the figures and the table, and nothing to press', async () => {
  const page = await openExplorer();
  const paper = plain(pdfText(await page.pdf({ format: 'Letter' })));
  for (const text of [
    'What it should make',
    'Total capacity',
    '31,900',
    'Why not 36,000 Btu/h?',
    'Demo, invented',
    'not in the table',
  ])
    expect(paper).toContain(text);
  for (const text of ['Back to the job', 'Put everything back', 'Try it out']) expect(paper).not.toContain(text);
  expect(await total(page).innerText()).toBe('31,900');
});
