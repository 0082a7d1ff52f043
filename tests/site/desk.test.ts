/** The sheet on a desk: every step open, the answer beside it, and a keyboard with a clipboard. */
import { expect, test } from 'vitest';
import { cellFields, cells, desk, field, fillJob, focused, plain, readings, sheet, step, useSite } from './support.ts';

const { open } = useSite();

test('all steps are open, with nothing to open or close, and no bar stands before them', async () => {
  const page = await open(sheet, desk);
  for (const name of ['entering', 'leaving', 'airflow', 'outdoors', 'rating', 'sure'])
    expect(await step(page, name).locator('.step-body').isVisible(), name).toBe(true);
  expect(await page.locator('.step-key[aria-expanded]').count()).toBe(0);
  expect(await page.locator('.answer-bar').isVisible()).toBe(false);
  expect(await page.getByRole('button', { name: 'Open all steps' }).count()).toBe(0);
});

test('the answer is in view beside whatever is typed', async () => {
  const page = await open(sheet, desk);
  await fillJob(page);
  for (const key of ['entering.dryBulb', 'airflow.volumeFlow', 'nominalCapacity', 'line']) {
    await field(page, key).focus();
    const inView = await page.locator('.answer-sentence').evaluate((one) => {
      const { top, bottom, left } = one.getBoundingClientRect();
      return top >= 0 && bottom <= innerHeight && left > document.activeElement!.getBoundingClientRect().right;
    });
    expect(inView, key).toBe(true);
  }
  expect(plain(await page.locator('.answer-sentence').innerText())).toMatch(/^It makes \d\d % of what it should\.$/);
});

test('a figure is pasted with the spaces and the unit that stood around it', async () => {
  const page = await open(sheet, { ...desk, permissions: ['clipboard-read', 'clipboard-write'] });
  const paste = async (key: string, text: string) => {
    await field(page, key).focus();
    await page.evaluate((copied) => navigator.clipboard.writeText(copied), text);
    await page.keyboard.press('ControlOrMeta+V');
  };
  await page.locator('select').selectOption('flowGrid');
  for (const [key, text] of Object.entries(readings))
    await paste(key, key === 'airflow.volumeFlow' ? ' 1,180 cfm\n' : text);
  await expect.poll(() => page.locator('.answer-sentence').innerText().then(plain)).toBe('It makes 28,900 Btu/h.');
});

test('Enter goes through the figures of the table in the order in which it is read', async () => {
  const page = await open(sheet, desk);
  await fillJob(page);
  await cellFields(page).first().focus();
  for (const [index, text] of cells.entries()) {
    await expect
      .poll(() =>
        cellFields(page)
          .nth(index)
          .evaluate((one) => one === document.activeElement),
      )
      .toBe(true);
    await page.keyboard.type(text);
    await page.keyboard.press('Enter');
  }
  await expect.poll(() => focused(page)).toBe('choice-rating.basis');
});

test('the notes in the margin and the title block stand on the sheet', async () => {
  const page = await open(sheet, desk);
  await fillJob(page);
  expect(await page.locator('.sheet-margin').innerText()).toContain('ASHRAE 37');
  const block = plain(await page.locator('.title-block').innerText());
  for (const name of ['Job', 'System', 'Sheet', 'Read', 'Place', 'Units', 'By', 'State']) expect(block).toContain(name);
  expect(block).toMatch(/System 3(\.0)? ton/);
});

test('a window made narrow becomes the phone’s sheet, with the same figures', async () => {
  const page = await open(sheet, desk);
  await fillJob(page);
  await page.setViewportSize({ width: 390, height: 844 });
  await expect.poll(() => page.locator('.answer-bar').isVisible()).toBe(true);
  expect(await step(page, 'entering').locator('.step-key').getAttribute('aria-expanded')).toBe('true');
  expect(await field(page, 'entering.dryBulb').inputValue()).toBe('75');
  expect(await field(page, 'leaving.dryBulb').isVisible()).toBe(false);
});
