/** Every page, and the sheet in all its states, by the rules that a machine can check; no page complains to the console. */
import { expect, inject, test } from 'vitest';
import { faults } from './axe.ts';
import { pagesUnder } from './builtSite.ts';
import { desk, field, fillJob, go, openAll, openMore, phone, sheet, step, unfoldAll, useSite } from './support.ts';

const { open, forgive } = useSite();

const pages = pagesUnder(inject('dist'));
/** On a desk the frame differs, and what stands in it hardly does: one page of each kind is enough. */
const ofEachKind = pages.filter(
  (path, index) => pages.findIndex((one) => one.split('/')[0] === path.split('/')[0]) === index,
);

const address = (path: string) => path.replace(/index\.html$/, '');

/** Pages of one kind share a page of the browser, which then has their styles and scripts at hand. */
const kinds = [...Map.groupBy(pages, (path) => path.split('/')[0] ?? '')];

/** Articles of a shelf are made of the same pieces and name no colour: the first few stand for all in the other lights. */
const shelves = ['method', 'cautions', 'reports'];
const isOneOfMany = (kind: string, index: number) => shelves.includes(kind) && index > 2;

test.each(kinds)(
  'every page under %s is clean on a phone, and what they are made of is so in every light',
  async (kind, paths) => {
    const page = await open('');
    const found: string[] = [];
    for (const [index, path] of paths.entries()) {
      await go(page, address(path));
      found.push(...(await faults(page, path, isOneOfMany(kind, index) ? null : undefined)));
    }
    expect(found).toEqual([]);
  },
  180_000,
);

test.each(ofEachKind)('%s is clean on a desk', async (path) => {
  expect(await faults(await open(address(path), desk), path, [])).toEqual([]);
});

test('the sheet is clean with each of its steps open, empty and typed', async () => {
  const page = await open(sheet);
  const found: string[] = [];
  for (const name of ['entering', 'leaving', 'airflow', 'outdoors', 'rating', 'sure']) {
    const head = step(page, name).locator('.step-key');
    if ((await head.getAttribute('aria-expanded')) === 'false') await head.tap();
    found.push(...(await faults(page, `step ${name}`, [])));
  }
  await openAll(page);
  await fillJob(page);
  found.push(...(await faults(page, 'a whole job')));
  expect(found).toEqual([]);
});

test('the sheet is clean with everything unfolded, and with checks beside its fields', async () => {
  const page = await open(sheet);
  await openAll(page);
  await fillJob(page);
  await openMore(page);
  for (const key of ['Add sensible', 'Next airflow block']) await page.getByRole('button', { name: key }).click();
  await page.getByRole('button', { name: 'Another reading' }).first().click();
  await field(page, 'entering.dryBulb').fill('75');
  await field(page, 'entering.relativeHumidity').fill('50');
  await step(page, 'sure').getByRole('radio', { name: 'Yes, type the difference' }).check();
  for (const note of await page.getByRole('button', { name: 'Note', exact: true }).all()) await note.click();
  await unfoldAll(page);
  const found = await faults(page, 'unfolded', []);
  for (const key of ['leaving.dryBulb', 'airflow.volumeFlow', 'nominalCapacity', 'line'])
    await field(page, key).fill('no');
  await page.locator('.cell-fields input').first().fill('no');
  await page.locator('.cell-fields input').first().blur();
  await expect.poll(() => page.locator('.check').count()).toBeGreaterThan(4);
  found.push(...(await faults(page, 'checks')));
  expect(found).toEqual([]);
});

test('the demo is clean on a phone and on a desk, and so is the question that it asks', async () => {
  const found: string[] = [];
  for (const options of [phone, desk]) {
    const page = await open(`${sheet}?demo`, options);
    await page.locator('.invented').waitFor();
    found.push(...(await faults(page, 'demo')));
    await field(page, 'entering.dryBulb').focus();
    await page.keyboard.press('9');
    await page.locator('dialog[open]').waitFor();
    found.push(...(await faults(page, 'question')));
  }
  expect(found).toEqual([]);
});

test('the menu and the choices of the frame are clean when they are open', async () => {
  const page = await open('');
  await page.locator('.frame-menu > summary').tap();
  const found = await faults(page, 'menu');
  await page.locator('.frame-settings > summary').tap();
  found.push(...(await faults(page, 'choices')));
  expect(found).toEqual([]);
});

test('these tests see a complaint when there is one', async () => {
  const page = await open('reference/');
  const heard = page.waitForEvent('console', (message) => message.type() === 'error');
  await page.evaluate(() => document.body.setAttribute('style', 'color: red'));
  expect((await heard).text()).toMatch(/style/);
  forgive(page, /style/);
});
