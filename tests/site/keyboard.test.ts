/** The sheet by keyboard alone: order, Enter, arrows, and a ring that shows where one is. */
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import {
  bar,
  cellFields,
  cells,
  desk,
  field,
  fillJob,
  focused,
  openAll,
  phone,
  sheet,
  step,
  useSite,
} from './support.ts';

const { open } = useSite();

/** What has the focus, as a person would name it. */
const nameOfFocus = (page: Page) =>
  page.evaluate(() => {
    const at = document.activeElement as HTMLElement;
    return (
      at.id || at.getAttribute('name') || at.getAttribute('aria-label') || at.innerText.replace(/\s+/g, ' ').trim()
    );
  });

async function tab(page: Page, times: number): Promise<string[]> {
  const names: string[] = [];
  for (let turn = 0; turn < times; turn++) {
    await page.keyboard.press('Tab');
    names.push(await nameOfFocus(page));
  }
  return names;
}

test('the first stop of Tab leads over the head to the content', async () => {
  const page = await open(sheet);
  expect(await tab(page, 1)).toEqual(['Skip to the content']);
  await page.keyboard.press('Enter');
  await expect.poll(() => focused(page)).toBe('content');
});

test('Tab goes through the open step in the order in which it is read, and past the closed ones by their heads', async () => {
  const page = await open(sheet);
  await step(page, 'entering').locator('.step-key').focus();
  const names = await tab(page, 12);
  const inOrder = ['field-entering.dryBulb', 'field-entering.relativeHumidity'];
  expect(names.filter((name) => name.startsWith('field-'))).toEqual(inOrder);
  const heads = names.filter((name) => /^[2-6] /.test(name)).map((name) => name[0]);
  expect(heads).toEqual(['2', '3', '4', '5', '6']);
});

/** Presses Tab until the focus leaves the page again, and asks something of each stop. */
async function everyStop<T>(page: Page, ask: () => T): Promise<T[]> {
  const answers: T[] = [];
  await page.locator('.skip').focus();
  for (;;) {
    await page.keyboard.press('Tab');
    if (await page.evaluate(() => document.activeElement === document.body)) return answers;
    answers.push(await page.evaluate(ask));
  }
}

test('what is read earlier on the page is reached earlier', async () => {
  const page = await open(sheet, desk);
  await fillJob(page);
  const places = await everyStop(page, () => [...document.querySelectorAll('*')].indexOf(document.activeElement!));
  expect(places).toEqual([...places].sort((a, b) => a - b));
  expect(places.length).toBeGreaterThan(40);
});

test('Enter leads from field to field, into the next step and on to the answer', async () => {
  const page = await open(sheet, desk);
  await field(page, 'entering.dryBulb').focus();
  for (const [text, next] of [
    ['75', 'field-entering.relativeHumidity'],
    ['50', 'field-leaving.dryBulb'],
    ['56', 'field-leaving.relativeHumidity'],
    ['88', 'field-airflow.volumeFlow'],
    ['1180', 'field-altitude'],
  ] as const) {
    await page.keyboard.type(text);
    await page.keyboard.press('Enter');
    await expect.poll(() => focused(page)).toBe(next);
  }
});

test('Enter on a field selects what stands in the next one, so that typing replaces it', async () => {
  const page = await open(sheet, desk);
  await fillJob(page);
  await field(page, 'entering.dryBulb').focus();
  await page.keyboard.press('Enter');
  await expect.poll(() => focused(page)).toBe('field-entering.relativeHumidity');
  await page.keyboard.type('55');
  expect(await field(page, 'entering.relativeHumidity').inputValue()).toBe('55');
});

test('arrows move between the answers of a question, and space chooses the first', async () => {
  const page = await open(sheet);
  await openAll(page);
  const speed = step(page, 'outdoors').getByRole('radio');
  await speed.first().focus();
  await page.keyboard.press('Space');
  expect(await speed.nth(0).isChecked()).toBe(true);
  await page.keyboard.press('ArrowDown');
  expect(await speed.nth(1).isChecked()).toBe(true);
  await page.keyboard.press('ArrowRight');
  expect(await speed.nth(2).isChecked()).toBe(true);
  await page.keyboard.press('ArrowUp');
  expect(await speed.nth(1).isChecked()).toBe(true);
  await expect.poll(() => step(page, 'outdoors').getByText('How is it held').count()).toBe(1);
});

