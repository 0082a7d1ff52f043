/** The report: the figures of the sheet on two pages of either paper, and a square from which a phone opens them again. */
import jsQR from 'jsqr';
import type { Page } from 'playwright-core';
import sharp from 'sharp';
import { expect, test } from 'vitest';
import { demoJob } from '../../src/job/demo.ts';
import { applyEdits, typed } from '../../src/job/edit.ts';
import { writeJobFile } from '../../src/job/jobFile.ts';
import { decodeJob, encodeJob } from '../../src/job/linkText.ts';
import { lockEdits, sheetCode } from '../../src/job/lock.ts';
import { judged } from '../../src/job/log/judgeLog.ts';
import { traceEdit } from '../../src/job/log/trace.ts';
import { meansEdits } from '../../src/job/sure/steadyMeans.ts';
import type { Edit, Job } from '../../src/job/types.ts';
import { faults } from './axe.ts';
import { pdfText } from './pdfText.ts';
import { desk, go, keptText, phone, plain, sheet, stored, useSite } from './support.ts';

const { open } = useSite();

const report = 'reports/view/';
/** A query of its own makes each link another page: what stands behind the # alone would not load one. */
let asked = 0;
const linkTo = async (job: Job, path = report) => `${path}?of=${++asked}#job=${await encodeJob(job, true)}`;
const says = (page: Page) => page.locator('.report-verdict .answer-sentence, .report-incomplete h2').innerText();

const at = '2026-08-12T14:32:00';
const { invented: _, ...plainDemo } = demoJob;
const unlocked: Job = {
  ...plainDemo,
  id: 'own',
  notes: { address: '14 Sample Lane', tester: 'A. Tester', 'report.next': 'We come back in September.' },
};
const own = applyEdits(unlocked, lockEdits(unlocked, '2026-08-12T14:40:00'));
const changed = (...edits: readonly Edit[]): Job => applyEdits(unlocked, edits);
const airflow = (text: string) => typed(unlocked, 'airflow.volumeFlow', text, 'cfm', at);

/** Each page of a PDF is an object of its own. */
const pagesOf = (pdf: Buffer) => pdf.toString('latin1').match(/\/Type\s*\/Page\b(?!s)/g)?.length;

/** What a decoder reads from what a printer would put down at 300 dots an inch. */
async function squareOn(page: Page): Promise<string | undefined> {
  await page.emulateMedia({ media: 'print' });
  const box = await page.locator('.report-square').boundingBox();
  if (!box) throw new Error('no square');
  expect(box.width / 96).toBeCloseTo(50 / 25.4, 1);
  const white = 12;
  const clip = { x: box.x - white, y: box.y - white, width: box.width + 2 * white, height: box.height + 2 * white };
  const picture = await page.screenshot({ clip, fullPage: true });
  const { data, info } = await sharp(picture).ensureAlpha().raw().toBuffer({ resolveWithObject: true });
  return jsQR(new Uint8ClampedArray(data), info.width, info.height)?.data;
}

test('on Letter and on A4 it is two pages with all that the verdict rests on, and its square is read back from 300 dots an inch', async () => {
  const page = await open(await linkTo(own), { ...desk, deviceScaleFactor: 300 / 96 });
  await page.locator('.report-square').waitFor();
  await page.locator('.report-trade').waitFor();
  const code = sheetCode(own);
  const onPaper = [
    ...['14 Sample Lane', 'A. Tester', 'We come back in September.', '28,900', '31,400', 'locked 12 August 2026'],
    ...['75.0 °F', '88 %', '1,180 cfm', '32,900', 'Taken for granted', 'Tester, date', 'Page 2 of 2'],
    `${code.slice(0, 3)} ${code.slice(3)}`,
  ];
  for (const format of ['Letter', 'A4'] as const) {
    const pdf = await page.pdf({ format });
    expect(pagesOf(pdf), format).toBe(2);
    const paper = plain(pdfText(pdf));
    expect(onPaper.filter((text) => !paper.includes(text))).toEqual([]);
    expect(paper).not.toContain('Print, or save');
  }
  const link = new URL((await squareOn(page)) ?? 'about:blank');
  expect(link.pathname).toBe('/reports/view/');
  const found = await decodeJob(link.hash.replace('#job=', ''));
  expect(found.ok && { ...found.job.entered, notes: found.job.notes.address }).toEqual({
    ...own.entered,
    notes: undefined,
  });
});

