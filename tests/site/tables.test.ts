/** A whole table of the maker: pasted, opened, confirmed, kept, and used again in another job. */
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { asText, layouts, plainPrint } from '../job/tableImport/sheets.ts';
import {
  bar,
  choose,
  desk,
  fill,
  fillJob,
  go,
  openAll,
  openMore,
  plain,
  readings,
  ready,
  sheet,
  step,
  stored,
  useSite,
} from './support.ts';

const { open } = useSite();

const block = `Invented machine, net
Airflow 1200 cfm
EWB °F	75	85	95	105
57	32.1	30.6	29.0	27.4
62	33.0	31.5	29.9	28.3
67	36.1	34.6	32.9	31.2`;
const pasteBox = (page: Page) => page.locator('#table-paste');
const said = async (page: Page) => plain(await page.locator('.table-import [role=status]').first().innerText());
const useKey = (page: Page) => page.getByRole('button', { name: 'Use this table' });
const share = async (page: Page) => (await bar(page))[0];

/** A whole job with its cells typed, and the paste open. */
async function jobWithCells(): Promise<{ page: Page; before: string }> {
  const page = await open(sheet);
  await openAll(page);
  await fillJob(page);
  await expect.poll(() => share(page)).toMatch(/^\d\d % of/);
  const before = await share(page);
  await openPaste(page);
  return { page, before };
}

async function openPaste(page: Page): Promise<void> {
  await openMore(page);
  await step(page, 'rating').getByText('Paste or open a whole table').click();
  await pasteBox(page).waitFor();
}

async function paste(page: Page, text: string): Promise<void> {
  await pasteBox(page).fill(text);
  await page.locator('.meanings').waitFor();
}

test('a pasted table changes nothing until it is confirmed, and then it is what the job reads', async () => {
  const { page, before } = await jobWithCells();
  await paste(page, block);
  expect(await said(page)).toBe('12 lines of figures');
  expect(await share(page)).toBe(before);
  await useKey(page).click();
  await expect.poll(() => share(page)).not.toBe(before);
  const rating = step(page, 'rating');
  expect(await rating.locator('.cell-fields').count()).toBe(0);
  const read = await rating.locator('.table-in-use tbody tr').allInnerTexts();
  expect(read.map(plain)).toEqual([
    '85.0 °F 62.0 °F 1,200 cfm 31.5 kBtu/h',
    '85.0 °F 67.0 °F 1,200 cfm 34.6 kBtu/h',
    '95.0 °F 62.0 °F 1,200 cfm 29.9 kBtu/h',
    '95.0 °F 67.0 °F 1,200 cfm 32.9 kBtu/h',
  ]);
  const after = await share(page);
  await expect.poll(async () => JSON.stringify((await stored(page))['jobs'])).toContain('ratingSheet');
  await page.reload();
  await ready(page);
  await expect.poll(() => share(page)).toBe(after);
});

test('the cells typed before come back when the whole table is left, and the table when it is asked for again', async () => {
  const { page, before } = await jobWithCells();
  await paste(page, block);
  await useKey(page).click();
  await expect.poll(() => share(page)).not.toBe(before);
  const after = await share(page);
  await page.getByRole('button', { name: 'Read the cells instead' }).click();
  await expect.poll(() => share(page)).toBe(before);
  await page.getByRole('button', { name: 'Read the whole table again' }).click();
  await expect.poll(() => share(page)).toBe(after);
});

test('a table that is not one is refused in a sentence, and the one before stays', async () => {
  const { page, before } = await jobWithCells();
  await pasteBox(page).fill('Our machines are the best.\nAsk your dealer.');
  await expect.poll(() => said(page)).toContain('Check: Nothing in it looks like a table of capacities.');
  expect(await useKey(page).count()).toBe(0);
  await pasteBox(page).fill('<html><table><tr><td onclick=alert(1)>85</td></tr></table>');
  await expect.poll(() => said(page)).toContain('source of a web page');
  expect(await share(page)).toBe(before);
});

