/** What is taken away from the air chart and brought to it: pictures, tables, links. */
import type { Page } from 'playwright-core';
import { expect, inject, test } from 'vitest';
import { chart, chartOpener, handle, linked, said, textField, typeReturn } from './moistAir.ts';
import { go, keptText, plain, ready, useSite } from './support.ts';

const { open } = useSite();
const openChart = chartOpener(open);

const line = async (page: Page, id: string) =>
  plain(await page.locator(`#${id} .step-summary, #${id} .step-head`).first().innerText());

async function saved(page: Page, key: string): Promise<{ name: string; text: string }> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: key }).click(),
  ]);
  const stream = await download.createReadStream();
  const parts: Buffer[] = [];
  for await (const part of stream) parts.push(part as Buffer);
  return { name: download.suggestedFilename(), text: Buffer.concat(parts).toString('utf8') };
}

test('the picture is a file that any program can read, with what is seen on it', async () => {
  const page = await openChart(linked);
  await page.getByText('Take it away').click();
  const { name, text } = await saved(page, 'Save the picture (SVG)');
  expect(name).toMatch(/^air-chart-\d{4}-\d\d-\d\d\.svg$/);
  const read = await page.evaluate((xml) => {
    const file = new DOMParser().parseFromString(xml, 'image/svg+xml');
    const styled = file.querySelectorAll('[style], [class], script, image').length;
    return { root: file.documentElement.localName, styled, words: file.documentElement.textContent };
  }, text);
  expect(read).toMatchObject({ root: 'svg', styled: 0 });
  for (const words of ['Moist air at 29.92', 'Outdoor air', 'Return air', 'dry bulb, °F'])
    expect(read.words).toContain(words);
  expect(text).not.toContain('Demo');
});

test('the picture of the demo says that it is invented', async () => {
  const page = await openChart(`${chart}?demo`);
  await handle(page, 'entering').waitFor();
  await page.getByText('Take it away').click();
  expect((await saved(page, 'Save the picture (SVG)')).text).toContain('Demo, invented');
});

test('the table is a CSV that comes back by pasting, and words in one change nothing', async () => {
  const page = await openChart(linked);
  await page.getByText('Take it away').click();
  const { text } = await saved(page, 'Save the table (CSV)');
  expect(text).toMatch(/^\ufeffPoint,Name,Dry bulb \(°F\),.*\r\n/);
  expect(text.split('\r\n')[3]).toMatch(/^A,Outdoor air,95\.00,75\.00,/);
  const paste = textField(page, 'air-paste');
  const put = page.getByRole('button', { name: 'Put these in place of the states' });
  await paste.fill('75,50\n80,damp');
  await put.click();
  await expect
    .poll(async () => plain(await page.locator('#air-paste-said').innerText()))
    .toBe('Check: Line 2, humidity: “damp” is not a number. The chart stays as it was.');
  expect(await said(page, 'a')).toBe('95.0 °F, 75.0 °F wet bulb');
  await paste.fill(text.replace('Outdoor air,95.00', 'Roof,97.00'));
  await put.click();
  await expect
    .poll(async () => plain(await page.locator('#air-paste-said').innerText()))
    .toContain('One state is on the chart. 3 rows were left out');
  await expect.poll(() => line(page, 'point-a')).toContain('Roof');
});

test('a link shows its chart to a visitor, who may play with it, and keeps it on request only', async () => {
  const page = await openChart(chart);
  await typeReturn(page, '71', '44');
  await keptText(page, '71');
  await go(page, linked);
  await expect.poll(() => said(page, 'a')).toBe('95.0 °F, 75.0 °F wet bulb');
  await handle(page, 'a').focus();
  await page.keyboard.press('ArrowRight');
  expect(await said(page, 'a')).toBe('95.1 °F, 75.0 °F wet bulb');
  await go(page, chart);
  await expect.poll(() => said(page, 'entering')).toBe('71.0 °F, 44.0 %');
  expect(await handle(page, 'a').count()).toBe(0);
  await go(page, linked);
  await page.getByRole('button', { name: 'Keep these states' }).click();
  await keptText(page, 'Outdoor air');
  // The address names the job instead.
  expect(new URL(page.url()).search).toMatch(/^\?job=[\w-]+$/);
  await page.reload();
  await ready(page);
  await expect.poll(() => said(page, 'a')).toBe('95.0 °F, 75.0 °F wet bulb');
});

test('the link that is offered gives the same chart again', async () => {
  const page = await openChart(linked);
  await page.getByRole('button', { name: 'Enthalpy' }).click();
  await page.getByText('Take it away').click();
  const url = await textField(page, 'air-link').inputValue();
  const other = await openChart(url.slice(inject('url').length));
  await expect.poll(() => said(other, 'a')).toBe('95.0 °F, 75.0 °F wet bulb');
  expect(await other.getByRole('button', { name: 'Enthalpy' }).getAttribute('aria-pressed')).toBe('true');
  expect(await line(other, 'process-p1')).toBe(await line(page, 'process-p1'));
});

test('a link comes in its own units, for this page alone', async () => {
  const page = await openChart(`${linked}&u=si`);
  await expect.poll(() => said(page, 'entering')).toBe('23.9 °C, 50.0 %');
  expect(await page.locator('.frame-settings > summary').innerText()).toContain('°C');
  await go(page, chart);
  expect(await page.locator('.frame-settings > summary').innerText()).toContain('°F');
});

test.each([
  ['?v=2&a=75F,50rh', 'newer version'],
  ['?v=1&a=75F,150rh', 'broken at “a=”'],
  ['?v=<script>alert(1)</script>', 'not one of this site'],
])('a link that cannot be read, %s, says so and shows the chart of one’s own', async (query, words) => {
  const page = await openChart(chart + query);
  await expect.poll(() => page.locator('.air-main .check').innerText()).toContain(words);
  await typeReturn(page);
  expect(await said(page, 'entering')).toBe('75.0 °F, 50.0 %');
});
