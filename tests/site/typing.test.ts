/** What people type, and what fingers slip to: it is understood and said back, or one sentence beside the field says why not. */
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import {
  bar,
  cellFields,
  field,
  fill,
  fillJob,
  keptText,
  openAll,
  plain,
  readings,
  ready,
  sheet,
  step,
  useSite,
} from './support.ts';

const { open } = useSite();

async function openSheet(locale = 'en-US'): Promise<Page> {
  const page = await open(sheet, { viewport: { width: 390, height: 844 }, locale });
  await openAll(page);
  return page;
}

/** Puts a text in place of what stands in a field, and leaves the field. */
async function type(page: Page, key: string, text: string): Promise<void> {
  await field(page, key).fill(text);
  await field(page, key).blur();
}

/** The lines that stand beside a field: of its own, and below its row. */
async function said(page: Page, key: string): Promise<string> {
  const lines = await field(page, key).evaluate((input) => {
    const own = input.closest('.field')?.querySelectorAll(':scope > .field-said > :is(.echo, .check)') ?? [];
    const below = input.closest('.field-row')?.nextElementSibling;
    const all = [...own, ...(below?.matches('.echo, .check') ? [below] : [])];
    return all.map((line) => (line as HTMLElement).innerText).join(' ');
  });
  return plain(lines);
}

const understood: readonly (readonly [key: string, text: string, said: RegExp])[] = [
  ['airflow.volumeFlow', '1,200', /Read as 1,200 cfm/],
  ['airflow.volumeFlow', '1 200', /Read as 1,200 cfm/],
  ['airflow.volumeFlow', "1'200", /Read as 1,200 cfm/],
  ['airflow.volumeFlow', '1.200', /Read as 1,200 cfm/],
  ['airflow.volumeFlow', '566 L/s', /Read as 1,199 cfm/],
  ['entering.dryBulb', '72F', /Read as 72\.0 °F/],
  ['entering.dryBulb', '75.2°', /Read as 75\.2 °F/],
  ['entering.dryBulb', '22,5 C', /Read as 72\.5 °F/],
  ['entering.dryBulb', '７５', /75\.0 °F|wet bulb|still|^$/],
  ['outdoorDryBulb', '\u22125', /Read as \u22125(\.0)? °F|^$/],
  ['outdoorDryBulb', '+95', /Read as 95\.0 °F|^$/],
  ['entering.relativeHumidity', '50 %', /Read as 50 %/],
  ['altitude', '1609 m', /Read as 5,279 ft/],
  ['nominalCapacity', '10.5 kW', /Read as 3\.0 tons?/],
];

test('numbers with commas, spaces, degree signs, units and long minus signs are understood and said back', async () => {
  const page = await openSheet();
  for (const [key, text, echo] of understood) {
    await type(page, key, text);
    await expect.poll(() => said(page, key), { message: `${key}: ${text}` }).toMatch(echo);
    expect(await said(page, key), text).not.toContain('Check:');
    expect(await field(page, key).inputValue()).toBe(text);
  }
});

test('a decimal comma is a decimal point where temperatures are typed', async () => {
  const page = await openSheet('de-DE');
  await type(page, 'entering.dryBulb', '22,5');
  await expect.poll(() => said(page, 'entering.dryBulb')).toMatch(/Read as 22\.5 °C/);
});

const slips: readonly (readonly [key: string, text: string, said: RegExp])[] = [
  ['entering.dryBulb', 'warm', /Check: “warm” is not a number/],
  ['entering.dryBulb', '🔥🧊', /Check: “🔥🧊” is not a number/],
  ['entering.dryBulb', '1e999', /Check: “1e999.*” is not a number/],
  ['entering.dryBulb', '-', /Check: “-” is not a number/],
  ['entering.dryBulb', '75 76', /Check: .*more than one number|is not a number/],
  ['entering.dryBulb', '75 cfm', /Check: “75 cfm” has a unit that does not fit/],
  ['entering.dryBulb', '750', /Check: 750 °F is beyond what can be/],
  ['entering.dryBulb', 'NaN', /Check: “NaN” is not a number/],
  ['entering.dryBulb', '0x4B', /Check: “0x4B” is not a number/],
  ['entering.dryBulb', '<b>75</b>', /Check: “<b>75<\/b>” is not a number/],
  ['entering.relativeHumidity', '0.5', /Check: 0\.5 % is below what can be/],
  ['entering.relativeHumidity', '-50', /Check: -50 % is below what can be/],
  ['airflow.volumeFlow', '9'.repeat(200), /Check: .{10,}/],
  ['airflow.volumeFlow', '\u202e0021', /Check: .{10,}/],
  ['outdoorDryBulb', '１e5', /Check: .{10,}/],
];

