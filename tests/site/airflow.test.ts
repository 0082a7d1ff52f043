/** The sheet that finds the airflow: a walk through every way, bad figures, several ways at once, and what the capacity sheet makes of it. */
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { pdfText } from './pdfText.ts';
import {
  bar,
  choose,
  desk,
  field,
  fill,
  go,
  keptText,
  nextKey,
  openPart,
  plain,
  ready,
  sheet,
  step,
  unfoldAll,
  useSite,
} from './support.ts';

const { open } = useSite();
const airflow = 'worksheets/airflow/';

const head = (page: Page, way: string) => step(page, way).locator('.step-key');
const cell = (page: Page, table: string, row: number, column: string) =>
  page.locator(`[id="cell-${table}-${row}-${column}"]`);
const textOf = async (page: Page, selector: string) => plain(await page.locator(selector).innerText());

/** Opens a way and waits until its fields are there. */
async function into(page: Page, way: string): Promise<void> {
  await head(page, way).click();
  await step(page, way).locator('.fold').first().waitFor();
}

async function fillCells(page: Page, table: string, rows: readonly Readonly<Record<string, string>>[]): Promise<void> {
  for (const [row, texts] of rows.entries())
    for (const [column, text] of Object.entries(texts)) await cell(page, table, row, column).fill(text);
}

const rowOf = (texts: string) =>
  Object.fromEntries(texts.split(' ').map((text, index) => [`p${index + 1}`, text] as const));

