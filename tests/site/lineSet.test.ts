/** The sheet on long lines: what a person types there, what it answers, and what it refuses to answer. */
import type { Page } from 'playwright-core';
import { expect, inject, test } from 'vitest';
import { faults } from './axe.ts';
import { pdfText } from './pdfText.ts';
import {
  bar,
  choose,
  desk,
  field,
  fill,
  focused,
  go,
  keptText,
  nextKey,
  openAll,
  phone,
  plain,
  ready,
  step,
  unfoldAll,
  useSite,
} from './support.ts';

const { open } = useSite();
const lines = 'worksheets/line-set/';

const sentence = async (page: Page) => plain(await page.locator('.answer-sentence').innerText());
const tube = (page: Page, key: string) => page.locator(`[id="choice-lineSet.${key}"]`);

/** A three-ton split system with 100 ft of 3/4 in vapour tube; every step open. */
async function fillLines(page: Page): Promise<void> {
  await choose(page, 'lineSystem', 'Air handler');
  await choose(page, 'lineSystem', 'R-410A');
  await fill(page, { nominalCapacity: '3' });
  await tube(page, 'vaporTube').selectOption('3/4');
  await fill(page, { 'lineSet.length': '100' });
}

async function typedOn(options = phone): Promise<Page> {
  const page = await open(lines, options);
  if (options === phone) await openAll(page);
  await fillLines(page);
  await page.locator('.ledger:visible').first().waitFor();
  return page;
}

test('four figures give the share that is left, its band and what it comes to', async () => {
  const page = await open(lines);
  expect(await bar(page)).toEqual(['Start with the system', 'four figures give the first answer']);
  await openAll(page);
  await fillLines(page);
  await expect.poll(() => bar(page)).toEqual(['98.2 % of the capacity is left', 'between 97.6 % and 98.5 %']);
  expect(await sentence(page)).toBe('These lines leave 98.2 % of the capacity.');
  expect(plain(await page.locator('.answer-plain').innerText())).toBe(
    'Between 97.6 % and 98.5 %, against 25 ft of 3/4 in vapour tube, as the rating has it.',
  );
  await expect.poll(() => page.locator('.ledger').count()).toBeGreaterThan(2);
  expect(plain(await page.locator('.sheet-answer').innerText())).toContain('The liquid arrives as liquid.');
});

test('the drawing follows the figures, and says them in words and in a table', async () => {
  const page = await typedOn();
  const drawing = page.locator('svg.drawing[aria-label*="outdoor unit"]');
  expect(plain((await drawing.getAttribute('aria-label')) ?? '')).toMatch(
    /joined by 100 ft of lines.*both on one level/,
  );
  await field(page, 'lineSet.lift').fill('-20');
  await expect
    .poll(async () => plain((await drawing.getAttribute('aria-label')) ?? ''))
    .toMatch(/the coil 20 ft below the outdoor unit/);
  await page.locator('summary', { hasText: 'The drawing as a table' }).tap();
  expect(plain(await page.locator('details[open] .ledger').innerText())).toMatch(/Lift −20 ft/);
});

test('a wider tube loses less and is told to carry less oil; a lifted liquid line loses its subcooling', async () => {
  const page = await typedOn();
  await tube(page, 'vaporTube').selectOption('1-1/8');
  await expect.poll(() => page.locator('.sheet-answer').innerText()).toMatch(/oil may stay in the line/);
  await fill(page, { 'lineSet.lift': '50', 'lineSet.subcooling': '2' });
  await expect.poll(() => page.locator('.sheet-answer').innerText()).toMatch(/The liquid boils before it reaches/);
});

test('the maker’s own figure outranks ours, and no figure stands beyond the maker’s limits', async () => {
  const page = await typedOn();
  await fill(page, { 'lineSet.makerFactor': '95.5' });
  await expect.poll(() => sentence(page)).toBe('These lines leave 95.5 % of the capacity.');
  expect(plain(await page.locator('.answer-plain').innerText())).toMatch(/maker’s own figure/);
  await fill(page, { 'lineSet.maximumLength': '80' });
  await expect.poll(() => sentence(page)).toBe('No figure stands beyond what the maker allows.');
  expect(plain(await page.locator('.answer-plain').innerText())).toBe(
    'The lines are 100 ft long, and the maker allows 80 ft.',
  );
});

test('a packaged unit and a metering device outdoors are refused, with the reason; only the maker’s figure is taken', async () => {
  const page = await typedOn();
  await choose(page, 'lineSystem', 'Packaged unit');
  await expect.poll(() => sentence(page)).toBe('Here only the maker can say.');
  expect(plain(await page.locator('.answer-plain').innerText())).toMatch(/no lines on site/);
  expect(await page.locator('.sheet-answer .ledger').count()).toBe(0);
  await choose(page, 'lineSystem', 'Ducted mini-split');
  await expect.poll(() => page.locator('.answer-plain').innerText()).toMatch(/boiling refrigerant/);
  await fill(page, { 'lineSet.makerFactor': '98' });
  await expect.poll(() => sentence(page)).toBe('These lines leave 98.0 % of the capacity.');
  await fill(page, { 'lineSet.makerFactor': '' });
  await choose(page, 'lineSystem', 'At the indoor coil');
  await expect.poll(() => sentence(page)).toMatch(/^These lines leave 98\.2 %/);
});