test('words, emoji, impossible figures and two hundred digits get one sentence beside the field', async () => {
  const page = await openSheet();
  for (const [key, text, sentence] of slips) {
    await type(page, key, text);
    await expect.poll(() => said(page, key), { message: `${key}: ${text}` }).toMatch(sentence);
    expect(await field(page, key).getAttribute('aria-invalid'), text).toBe('true');
    // What was typed is quoted, now and as what was there before; nothing else may look like it.
    const quoted = [...(await page.locator('.was').allInnerTexts()), text];
    const others = quoted.reduce((rest, one) => rest.replaceAll(one, ''), await page.locator('.sheet').innerText());
    expect(others).not.toMatch(/NaN|Infinity|undefined|\[object/);
  }
});

test('a check is tied to its field for those who listen', async () => {
  const page = await openSheet();
  await type(page, 'entering.dryBulb', 'warm');
  await page.locator('.check').first().waitFor();
  const described = (await field(page, 'entering.dryBulb').getAttribute('aria-describedby'))?.split(' ') ?? [];
  const texts = await Promise.all(described.map((id) => page.locator(`[id="${id}"]`).innerText()));
  expect(texts.join(' ')).toContain('is not a number');
});

test('a figure of the table in thousands is read in full, and said so', async () => {
  const page = await openSheet();
  await fillJob(page);
  await cellFields(page).first().fill('34.6');
  await cellFields(page).first().blur();
  await expect
    .poll(() => step(page, 'rating').locator('.echo').allInnerTexts())
    .toContainEqual(expect.stringMatching(/34[.,]9 is read as 34,900/));
  await cellFields(page).nth(3).fill('34.6');
  await cellFields(page).nth(3).blur();
  await expect
    .poll(() =>
      step(page, 'rating')
        .locator('.echo')
        .allInnerTexts()
        .then((all) => plain(all.join(' '))),
    )
    .toMatch(/34\.6 is read as 34,600 Btu\/h/);
});

test('a slip in the table gets its sentence, tied to the cell', async () => {
  const page = await openSheet();
  await fillJob(page);
  const cell = cellFields(page).first();
  for (const text of ['abc', '2', '1e999', '🔥', '-33.6', '9'.repeat(200)]) {
    await cell.fill(text);
    await cell.blur();
    await expect.poll(() => cell.getAttribute('aria-invalid'), { message: text }).toBe('true');
    const described = (await cell.getAttribute('aria-describedby'))?.split(' ') ?? [];
    const sentences = await Promise.all(described.map((id) => page.locator(`[id="${id}"]`).innerText()));
    expect(sentences.join(' '), text).toMatch(/^Check: /);
    await cell.fill('33.6');
  }
});

test('nothing typed is lost on a reload, nonsense neither, and it is said again', async () => {
  const page = await openSheet();
  const typed = {
    'entering.dryBulb': 'warm',
    'entering.relativeHumidity': '  50 % ',
    'leaving.dryBulb': '🔥🧊',
    'leaving.relativeHumidity': '1e999',
    'airflow.volumeFlow': '9'.repeat(200),
    altitude: '\u22125',
    outdoorDryBulb: '9\u202e1',
  };
  for (const [key, text] of Object.entries(typed)) await type(page, key, text);
  await keptText(page, typed.outdoorDryBulb);
  await page.reload();
  await ready(page);
  await openAll(page);
  for (const [key, text] of Object.entries(typed)) await expect.poll(() => field(page, key).inputValue()).toBe(text);
  expect(await said(page, 'entering.dryBulb')).toMatch(/“warm” is not a number/);
  expect((await bar(page))[0]).toBe('Check return temperature');
});

test('the bar and the sentence hold back while the fingers are still typing', async () => {
  const page = await openSheet();
  await fill(page, readings);
  await field(page, 'leaving.relativeHumidity').click();
  await page.keyboard.press('ControlOrMeta+A');
  await page.keyboard.type('880');
  expect(await said(page, 'leaving.relativeHumidity')).not.toContain('Check:');
  expect((await bar(page))[0]).not.toMatch(/^Check /);
  await expect.poll(() => bar(page).then(([big]) => big)).toBe('Check supply humidity');
});
