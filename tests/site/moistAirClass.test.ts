/** Questions at the air chart, which keep their answers to themselves, and charts to print. */
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { chart, chartOpener, textField } from './moistAir.ts';
import { desk, plain, stored, useSite } from './support.ts';

const { open } = useSite();
const openChart = chartOpener(open);

/** Everything that a page says: to the eye, in its fields, and to those who listen. */
async function everythingSaid(page: Page): Promise<string> {
  const client = await page.context().newCDPSession(page);
  const { nodes } = await client.send('Accessibility.getFullAXTree');
  await client.detach();
  const heard = nodes.flatMap(({ name, value, description, properties }) => [
    name?.value,
    value?.value,
    description?.value,
    ...(properties ?? []).map((property) => property.value.value),
  ]);
  const seen = await page.evaluate(() => document.documentElement.outerHTML);
  return plain([seen, ...heard].join(' '));
}

test.each([
  [1, /It is ([\d.]+ °F)\./],
  [2, /It is ([\d.]+ °F), ([\d.]+ %)\./],
  [3, /It is (\d+ %)\./],
  [4, /It is ([\d.]+ °F), ([\d.]+ %)\./],
])('question %i gives its answer away nowhere before it is shown', async (seed, pattern) => {
  const page = await openChart(`${chart}?class=${seed}`);
  const before = await everythingSaid(page);
  await page.getByRole('button', { name: 'Show me without guessing' }).click();
  const shown = plain(await page.locator('.lesson-result').innerText());
  const [, ...figures] = pattern.exec(shown)!;
  for (const figure of figures) expect(before).not.toContain(figure);
  // A figure of the answer without its unit may be a label of a scale by chance; a whole answer may not.
  expect(before).not.toContain(figures.join(', '));
});

test('a guess by figures and its result stay together, with one sentence of difference', async () => {
  const page = await openChart(`${chart}?class=1`);
  await page.getByRole('button', { name: 'Show', exact: true }).click();
  expect(await page.locator('.lesson .check').innerText()).toContain('Say something first');
  await textField(page, 'guess-wetBulb').fill('60');
  await page.getByRole('button', { name: 'Show', exact: true }).click();
  await expect
    .poll(async () => plain(await page.locator('.lesson-result').innerText()))
    .toMatch(/^You said 60\.0 °F\. It is [\d.]+ °F\./);
  expect(await page.locator('.lesson-chart').innerText()).toContain('Your guess');
  await page.getByRole('button', { name: 'Another one' }).click();
  await expect.poll(() => page.locator('.lesson-ask').innerText()).toContain('Question 2');
  expect(await page.locator('.lesson-result').count()).toBe(0);
});

test('a guess by place is tapped, moved by keys, and shown beside the answer; nothing of it is kept', async () => {
  const page = await openChart(`${chart}?class=2`);
  const paper = (await page.locator('.air-drawing').boundingBox())!;
  await page.mouse.click(paper.x + paper.width * 0.7, paper.y + paper.height * 0.7);
  const tapped = await textField(page, 'guess-dryBulb').inputValue();
  expect(Number(tapped)).toBeGreaterThan(70);
  await page.locator('.air-cross').focus();
  await page.keyboard.press('Shift+ArrowRight');
  expect(Number(await textField(page, 'guess-dryBulb').inputValue())).toBeCloseTo(Number(tapped) + 1, 1);
  await page.getByRole('button', { name: 'Show', exact: true }).click();
  expect(plain(await page.locator('.lesson-result').innerText())).toMatch(
    /^You said [\d.]+ °F, [\d.]+ %\. It is [\d.]+ °F, [\d.]+ %\./,
  );
  expect(JSON.stringify(await stored(page))).not.toContain(tapped);
});

test('“Show large” is the question alone, half as large again', async () => {
  const page = await openChart(`${chart}?class=1`);
  const size = () =>
    page.locator('.lesson-ask h2').evaluate((head) => Number.parseFloat(getComputedStyle(head).fontSize));
  const usual = await size();
  await page.getByRole('button', { name: 'Show large' }).click();
  expect(await size()).toBeCloseTo(1.5 * usual, 1);
  expect(await page.locator('.frame-head').isVisible()).toBe(false);
  await page.getByRole('button', { name: 'Show at its usual size' }).click();
  expect(await size()).toBeCloseTo(usual, 1);
  expect(await page.locator('.frame-head').isVisible()).toBe(true);
});

test('each blank chart is one sheet of paper, across', async () => {
  const page = await open(`${chart}blank/celsius-2500-m/`, desk);
  const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
  expect(pdf.match(/\/Type \/Page\b/g)).toHaveLength(1);
  const [, width, height] = /\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/.exec(pdf)!;
  expect(Number(width)).toBeGreaterThan(Number(height));
});

test('hands are counted for three answers, kept nowhere, and cleared by another question', async () => {
  const page = await openChart(`${chart}?class=1`);
  await page.getByText('Count hands').click();
  const more = (letter: string) => page.getByRole('button', { name: `One hand more for ${letter}` });
  const counts = () => page.locator('.lesson-counter output').allInnerTexts();
  const box = (await more('A').boundingBox())!;
  expect(Math.min(box.width, box.height)).toBeGreaterThanOrEqual(48);
  for (const letter of ['B', 'B', 'B', 'C']) await more(letter).click();
  await page.getByRole('button', { name: 'One hand fewer for B' }).click();
  expect(await counts()).toEqual(['0', '2', '1']);
  expect(await page.getByRole('button', { name: 'One hand fewer for A' }).isDisabled()).toBe(true);
  await page.getByRole('button', { name: 'Show me without guessing' }).click();
  expect(await counts()).toEqual(['0', '2', '1']);
  await page.getByRole('button', { name: 'Another one' }).click();
  expect(await counts()).toEqual(['0', '0', '0']);
  expect(Object.values((await stored(page))['jobs'] ?? {})).toEqual([
    expect.objectContaining({ entered: {}, chosen: {}, tables: {}, notes: {} }),
  ]);
});