test('steps, folds and the frame’s choices open and close by keyboard', async () => {
  const page = await open(sheet);
  const second = step(page, 'leaving').locator('.step-key');
  await second.focus();
  await page.keyboard.press('Enter');
  await expect.poll(() => second.getAttribute('aria-expanded')).toBe('true');
  expect(await field(page, 'entering.dryBulb').isVisible()).toBe(false);
  await page.locator('.frame-settings > summary').focus();
  await page.keyboard.press('Enter');
  expect(await page.locator('.frame-settings').getAttribute('open')).not.toBeNull();
  await page.keyboard.press('Tab');
  await page.keyboard.press('Escape');
  expect(await page.locator('.frame-settings').getAttribute('open')).toBeNull();
  expect(await page.evaluate(() => document.activeElement?.localName)).toBe('summary');
});

test('a whole job, from an empty sheet to a verdict and the working behind it, needs no pointer', async () => {
  const page = await open(sheet);
  const { keyboard } = page;
  /** Presses Tab until the focus is there. */
  const tabTo = async (there: RegExp) => {
    for (let turn = 0; turn < 40 && !there.test(await nameOfFocus(page)); turn++) await keyboard.press('Tab');
    expect(await nameOfFocus(page)).toMatch(there);
  };
  const type = async (text: string, next: RegExp) => {
    await keyboard.type(text);
    await keyboard.press('Enter');
    await expect.poll(() => focused(page)).toMatch(next);
  };
  await tabTo(/^field-entering.dryBulb$/);
  await type('75', /^field-entering.relativeHumidity$/);
  await type('50', /^field-leaving.dryBulb$/);
  await type('56', /^field-leaving.relativeHumidity$/);
  await type('88', /^field-airflow.volumeFlow$/);
  await type('1180', /^field-altitude$/);
  await type('', /^choice-airflow.method$/);
  await keyboard.press('ArrowDown');
  await tabTo(/^4 /);
  await keyboard.press('Enter');
  await tabTo(/^field-outdoorDryBulb$/);
  await type('91', /^choice-fullSpeed$/);
  await keyboard.press('Space');
  await expect.poll(() => step(page, 'outdoors').getByRole('radio').first().isChecked()).toBe(true);
  // An answer leads on under a finger alone.
  expect(await focused(page)).toBe('choice-fullSpeed');
  await tabTo(/^5 /);
  await keyboard.press('Enter');
  await tabTo(/^field-nominalCapacity$/);
  await cellFields(page).first().waitFor();
  await type('3', /^field-rating.airflow$/);
  await type('1180', /^cell-/);
  for (const text of cells.slice(0, 3)) await type(text, /^cell-/);
  await type(cells[3], /^choice-rating.basis$/);
  await keyboard.press('Space');
  await tabTo(/^6 /);
  await keyboard.press('Enter');
  await tabTo(/^choice-sideBySide$/);
  await keyboard.press('ArrowDown');
  await expect.poll(() => bar(page)).toEqual(['Cannot tell', expect.stringMatching(/^\d\d %: between/)]);
  await tabTo(/^The working$/);
  await keyboard.press('Enter');
  await page.locator('.working-list').first().waitFor();
});

/** Everything that can have the focus shows it: by its own outline, or by that of the box or the words around it. */
test.each([
  ['on a phone', phone],
  ['on a desk', desk],
])('whatever has the focus %s shows a ring of ink', async (_, options) => {
  const page = await open(sheet, options);
  if (options === phone) await openAll(page);
  await fillJob(page);
  const rings = await everyStop(page, () => {
    const at = document.activeElement as HTMLElement;
    const around = [at, at.closest('.field-box'), at.nextElementSibling].filter((one) => one !== null);
    const widths = around.map((one) => {
      const { outlineStyle, outlineWidth } = getComputedStyle(one);
      return outlineStyle === 'none' ? 0 : Number.parseFloat(outlineWidth);
    });
    return { width: Math.max(...widths), name: at.id || at.outerHTML.slice(0, 80) };
  });
  expect(rings.length).toBeGreaterThan(40);
  expect(rings.filter(({ width }) => width < 2).map(({ name }) => name)).toEqual([]);
});
