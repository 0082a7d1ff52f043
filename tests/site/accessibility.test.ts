/** Every page, and the sheet in all its states, by the rules that a machine can check; no page complains to the console. */
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { expect, inject, test } from 'vitest';
import { pagesUnder } from './builtSite.ts';
import { desk, field, fillJob, openAll, phone, sheet, step, unfoldAll, useSite } from './support.ts';

const { open, forgive } = useSite();

const rules = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

interface Violation {
  readonly id: string;
  readonly nodes: readonly { readonly target: unknown; readonly failureSummary?: string }[];
}

const named = (violations: readonly Violation[]) =>
  violations.flatMap(({ id, nodes }) =>
    nodes.map((one) => `${id} at ${one.target}: ${one.failureSummary?.split('\n')[1]?.trim()}`),
  );

/** The rules about colours, in another light. The checker stands in the page already. */
async function inLight(page: Page, light: string): Promise<string[]> {
  const found = await page.evaluate(async (theme) => {
    document.documentElement.dataset['theme'] = theme;
    const { axe } = globalThis as unknown as {
      axe: { run(what: unknown, how: unknown): Promise<{ violations: Violation[] }> };
    };
    const runOnly = ['color-contrast', 'link-in-text-block'];
    const { violations } = await axe.run(document, { runOnly, resultTypes: ['violations'] });
    document.documentElement.dataset['theme'] = 'light';
    return JSON.stringify(violations);
  }, light);
  return named(JSON.parse(found)).map((fault) => `${light}: ${fault}`);
}

/** What is wrong by all rules, and by those about colours in the other lights. */
async function check(page: Page, state: string, lights: readonly string[] = ['dark', 'sun']): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page }).withTags(rules).setLegacyMode().analyze();
  const found = named(violations as readonly Violation[]);
  for (const light of lights) found.push(...(await inLight(page, light)));
  return found.map((fault) => `${state}: ${fault}`);
}

const pages = pagesUnder(inject('dist'));
/** On a desk the frame differs, and what stands in it hardly does: one page of each kind is enough. */
const ofEachKind = pages.filter(
  (path, index) => pages.findIndex((one) => one.split('/')[0] === path.split('/')[0]) === index,
);

const address = (path: string) => path.replace(/index\.html$/, '');

test.each(pages)('%s is clean on a phone, in every light', async (path) => {
  expect(await check(await open(address(path)), path)).toEqual([]);
});

test.each(ofEachKind)('%s is clean on a desk', async (path) => {
  expect(await check(await open(address(path), desk), path, [])).toEqual([]);
});

test('the sheet is clean with each of its steps open, empty and typed', async () => {
  const page = await open(sheet);
  const found: string[] = [];
  for (const name of ['entering', 'leaving', 'airflow', 'outdoors', 'rating', 'sure']) {
    const head = step(page, name).locator('.step-key');
    if ((await head.getAttribute('aria-expanded')) === 'false') await head.tap();
    found.push(...(await check(page, `step ${name}`, [])));
  }
  await openAll(page);
  await fillJob(page);
  found.push(...(await check(page, 'a whole job')));
  expect(found).toEqual([]);
});

test('the sheet is clean with everything unfolded, and with checks beside its fields', async () => {
  const page = await open(sheet);
  await openAll(page);
  await fillJob(page);
  for (const key of ['Add sensible', 'Next airflow block', 'Rows and blower'])
    await page.getByRole('button', { name: key }).click();
  await page.getByRole('button', { name: 'Another reading' }).first().click();
  await field(page, 'entering.dryBulb').fill('75');
  await field(page, 'entering.relativeHumidity').fill('50');
  await step(page, 'sure').getByRole('radio', { name: 'Yes, type the difference' }).check();
  for (const note of await page.getByRole('button', { name: 'Note', exact: true }).all()) await note.click();
  await unfoldAll(page);
  const found = await check(page, 'unfolded', []);
  for (const key of ['leaving.dryBulb', 'airflow.volumeFlow', 'nominalCapacity', 'line'])
    await field(page, key).fill('no');
  await page.locator('.cell-fields input').first().fill('no');
  await page.locator('.cell-fields input').first().blur();
  await expect.poll(() => page.locator('.check').count()).toBeGreaterThan(4);
  found.push(...(await check(page, 'checks')));
  expect(found).toEqual([]);
});

test('the demo is clean on a phone and on a desk, and so is the question that it asks', async () => {
  const found: string[] = [];
  for (const options of [phone, desk]) {
    const page = await open(`${sheet}?demo`, options);
    await page.locator('.invented').waitFor();
    found.push(...(await check(page, 'demo')));
    await field(page, 'entering.dryBulb').focus();
    await page.keyboard.press('9');
    await page.locator('dialog[open]').waitFor();
    found.push(...(await check(page, 'question')));
  }
  expect(found).toEqual([]);
});

test('the menu and the choices of the frame are clean when they are open', async () => {
  const page = await open('');
  await page.locator('.frame-menu > summary').tap();
  const found = await check(page, 'menu');
  await page.locator('.frame-settings > summary').tap();
  found.push(...(await check(page, 'choices')));
  expect(found).toEqual([]);
});

test('these tests see a complaint when there is one', async () => {
  const page = await open('reference/');
  const heard = page.waitForEvent('console', (message) => message.type() === 'error');
  await page.evaluate(() => document.body.setAttribute('style', 'color: red'));
  expect((await heard).text()).toMatch(/style/);
  forgive(page, /style/);
});
