/** With the keyboard of a phone open some 400 px are left: what is typed, what is said of it and the answer are all in view. */
import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { field, fill, fillCells, openMore, readings, sheet, step, typingPhone, useSite } from './support.ts';

const { open } = useSite();

interface Box {
  readonly top: number;
  readonly bottom: number;
}

/** Where the field with the focus stands, the lines that are said below it, and the bar. */
function measure() {
  const input = document.activeElement as HTMLElement;
  const box = (element: Element) => {
    const { top, bottom } = element.getBoundingClientRect();
    return { top, bottom };
  };
  const row = input.closest('.field-row, .cell-grid') ?? input.closest('.field');
  const after = row?.nextElementSibling;
  const own = [...(input.closest('.field')?.querySelectorAll(':scope > .field-said > :is(.echo, .check)') ?? [])];
  const field = box(input.closest('.field-box') ?? input);
  const bar = box(document.querySelector('.answer-bar')!);
  // What is said below a whole grid of cells is in view where there is room for both.
  const fits = after?.matches('.echo, .check') && after.getBoundingClientRect().bottom - field.top < bar.top - 16;
  const said = fits && after ? [...own, after] : own;
  return { field, said: said.filter((line) => line.textContent?.trim()).map(box), bar, height: innerHeight };
}

type Measured = ReturnType<typeof measure>;

/** What is hidden or lies over something else; '' when all is well. */
function fault({ field: at, said, bar, height }: Measured): string {
  const overlaps = (a: Box, b: Box) => a.top < b.bottom - 1 && b.top < a.bottom - 1;
  if (Math.abs(bar.bottom - height) > 1) return `the bar ends at ${bar.bottom} of ${height}`;
  if (at.top < 0 || at.bottom > bar.top + 1)
    return `the field stands from ${at.top} to ${at.bottom}, the bar begins at ${bar.top}`;
  const hidden = said.find((line) => line.top < 0 || line.bottom > bar.top + 1);
  if (hidden) return `what is said stands from ${hidden.top} to ${hidden.bottom}, the bar begins at ${bar.top}`;
  return said.some((line) => overlaps(line, at)) ? 'what is said lies over the field' : '';
}

/** Looks until it is well, for a moment. */
async function look(page: Page): Promise<Measured & { fault: string }> {
  let seen = await page.evaluate(measure);
  for (let turn = 0; turn < 8 && fault(seen) !== ''; turn++) {
    await page.evaluate(() => new Promise((resolve) => requestAnimationFrame(resolve)));
    seen = await page.evaluate(measure);
  }
  return { ...seen, fault: fault(seen) };
}

/** Types what cannot be read and what is read as something else into each field of a step; gives what went wrong. */
async function typeInto(page: Page, fields: readonly Locator[]): Promise<string[]> {
  const faults: string[] = [];
  for (const one of fields) {
    const before = await one.inputValue();
    const name = (await one.getAttribute('id')) ?? '';
    await one.tap();
    for (const text of ['no', '72 °F', before]) {
      await page.keyboard.press('ControlOrMeta+A');
      if (text === '') await page.keyboard.press('Delete');
      else await page.keyboard.type(text);
      const typing = await look(page);
      // The fingers rest.
      await page.clock.runFor(1500);
      const resting = await look(page);
      if (typing.fault) faults.push(`${name}, typing “${text}”: ${typing.fault}`);
      if (resting.fault) faults.push(`${name}, after “${text}”: ${resting.fault}`);
      if (text === 'no' && name.startsWith('field') && resting.said.length === 0)
        faults.push(`${name}: nothing is said of “no”`);
    }
  }
  return faults;
}

async function openStep(page: Page, name: string): Promise<void> {
  const head = step(page, name).locator('.step-key');
  if ((await head.getAttribute('aria-expanded')) === 'false') await head.tap();
}

async function visibleFields(page: Page, name: string): Promise<Locator[]> {
  const all = await step(page, name).locator('input[type=text]').all();
  const visible = await Promise.all(all.map((one) => one.isVisible()));
  return all.filter((_, index) => visible[index]);
}

async function typedJob(): Promise<Page> {
  const page = await open('', typingPhone);
  await page.clock.install();
  await page.goto(new URL(sheet, page.url()).href);
  await page.waitForFunction(() => document.querySelector('astro-island[ssr]') === null);
  await page.getByRole('button', { name: 'Open all steps' }).click();
  await fill(page, { ...readings, outdoorDryBulb: '91', nominalCapacity: '3' });
  await fillCells(page);
  await page.clock.runFor(1500);
  await page.getByRole('button', { name: 'One step at a time' }).click();
  return page;
}

/** What is folded away in a step until it is asked for. */
const unfold: Readonly<Record<string, (page: Page) => Promise<void>>> = {
  airflow: (page) => step(page, 'airflow').locator('summary').tap(),
  rating: async (page) => {
    const rating = step(page, 'rating');
    await openMore(page);
    await rating.getByRole('button', { name: 'Add sensible' }).tap();
    // What changes the figures leads back to them.
    await openMore(page);
    await rating.getByRole('button', { name: 'Next airflow block' }).tap();
  },
  sure: (page) => step(page, 'sure').getByRole('radio', { name: 'Yes, type the difference' }).check(),
};

test.each(['entering', 'leaving', 'airflow', 'outdoors', 'rating', 'sure'])(
  'in step %s every field, what is said below it and the bar are in view while it is typed',
  async (name) => {
    const page = await typedJob();
    await openStep(page, name);
    await unfold[name]?.(page);
    const fields = await visibleFields(page, name);
    expect(fields.length).toBeGreaterThan(0);
    expect(await typeInto(page, fields)).toEqual([]);
  },
);

test('a note is typed in view of the bar', async () => {
  const page = await typedJob();
  await openStep(page, 'entering');
  await step(page, 'entering').getByRole('button', { name: 'Note', exact: true }).tap();
  const note = step(page, 'entering').locator('textarea');
  await note.tap();
  await page.keyboard.type('Filter changed before the test.');
  expect((await look(page)).fault).toBe('');
  expect(await field(page, 'entering.dryBulb').inputValue()).toBe('75');
});