test('what is obvious is put right at a tap, named by its row and column', async () => {
  const { page } = await jobWithCells();
  await paste(page, block.replace('29.9', '29900').replace('34.6', '34.6 peak'));
  const findings = page.locator('.findings');
  await expect
    .poll(async () => plain(await findings.innerText()))
    .toContain('Row 5, column D: 29900 stands among others as 29900 Btu/h would.');
  expect(plain(await findings.innerText())).toContain('Row 6, column C: “34.6 peak” is probably 34.6.');
  await findings.getByRole('button', { name: 'Put all 2 right' }).click();
  await expect.poll(() => findings.count()).toBe(0);
  await useKey(page).click();
  await page.locator('.table-in-use tbody').waitFor();
  expect(plain(await page.locator('.table-in-use').innerText())).toContain('29.9');
});

test('a mistyped digit among its neighbours is named before the table is used', async () => {
  const { page } = await jobWithCells();
  await paste(page, `${block}\n72	39.2	37.5	53.7	33.8`);
  await expect
    .poll(async () => plain(await page.locator('.findings').innerText()))
    .toContain('Total 53.7 kBtu/h at outdoors 95.0 °F, wet bulb 72.0 °F, 1,200 cfm: its neighbours make it about');
});

test('a head that is not understood can be said, and until then the table cannot be used', async () => {
  const { page, before } = await jobWithCells();
  await paste(page, 'A\tB\tC\n62\t1200\t31.5\n67\t1200\t34.6\n72\t1200\t37.5');
  // The key is there to be reached, and says why it does nothing.
  await useKey(page).focus();
  await page.keyboard.press('Enter');
  expect(await share(page)).toBe(before);
  expect(plain(await page.locator('#table-cannot').innerText())).toBe('Check: This cannot be used yet: see above.');
  await page.getByRole('button', { name: 'Keep the one before' }).click();
  await expect.poll(() => page.locator('.meanings').count()).toBe(0);
  expect(await pasteBox(page).inputValue()).toBe('');
  expect(await share(page)).toBe(before);
});

test('a file comes in by the worker, a large one too', async () => {
  const { page } = await jobWithCells();
  const text = asText(layouts.tidy.rows({ ...plainPrint, separator: ';', decimal: ',' }), {
    ...plainPrint,
    separator: ';',
  });
  const file = page.locator('.file-key input');
  await file.setInputFiles({ name: 'table.csv', mimeType: 'text/csv', buffer: Buffer.from(text) });
  await expect.poll(() => said(page), { timeout: 15_000 }).toBe('80 lines of figures');
  const rows = Array.from({ length: 51_000 }, () => '85;62;31,5').join('\n');
  await file.setInputFiles({ name: 'large.csv', mimeType: 'text/csv', buffer: Buffer.from(rows) });
  await expect.poll(() => said(page), { timeout: 15_000 }).toContain('more than 50,000 rows');
  await file.setInputFiles({ name: 'book.xlsx', mimeType: 'application/zip', buffer: Buffer.from('PK\u0003\u0004xx') });
  await expect.poll(() => said(page)).toContain('workbook');
});

test('a long reading says how far it is and can be stopped; the table before stays', async () => {
  const { page, before } = await jobWithCells();
  const row = Array.from({ length: 60 }, (_, at) => String(28 + (at % 9) / 10)).join(';');
  const buffer = Buffer.from(Array(49_000).fill(row).join('\n'));
  await page.locator('.file-key input').setInputFiles({ name: 'long.csv', mimeType: 'text/csv', buffer });
  await page.getByRole('button', { name: 'Stop reading' }).click();
  await expect.poll(() => page.getByRole('button', { name: 'Stop reading' }).count()).toBe(0);
  expect(await page.locator('.meanings').count()).toBe(0);
  expect(await share(page)).toBe(before);
  // The next one is read as ever.
  await paste(page, block);
  await expect.poll(() => said(page)).toBe('12 lines of figures');
});