test('opened from a link on a phone it is the same report, live: a number that is touched shows how it came about', async () => {
  const page = await open(await linkTo(own), phone);
  const share = page.locator('.report-verdict > div > p').nth(1);
  await expect.poll(async () => plain(await share.innerText())).toMatch(/Cannot tell: 92 % of what it should make/);
  const figure = page.getByRole('button', { name: /^28,900.*show how it came about/ });
  await figure.press('Enter');
  await page.locator('#came-measured .working-list li').first().waitFor();
  expect(await page.locator('#came-measured').innerText()).toContain('ASHRAE 37');
  expect(await faults(page, 'the report on a phone', ['dark'])).toEqual([]);
  await figure.press('Enter');
  await expect.poll(() => page.locator('#came-measured').count()).toBe(0);
  expect(await stored(page).then(({ jobs }) => jobs ?? {})).toEqual({});
  // The ends are those of the sheet, by whichever way they were found.
  const beside = await open(await linkTo(own, sheet), desk);
  const onSheet = beside.locator('.answer-verdict');
  const ends = (text: string) => plain(text).match(/\d+ %?/g);
  await expect.poll(async () => ends(await onSheet.innerText())).toEqual(ends(await share.innerText()));
});

/** The job with the means and the trace of an hour that came to rest after a start. */
function recorded(): Job {
  const time = Array.from({ length: 361 }, (_, i) => 1_786_543_200 + 10 * i);
  const around = (middle: number, high: number) => time.map((t) => middle + high * Math.sin(t / 97));
  const columns = {
    'entering.dryBulb': around(24, 0.05),
    'entering.humidity': around(0.5, 0.003),
    'leaving.dryBulb': around(13, 0.1).map((t, i) => t + 6 * Math.exp(-i / 20)),
    'leaving.humidity': around(0.88, 0.004),
  };
  const measure = 'relativeHumidity';
  const found = judged({ time, columns, measure, startedAt: null }, [], true);
  if (typeof found === 'string') throw new Error(found);
  const { steadiness, trace } = found;
  const how = { stamp: String(steadiness.window.to), at: '2026-08-12T15:00:00', measure, system: 'ip' } as const;
  return changed(...meansEdits(unlocked, steadiness, how), traceEdit(trace, steadiness, measure));
}

test('with the record of a logger it shows how steady it was, is still two pages, and still has its square', async () => {
  const job = recorded();
  const page = await open('jobs/', desk);
  const file = { name: 'job.json', mimeType: 'application/json', buffer: Buffer.from(writeJobFile([job])) };
  await page.locator('input[type=file]').first().setInputFiles(file);
  await page.getByRole('button', { name: 'Take them in' }).click();
  await page.locator(`a[href*="${job.id}"]`).first().waitFor();
  await go(page, `${report}?job=${job.id}`);
  await page.locator('.report-square').waitFor();
  await page.locator('.report-trade .title-block').waitFor();
  for (const format of ['Letter', 'A4'] as const) {
    const pdf = await page.pdf({ format });
    expect(pagesOf(pdf), format).toBe(2);
    expect(plain(pdfText(pdf))).toContain('How steady it was');
  }
});