test('nonsense gets a sentence beside its field, no figure around it, and is kept', async () => {
  const page = await typedOn();
  await fill(page, { 'lineSet.length': 'far' });
  await expect.poll(() => page.locator('[id="field-lineSet.length-check"]').innerText()).toMatch(/far/);
  expect(await sentence(page)).not.toMatch(/%/);
  await expect.poll(() => bar(page).then(([big]) => big)).toBe('Check length of the lines');
  await keptText(page, 'far');
  await page.reload();
  await ready(page);
  await expect.poll(() => field(page, 'lineSet.length').inputValue()).toBe('far');
});

test('lines that cannot be are said to be so: too narrow for the flow, shorter than their lift', async () => {
  const page = await typedOn();
  await tube(page, 'vaporTube').selectOption('1/2');
  await fill(page, { 'lineSet.length': '400' });
  await expect.poll(() => page.locator('.answer-plain').innerText()).toMatch(/too narrow, or too long/);
  await tube(page, 'vaporTube').selectOption('3/4');
  await fill(page, { 'lineSet.length': '20', 'lineSet.lift': '40' });
  await expect.poll(() => page.locator('.answer-plain').innerText()).toMatch(/cannot be shorter than what they climb/);
});

test('what is typed here counts on the capacity sheet, in the same units and the same job', async () => {
  const page = await typedOn();
  await keptText(page, '100');
  await go(page, 'worksheets/capacity/');
  await openAll(page);
  await expect.poll(() => field(page, 'nominalCapacity').inputValue()).toBe('3');
  await step(page, 'rating')
    .getByRole('link', { name: /Long lines/ })
    .tap();
  await page.waitForURL(/line-set/);
  await ready(page);
  await expect.poll(() => sentence(page)).toMatch(/98\.2 %/);
});

test('a phone shows one step at a time, and the key leads through them all to the answer', async () => {
  const page = await open(lines);
  expect(await step(page, 'lineTubes').locator('.step-body').isVisible()).toBe(false);
  const stops: string[] = [];
  for (let press = 0; press < 25 && stops.at(-1) !== 'answer'; press++) {
    await nextKey(page).tap();
    stops.push(await focused(page));
  }
  expect(stops.at(-1)).toBe('answer');
  for (const stop of [
    'field-nominalCapacity',
    'choice-lineSet.vaporTube',
    'field-lineSet.length',
    'field-lineSet.lift',
  ])
    expect(stops).toContain(stop);
});

test('the whole sheet can be filled by keyboard on a desk', async () => {
  const page = await open(lines, desk);
  await step(page, 'lineSystem').getByRole('radio', { name: 'R-410A' }).focus();
  await page.keyboard.press('Space');
  await page.keyboard.press('Tab');
  expect(await focused(page)).toBe('field-nominalCapacity');
  await page.keyboard.type('3');
  await tube(page, 'vaporTube').focus();
  await page.keyboard.type('3/4');
  await field(page, 'lineSet.length').focus();
  await page.keyboard.type('100');
  await page.keyboard.press('Enter');
  expect(await focused(page)).toBe('field-lineSet.lift');
  await expect.poll(() => sentence(page)).toMatch(/^These lines leave 98\.2 %/);
});

test.each([
  ['phone', phone],
  ['desk', desk],
])('typed and unfolded on a %s it is clean in every light, and nothing is wider than the page', async (_, options) => {
  const page = await typedOn(options);
  await fill(page, { 'lineSet.lift': '30' });
  await page.locator('.sheet-margin').waitFor();
  await unfoldAll(page);
  expect(await faults(page, 'unfolded')).toEqual([]);
  const overflow = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  expect(overflow).toBeLessThanOrEqual(0);
});

test('without a signal it answers as before', async () => {
  const page = await open('', { ...phone, serviceWorkers: 'allow' });
  await page.locator('.frame-saved:not([hidden])').waitFor({ state: 'attached' });
  await expect.poll(() => page.evaluate(() => navigator.serviceWorker.controller !== null)).toBe(true);
  await page.context().setOffline(true);
  await page.goto(`${inject('url')}${lines}`);
  await ready(page);
  await openAll(page);
  await fillLines(page);
  await expect.poll(() => sentence(page)).toMatch(/98\.2 %/);
  await page.locator('summary', { hasText: 'The working' }).tap();
  await page.locator('.working-list').first().waitFor();
});

test('on paper the figures and the answer are text', async () => {
  const page = await typedOn(desk);
  const paper = plain(pdfText(await page.pdf({ format: 'Letter' })));
  for (const text of ['These lines leave 98.2 %', '100 ft', 'R-410A', 'Subcooling left', 'ASTM B280'])
    expect(paper).toContain(text);
});
