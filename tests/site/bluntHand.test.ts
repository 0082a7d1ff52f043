/** A blunt finger: each tap lands up to 8 px beside the middle of what it is meant for. And no figure asked twice, nor without its keyboard. */
import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import {
  bar,
  cellFields,
  cells,
  field,
  fillJob,
  focused,
  go,
  keptText,
  nextKey,
  openAll,
  readings,
  sheet,
  step,
  useSite,
} from './support.ts';

const { open } = useSite();

/** Numbers from 0 to 1, the same each time: a linear congruence with the constants of Numerical Recipes (memory). */
function chance(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}

test('with each tap up to 8 px off, the main job still gets from an empty sheet to a verdict', async () => {
  const page = await open(sheet);
  const next = chance(20_260_812);
  const off = () => 16 * next() - 8;
  const tap = async (target: Locator) => {
    await target.scrollIntoViewIfNeeded();
    const box = await target.boundingBox();
    if (!box) throw new Error('nothing to tap');
    await page.touchscreen.tap(box.x + box.width / 2 + off(), box.y + box.height / 2 + off());
  };
  const type = async (target: Locator, text: string) => {
    await tap(target);
    await expect.poll(() => target.evaluate((one) => one === document.activeElement)).toBe(true);
    await page.keyboard.type(text);
    expect(await target.inputValue()).toBe(text);
  };
  const answer = async (name: string, option: string) => {
    const radio = step(page, name).getByRole('radio', { name: option, exact: true });
    await tap(radio.locator('..'));
    await expect.poll(() => radio.isChecked()).toBe(true);
  };
  for (const [key, text] of Object.entries(readings)) {
    if (!(await field(page, key).isVisible())) await tap(nextKey(page));
    await field(page, key).waitFor();
    await type(field(page, key), text);
  }
  await tap(step(page, 'outdoors').locator('.step-key'));
  await type(field(page, 'outdoorDryBulb'), '91');
  await answer('outdoors', 'Yes, one speed');
  await expect.poll(() => focused(page)).toBe('field-nominalCapacity');
  await cellFields(page).first().waitFor();
  await type(field(page, 'nominalCapacity'), '3');
  await type(field(page, 'rating.airflow'), '1180');
  for (const [index, text] of cells.entries()) await type(cellFields(page).nth(index), text);
  await answer('rating', 'Yes (net)');
  await expect.poll(() => focused(page)).toBe('choice-sideBySide');
  await answer('sure', 'No');
  await expect.poll(() => bar(page)).toEqual(['Cannot tell', expect.stringMatching(/^\d\d %: between/)]);
});

/** The fields of figures that stand on the page: their names in the job, what they hold, and which keyboard they bring. */
const figures = (page: Page) =>
  page.locator('main input[type=text]').evaluateAll((all) =>
    (all as HTMLInputElement[]).map((one) => ({
      id: one.id,
      text: one.value,
      inputMode: one.closest('.field-text') ? 'decimal' : one.inputMode,
    })),
  );

test('what one sheet was told no other asks again, and every figure brings the keyboard of numbers', async () => {
  const page = await open(sheet);
  await openAll(page);
  await fillJob(page);
  await keptText(page, cells[3]);
  const told = new Map((await figures(page)).filter(({ text }) => text !== '').map(({ id, text }) => [id, text]));
  expect(told.size).toBeGreaterThan(10);
  const found: string[] = [];
  let shared = 0;
  for (const path of ['capacity', 'airflow', 'probes', 'line-set']) {
    await go(page, `worksheets/${path}/`);
    if (path === 'airflow')
      for (const way of await page.locator('.step-key').all()) {
        await way.click();
        await page.locator('.step[data-open] .fold').first().waitFor();
        found.push(...faultsOf(path, await figures(page)));
      }
    else await openAll(page);
    await expect.poll(() => figures(page).then((all) => all.length)).toBeGreaterThan(0);
    const here = await figures(page);
    found.push(...faultsOf(path, here));
    const again = here.filter(({ id }) => told.has(id));
    shared += again.length;
    for (const { id } of again)
      await expect
        .poll(() => page.locator(`[id="${id}"]`).first().inputValue(), { message: `${path}: ${id}` })
        .toBe(told.get(id));
  }
  expect(found).toEqual([]);
  // Those of the capacity sheet itself, and some elsewhere.
  expect(shared).toBeGreaterThan(told.size);
});

const faultsOf = (path: string, here: Awaited<ReturnType<typeof figures>>) =>
  here.filter(({ inputMode }) => inputMode !== 'decimal').map(({ id }) => `${path}: ${id} brings letters`);