const states: readonly (readonly [name: string, job: Job, sentence: string, also: string])[] = [
  ['meets the line', changed(airflow('1,450')), 'It delivers what it should.', 'the system makes what it should'],
  ['is short', changed(airflow('900')), 'It delivers less than it should', 'less than it should'],
  ['could be told with a check', changed(airflow('1,000')), 'These readings cannot tell.', 'is not a fail'],
  ['is more than it can make', changed(airflow('1,600')), 'higher than this system can make', 'some reading is off'],
  [
    'was not at full speed',
    changed({ slot: 'chosen', key: 'fullSpeed', to: 'unsure' }),
    'No verdict.',
    'Why there is no verdict',
  ],
  [
    'is an estimate',
    changed(
      { slot: 'chosen', key: 'rating.from', to: 'generic' },
      typed(unlocked, 'rating.certified', '34,000', 'btuh', at),
    ),
    '',
    'An estimate: published curves',
  ],
  ['has no table', changed({ slot: 'tables', key: 'rating', to: undefined }), 'No report yet', 'the maker’s table'],
  ['is invented', demoJob, 'Too near the line to call.', 'Invented: a system, a house and readings'],
];

test('each outcome has its sentence, and a job that lacks something says what', async () => {
  const page = await open('', desk);
  for (const [name, job, sentence, also] of states) {
    await go(page, await linkTo(job));
    await page.locator('.report-verdict, .report-incomplete').first().waitFor();
    await expect.poll(() => says(page), { message: name }).toContain(sentence);
    const text = plain(await page.locator('.report').innerText());
    expect(text, name).toContain(also);
    // Both pages of what is invented say so, and there are two of them.
    const papers = name === 'has no table' ? 0 : 2;
    await expect.poll(() => page.locator('.report-page').count(), { message: name }).toBe(papers);
    await expect
      .poll(() => page.locator('.report-page .invented').count(), { message: name })
      .toBe(name === 'is invented' ? 2 : 0);
    // Where the sheet has much to remark it may take a third.
    const remarks = await page.getByText('What the sheet remarks').count();
    if (papers > 0 && remarks === 0) expect(pagesOf(await page.pdf({ format: 'Letter' })), name).toBe(papers);
  }
});

test('without a job it says what is needed, and what is typed on it stands on both of its pages', async () => {
  const page = await open(report, desk);
  await page.locator('.report-incomplete').waitFor();
  expect(plain(await page.locator('.report-incomplete').innerText())).toContain('return temperature, return humidity');
  expect(await faults(page, 'no report yet', [])).toEqual([]);
  await go(page, `${report}?demo`);
  await page.getByText('Words on the report').click();
  await page.locator('[id="note-report.remarks"]').fill('x');
  await page.locator('dialog[open]').getByRole('button', { name: 'Copy the demo' }).click();
  await page.locator('.notices', { hasText: 'A copy of the demo' }).waitFor();
  await page.locator('[id="note-report.remarks"]').fill('Filter changed before the test.');
  await expect.poll(() => page.locator('.report-trade').innerText()).toContain('Filter changed before the test.');
  await keptText(page, 'Filter changed before the test.');
  await page.reload();
  await expect.poll(() => page.locator('.report-trade').innerText()).toContain('Filter changed before the test.');
});

test('the blank field sheet is one page of either paper, in the units of the reader', async () => {
  const page = await open('jobs/field-sheet/', desk);
  for (const format of ['Letter', 'A4'] as const) {
    const pdf = await page.pdf({ format });
    expect(pagesOf(pdf), format).toBe(1);
    const paper = plain(pdfText(pdf));
    for (const text of ['1 Before you start', '7 Before you leave', 'Airflow, cfm', 'Notes'])
      expect(paper).toContain(text);
    expect(paper).not.toContain('L/s');
  }
  await page.evaluate(() => {
    document.documentElement.dataset['units'] = 'si';
  });
  const inSi = await page.pdf({ format: 'A4' });
  expect(pagesOf(inSi)).toBe(1);
  expect(plain(pdfText(inSi))).toContain('Airflow, L/s');
});
