/** The sheet as it is told, and not seen: by roles and names alone. And in colours that the system chooses, where nothing moves. */
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { fillJob, openAll, phone, plain, sheet, step, useSite } from './support.ts';

const { open } = useSite();

/** A step by the name of its region; opened by its key where it is folded. */
async function region(page: Page, name: string) {
  const found = page.getByRole('region', { name: new RegExp(`\\d ?${name}`) });
  const key = found.getByRole('button', { name: new RegExp(`^\\d ?${name}`) });
  if ((await key.getAttribute('aria-expanded')) === 'false') await key.click();
  return found;
}

test('a whole job can be found, typed and understood by names alone, and its verdict is announced', async () => {
  const page = await open(sheet);
  const type = async (name: string, figures: Readonly<Record<string, string>>) => {
    const here = await region(page, name);
    for (const [label, text] of Object.entries(figures))
      await here.getByRole('textbox', { name: label, exact: true }).fill(text);
    return here;
  };
  await type('Return air', { 'Temperature (dry bulb)': '75', 'Humidity (relative)': '50' });
  await type('Supply air', { 'Temperature (dry bulb)': '56', 'Humidity (relative)': '88' });
  const airflow = await type('Airflow', { Airflow: '1180' });
  await airflow.getByRole('combobox', { name: 'How did you get it?' }).selectOption('flowGrid');
  const outdoors = await region(page, 'Outdoors');
  await outdoors.getByRole('textbox', { name: /^Air going into the outdoor unit|outdoor/i }).fill('91');
  await outdoors
    .getByRole('group', { name: 'Is it at full speed?' })
    .getByRole('radio', { name: 'Yes, one speed' })
    .check();
  const rating = await type('The maker’s table', { 'Nameplate size': '3', 'This block is for': '1180' });
  for (const [name, text] of [
    ['outdoors 85, wet bulb 62', '33.6'],
    ['outdoors 95, wet bulb 62', '31.7'],
    ['outdoors 85, wet bulb 67', '36.9'],
    ['outdoors 95, wet bulb 67', '34.9'],
  ] as const)
    await rating.getByRole('textbox', { name: new RegExp(name, 'i') }).fill(text);
  const answer = (of: Page) => of.getByRole('status').filter({ hasText: /%/ });
  await rating
    .getByRole('group', { name: /already taken off/ })
    .getByRole('radio', { name: 'Yes (net)' })
    .check();
  const sure = await region(page, 'How sure');
  await sure.getByRole('radio', { name: 'No', exact: true }).check();
  await expect
    .poll(() => answer(page).first().innerText().then(plain))
    .toMatch(/^Cannot tell: \d\d %, between \d\d and \d+ % Too near the line to call\./);
  const bar = page.getByRole('region', { name: 'Answer so far' });
  expect(plain(await bar.getByRole('button').first().innerText())).toMatch(/^Cannot tell \d\d %: between/);
  await expect.poll(() => bar.getByRole('button', { name: 'Answer', exact: true }).count()).toBe(1);
});

test('in colours of the system whatever carries meaning by a line is still drawn, and nothing moves by itself', async () => {
  const page = await open(sheet, { ...phone, forcedColors: 'active', reducedMotion: 'reduce' });
  await openAll(page);
  await fillJob(page);
  await step(page, 'sure').getByRole('radio', { name: 'No', exact: true }).check();
  await page.locator('.answer-verdict svg').waitFor();
  const unseen = await page.evaluate(() => {
    const paper = getComputedStyle(document.body).backgroundColor;
    const shapes = document.querySelectorAll('main svg :is(path, line, rect, circle, polyline, polygon)');
    const drawn = [...shapes].filter((one) => one.checkVisibility() && !one.closest('defs, clipPath, mask, pattern'));
    const faults = drawn.flatMap((one) => {
      const { stroke, fill } = getComputedStyle(one);
      const isHidden = (paint: string) => paint === 'none' || paint === paper || /^rgba\(.*, 0\)$/.test(paint);
      // What keeps a hatch clear of the line across it is drawn in paper on purpose.
      return isHidden(stroke) && isHidden(fill) && !one.matches('.line-knock')
        ? [`${one.localName}.${one.getAttribute('class')} ${stroke} ${fill}`]
        : [];
    });
    return { count: drawn.length, faults: [...new Set(faults)] };
  });
  const lost = await page.evaluate(() => {
    const paper = getComputedStyle(document.body).backgroundColor;
    const says = (one: Element) => [...one.childNodes].some((node) => node.nodeType === 3 && node.textContent?.trim());
    return [...document.querySelectorAll('body *')]
      .filter((one) => one.checkVisibility() && says(one) && getComputedStyle(one).color === paper)
      .map((one) => `${one.className}: ${one.textContent}`);
  });
  expect(lost).toEqual([]);
  expect(unseen.count).toBeGreaterThan(20);
  expect(unseen.faults).toEqual([]);
  const chosen = step(page, 'sure').locator('.choice > input:checked + span');
  expect(await chosen.evaluate((one) => getComputedStyle(one).borderTopWidth)).toBe('3px');
  const moving = await page.evaluate(() =>
    [...document.querySelectorAll('*')].flatMap((one) => {
      const { animationName, transitionDuration } = getComputedStyle(one);
      return animationName !== 'none' || /[1-9]/.test(transitionDuration) ? [one.className] : [];
    }),
  );
  expect(moving).toEqual([]);
  expect(await page.evaluate(() => document.getAnimations().length)).toBe(0);
});