/** What is typed for each way, and what its closed line says then. */
const walks: Readonly<Record<string, readonly [type: (page: Page) => Promise<void>, line: RegExp]>> = {
  readout: [(page) => fill(page, { 'readout.volumeFlow': '1180' }), /^1,172 cfm \(/],
  fanTable: [
    async (page) => {
      await fill(page, { 'fanTable.supplyStatic': '0.3', 'fanTable.returnStatic': '-0.26' });
      await fillCells(page, 'fanTable', [
        { static: '0.5', flow1: '1180' },
        { static: '0.6', flow1: '1125' },
      ]);
    },
    /^1,147 cfm \(/,
  ],
  flowGrid: [
    async (page) => {
      await fill(page, { 'flowGrid.normal': '0.25', 'flowGrid.withGrid': '0.16' });
      await fillCells(page, 'flowGrid.plates', [{ flow: '900' }]);
    },
    // 900 × √(0.25/0.16), and by √(1.2014/1.182) more: the plate was told no density.
    /^1,134 cfm \(/,
  ],
  hood: [(page) => fillCells(page, 'hood.returns', [{ flow: '520' }, { flow: '610' }]), /^1,130 cfm \(/],
  traverse: [
    async (page) => {
      await fill(page, { 'traverse.width': '20', 'traverse.height': '16' });
      await openPart(page, 'traverse', 'Readings');
      await fillCells(page, 'traverse.pressures', [
        rowOf('0.016 0.024 0.029 0.026 0.018'),
        rowOf('0.024 0.036 0.043 0.038 0.026'),
        rowOf('0.028 0.042 0.050 0.044 0.031'),
        rowOf('0.024 0.036 0.043 0.038 0.026'),
        rowOf('0.016 0.024 0.029 0.026 0.018'),
      ]);
    },
    /^1,542 cfm \(/,
  ],
  temperatureRise: [
    async (page) => {
      await fill(page, { 'rise.voltage': '240', 'rise.current': '41' });
      await openPart(page, 'temperatureRise', 'The rise');
      await fill(page, { 'rise.entering': '70', 'rise.leaving': '99' });
    },
    /^1,09\d cfm \(/,
  ],
  pressureMatch: [
    (page) => fill(page, { 'match.normal': '0.4', 'match.reached': '0.4', 'match.fanFlow': '1100' }),
    /^1,109 cfm \(/,
  ],
  grille: [
    (page) =>
      fillCells(page, 'grilles', [{ width: '24', height: '12', areaFactor: '0.8', v1: '580', v2: '600', v3: '620' }]),
    /^960 cfm \(/,
  ],
};

test('every way takes its figures and gives an airflow with its range', async () => {
  const page = await open(airflow);
  expect(await bar(page)).toEqual(['Choose a way to find it', 'a second way is the best check of the first']);
  for (const [way, [type, line]] of Object.entries(walks)) {
    await into(page, way);
    await type(page);
    await expect
      .poll(() => step(page, way).locator('.airflow-result .ledger').count(), { message: way })
      .toBeGreaterThan(0);
    // What is to be known of it is one tap away.
    await step(page, way).locator('.airflow-result > .fold > summary').click();
    expect(plain(await step(page, way).locator('.airflow-result').innerText()), way).toContain(
      'nineteen times in twenty',
    );
    await head(page, way).click();
    await expect
      .poll(async () => plain((await step(page, way).locator('.step-summary').textContent()) ?? ''), { message: way })
      .toMatch(line);
  }
  await expect.poll(() => bar(page)).toEqual(['Which figure counts?', '8 answers: choose one, or all together']);
});

test('a figure that cannot be has its sentence where it stands, nothing is lost, and what is left is marked as partial', async () => {
  const page = await open(airflow);
  await into(page, 'temperatureRise');
  await walks['temperatureRise']?.[0](page);
  await step(page, 'temperatureRise').locator('summary', { hasText: 'Taken for granted' }).click();
  await fill(page, { 'rise.powerFactor': '3' });
  await expect.poll(() => page.locator('[id="field-rise.powerFactor-check"]').count()).toBe(1);
  expect((await bar(page))[0]).toBe('Check power factor');
  expect(await step(page, 'temperatureRise').locator('.airflow-result').count()).toBe(0);

  await into(page, 'traverse');
  await fill(page, { 'traverse.width': '20', 'traverse.height': '16' });
  await openPart(page, 'traverse', 'Readings');
  await fillCells(page, 'traverse.pressures', [{ p1: '0.03', p2: '0', p3: '-0.02' }]);
  await page.keyboard.press('Tab');
  await expect
    .poll(async () => plain(await step(page, 'traverse').innerText()))
    .toContain('Hole 1, 2: 0 in. w.c. is no velocity.');
  await expect
    .poll(() => cell(page, 'traverse.pressures', 0, 'p3').getAttribute('aria-describedby'))
    .toBe('cell-traverse.pressures-0-p3-check');
  await expect.poll(() => step(page, 'traverse').innerText()).toContain('a first answer');
  expect(await cell(page, 'traverse.pressures', 0, 'p3').inputValue()).toBe('-0.02');

  await into(page, 'fanTable');
  await walks['fanTable']?.[0](page);
  await fill(page, { 'fanTable.supplyStatic': '0.7' });
  await page.keyboard.press('Tab');
  await expect
    .poll(async () => plain(await step(page, 'fanTable').innerText()))
    .toContain('0.96 in. w.c. lies outside what this column prints: 0.50 in. w.c. to 0.60 in. w.c.');
});

test('a grid moves on by itself, takes a block, and survives a reload', async () => {
  const page = await open(airflow);
  await into(page, 'traverse');
  await fill(page, { 'traverse.width': '20', 'traverse.height': '16' });
  // The next key leads into the part that is still folded.
  await nextKey(page).click();
  await page.keyboard.type('0.016');
  expect(await cell(page, 'traverse.pressures', 0, 'p1').inputValue()).toBe('0.016');
  await page.keyboard.press('Enter');
  await page.keyboard.type('0.0241');
  expect(await cell(page, 'traverse.pressures', 0, 'p2').inputValue()).toBe('0.0241');
  await nextKey(page).click();
  expect(await page.evaluate(() => document.activeElement?.id)).toBe('cell-traverse.pressures-0-p3');
  await cell(page, 'traverse.pressures', 1, 'p1').evaluate((input) => {
    const data = new DataTransfer();
    data.setData('text/plain', '0.024\t0.036\n0.028\t0.0423');
    input.dispatchEvent(new ClipboardEvent('paste', { clipboardData: data, bubbles: true, cancelable: true }));
  });
  await expect.poll(() => cell(page, 'traverse.pressures', 2, 'p2').inputValue()).toBe('0.0423');
  await keptText(page, '0.0423');
  await page.reload();
  await ready(page);
  // The way that was open is open again.
  await step(page, 'traverse').locator('.fold').first().waitFor();
  await expect.poll(() => cell(page, 'traverse.pressures', 2, 'p2').inputValue()).toBe('0.0423');
  expect(await cell(page, 'traverse.pressures', 0, 'p2').inputValue()).toBe('0.0241');
});

test('the drawing of where to drill follows the kind of unit', async () => {
  const page = await open(airflow);
  await into(page, 'fanTable');
  await step(page, 'fanTable').locator('summary', { hasText: 'Where, and how' }).click();
  const drawing = step(page, 'fanTable').locator('svg.drawing');
  await choose(page, 'fanTable', 'Furnace with cased coil');
  await expect.poll(() => drawing.getAttribute('aria-label')).toMatch(/between furnace and coil/);
  await choose(page, 'fanTable', 'Packaged unit');
  await expect.poll(() => drawing.getAttribute('aria-label')).toMatch(/both ducts on one side/);
});

test('two ways together give a mean and a picture; the capacity sheet counts it, and keeps what was typed there', async () => {
  const page = await open(sheet);
  await fill(page, { 'entering.dryBulb': '75' });
  await step(page, 'airflow').locator('.step-key').click();
  await fill(page, { 'airflow.volumeFlow': '1234' });
  await keptText(page, '1234');
  await go(page, airflow);
  for (const way of ['fanTable', 'hood']) {
    await into(page, way);
    await walks[way]?.[0](page);
  }
  await page.locator('input[name="choice-airflow.use"][value="together"]').check();
  await expect.poll(() => textOf(page, '#answer-head')).toMatch(/^It moves 1,1\d\d cfm\.$/);
  const found = (await textOf(page, '#answer-head')).replace(/^It moves (.*)\.$/, '$1');
  expect(await page.locator('.airflow-together svg.drawing').getAttribute('aria-label')).toMatch(
    /^2 ways on one scale/,
  );
  expect(plain(await page.locator('.airflow-together').innerText())).toContain(
    'They agree within what each of them admits',
  );
  await keptText(page, 'together');

  await go(page, sheet);
  const airflowStep = step(page, 'airflow');
  await expect
    .poll(async () => plain((await airflowStep.locator('.step-summary').textContent()) ?? ''))
    .toBe(`${found} found`);
  // The step that was open is open again.
  await expect
    .poll(async () => plain(await airflowStep.innerText()))
    .toContain(`From Find the airflow, ${found}: standard air`);
  expect(plain(await airflowStep.innerText())).toMatch(
    /Standard uncertainty \d\.\d %\. The 1,234 cfm typed here is kept beside it\./,
  );
  expect(await field(page, 'airflow.volumeFlow').inputValue()).toBe('1234');
  await airflowStep.getByRole('button', { name: 'Count the typed figure' }).click();
  await expect.poll(() => airflowStep.locator('select').count()).toBe(1);
  expect(await field(page, 'airflow.volumeFlow').inputValue()).toBe('1234');
});

test('the demo has two ways, what they are worth for its size, and what more air would do by its own table', async () => {
  const page = await open(`${airflow}?demo`, desk);
  await page.locator('.airflow-together svg.drawing').waitFor();
  await page.locator('.airflow-others').waitFor();
  const said = plain(await page.locator('.sheet-answer').innerText());
  expect(said).toMatch(/\d{3} cfm\/ton of standard air, by the nameplate/);
  expect(said).toContain('Net capacity at the conditions of this job, by its rating.');
  expect(await page.locator('.invented').count()).toBe(1);
  const paper = pdfText(await page.pdf());
  expect(paper).toContain('Several ways together');
});

const rules = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

async function check(page: Page): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page }).withTags(rules).setLegacyMode().analyze();
  return violations.flatMap(({ id, nodes }) => nodes.map(({ target }) => `${id} at ${target}`));
}

test('every way open, and what is folded, is clean on a phone', async () => {
  const page = await open(`${airflow}?demo`);
  await page.locator('.airflow-others').waitFor();
  await page.getByRole('button', { name: 'Open all steps' }).click();
  await page.locator('#step-grille .grid-cells').first().waitFor();
  await unfoldAll(page);
  expect(await check(page)).toEqual([]);
});

test('the answer and one way are clean on a desk', async () => {
  const page = await open(`${airflow}?demo#fanTable`, desk);
  await page.locator('.airflow-others').waitFor();
  await page.locator('#step-fanTable .grid-cells').waitFor();
  expect(await check(page)).toEqual([]);
});