test('a table typed once is offered to a later job with the same models, and can be removed and put back', async () => {
  const { page } = await jobWithCells();
  await page.locator('#table-paste').waitFor();
  await paste(page, block);
  await page.locator('#table-outdoor-model').fill('SAMPLE-36');
  await page.locator('#table-page').fill('sample data, page 14');
  await useKey(page).click();
  await expect.poll(async () => JSON.stringify((await stored(page))['tables'])).toMatch(/ratingSheet.*SAMPLE-36/);
  await go(page, `${sheet}?new`);
  await openAll(page);
  const rating = step(page, 'rating');
  await rating.getByText('Use a table from an earlier job (1)').click();
  const list = rating.locator('.kept-tables');
  expect(plain(await list.innerText())).toMatch(
    /^SAMPLE-36 whole table, 12 lines, typed on \d+ \w+ \d{4}, from sample data, page 14/,
  );
  await rating.getByRole('button', { name: 'Remove: SAMPLE-36' }).click();
  await expect.poll(() => list.count()).toBe(0);
  await rating.getByRole('button', { name: 'Put it back' }).click();
  await expect.poll(() => list.count()).toBe(1);
  await page.getByText('The job and the system').click();
  await page.locator('[id="note-outdoor.model"]').fill('sample 36');
  await expect.poll(async () => plain(await rating.innerText())).toContain('There is a table here for these models');
  await list.getByRole('button', { name: 'Use it: SAMPLE-36' }).click();
  await fill(page, readings);
  await fill(page, { outdoorDryBulb: '91' });
  await choose(page, 'outdoors', 'Yes, one speed');
  await expect.poll(() => share(page)).toMatch(/^\d+ % of/);
  expect(plain(await rating.locator('.table-in-use').innerText())).toContain('from sample data, page 14');
});

test('the table is saved as CSV and comes back the same', async () => {
  const { page } = await jobWithCells();
  await paste(page, asText(layouts['blocks in merged columns'].rows(plainPrint), plainPrint));
  await useKey(page).click();
  const read = page.locator('.table-in-use tbody');
  await read.waitFor();
  const before = await read.innerText();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save as CSV' }).click(),
  ]);
  const parts: Buffer[] = [];
  for await (const part of await download.createReadStream()) parts.push(part as Buffer);
  const text = Buffer.concat(parts).toString('utf8');
  expect(download.suggestedFilename()).toMatch(/^rating-table-\d{4}-\d\d-\d\d\.csv$/);
  expect(text.split('\r\n')[0]).toBe(
    '\ufeffOutdoor dry bulb (°F),Entering wet bulb (°F),Entering dry bulb (°F),Airflow (cfm),Total capacity (MBh),Sensible (MBh),Power (kW)',
  );
  await paste(page, text);
  await useKey(page).click();
  await expect.poll(() => read.innerText()).toBe(before);
});

test('the whole of it works from the keyboard, fits a phone, and passes what a machine can check', async () => {
  const { page } = await jobWithCells();
  await paste(page, block.replace('29.9', '29900'));
  const width = await page.evaluate(() => [document.documentElement.scrollWidth, innerWidth]);
  expect(width[0]).toBeLessThanOrEqual(width[1] ?? 0);
  const { violations } = await new AxeBuilder({ page }).include('#step-rating').setLegacyMode().analyze();
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`)).toEqual([]);
  const small = await page
    .locator('.table-import :is(button, select, .file-key)')
    .evaluateAll((all) =>
      all.filter((one) => one.getBoundingClientRect().height < 44).map((one) => one.outerHTML.slice(0, 80)),
    );
  expect(small).toEqual([]);
  await page.locator('.findings button').first().focus();
  await page.keyboard.press('Enter');
  await expect.poll(() => page.locator('.findings').count()).toBe(0);
  await useKey(page).focus();
  await page.keyboard.press('Enter');
  await page.locator('.table-in-use').waitFor();
});

test('on a desk the paste stands in its step, and a table in use is printed with its figures', async () => {
  const page = await open(sheet, desk);
  await fillJob(page);
  await openPaste(page);
  await paste(page, block);
  await useKey(page).click();
  await page.locator('.table-in-use tbody tr').first().waitFor();
  await page.emulateMedia({ media: 'print' });
  expect(await page.locator('.printed-rating tbody tr').first().isVisible()).toBe(true);
  expect(plain(await page.locator('.printed-rating').innerText())).toContain(
    'Is the blower’s heat already taken off? Yes (net)',
  );
  expect(await page.locator('.table-import').isVisible()).toBe(false);
});
