/** The probe sheet: both probes in one air, what they differ by, and what that does to the capacity sheet. */
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { faults } from './axe.ts';
import { pdfText } from './pdfText.ts';
import {
  bar,
  desk,
  field,
  fillJob,
  go,
  keptText,
  openAll,
  phone,
  plain,
  ready,
  sheet,
  step,
  stored,
  useSite,
} from './support.ts';

const { open } = useSite();
const probes = 'worksheets/probes/';
const columns = ['enteringDryBulb', 'enteringRelativeHumidity', 'leavingDryBulb', 'leavingRelativeHumidity'];
const cell = (page: Page, air: string, row: number, column: string) =>
  page.locator(`[id="pair-${air}-${row}-${column}"]`);

async function typePairs(page: Page, air: string, rows: readonly (readonly string[])[]): Promise<void> {
  for (const [row, texts] of rows.entries())
    for (const [at, text] of texts.entries()) await cell(page, air, row, columns[at] ?? '').fill(text);
}

const inReturn = [
  ['75.0', '50.2', '75.4', '51.4'],
  ['75.1', '50.2', '75.5', '51.4'],
] as const;
const inSupply = [['56.0', '87.0', '56.4', '88.0']] as const;

async function typed(options = phone): Promise<Page> {
  const page = await open(probes, options);
  if (options === phone) await openAll(page);
  await typePairs(page, 'return', inReturn);
  return page;
}

const sentence = async (page: Page) => plain(await page.locator('.answer-sentence').innerText());

test('two lines of readings give the difference, whether it is common, and what is done with it', async () => {
  const page = await typed();
  await expect.poll(() => sentence(page)).toBe('The probes differ by 0.4 °F and 1.2 %.');
  expect(plain(await page.locator('.answer-plain').innerText())).toMatch(/^That is more than is common/);
  expect(await bar(page)).toEqual(['0.4 °F, 1.2 % apart', '2 of 5 readings']);
  await expect
    .poll(() => page.locator('.sheet-answer').innerText().then(plain))
    .toMatch(/Return reading moved by \+0\.2 °F, \+0\.6 %/);
  await expect.poll(() => page.locator('svg.drawing[aria-label*="of 2 readings"]').count()).toBe(2);
});

test('each line keeps the time at which it was begun, and Enter leads from cell to cell', async () => {
  const page = await open(probes);
  await cell(page, 'return', 0, 'enteringDryBulb').tap();
  await page.keyboard.type('75');
  await page.keyboard.press('Enter');
  await page.keyboard.type('50');
  await expect.poll(() => cell(page, 'return', 0, 'enteringRelativeHumidity').inputValue()).toBe('50');
  expect(await page.locator('#step-probesReturn tbody th').first().innerText()).toMatch(/^\d\d:\d\d$/);
});

test('what is typed here moves the readings and narrows the range on the capacity sheet', async () => {
  const page = await open(sheet);
  await openAll(page);
  await fillJob(page);
  await keptText(page, '34.9');
  await go(page, probes);
  await openAll(page);
  await typePairs(page, 'return', inReturn);
  await typePairs(page, 'supply', inSupply);
  const answer = () => page.locator('.sheet-answer').innerText().then(plain);
  await expect
    .poll(answer)
    .toContain('Still to do here: five return-air readings, the wait until steady, the end check.');
  await page.getByRole('button', { name: 'Full speed and full airflow: now' }).tap();
  await expect
    .poll(answer)
    .toMatch(/Uncorrected, these readings say 28,900 Btu\/h\. Corrected they say 3\d,\d00 Btu\/h: \+\d\.\d %/);
  await keptText(page, '88.0');
  await go(page, sheet);
  await openAll(page);
  await expect.poll(() => bar(page).then(([big]) => big)).toBe('Cannot tell');
  await expect
    .poll(answer)
    .toMatch(/Waiting until steady: not before \d\d:\d\d, then ten minutes of readings, to \d\d:\d\d\. To the wait/);
  await expect
    .poll(() => step(page, 'sure').innerText().then(plain))
    .toMatch(
      /From the side-by-side check: the supply probe showed 0\.4 °F and 1\.2 % more\. Each reading is moved by half of it\./,
    );
});

test('exchanging the probes in the ducts compares them in both airs', async () => {
  const page = await open(probes);
  await openAll(page);
  await step(page, 'probesReturn').getByText('Other ways').tap();
  await page.getByRole('radio', { name: 'Exchanged in the ducts' }).check();
  await typePairs(page, 'swap', [
    ['75', '50', '56.4', '89'],
    ['75.4', '51', '56', '88'],
  ]);
  await expect.poll(() => sentence(page)).toBe('The probes differ by 0.4 °F and 1.0 %.');
  await expect.poll(() => step(page, 'probesSupply').innerText().then(plain)).toMatch(/one reading: 0\.4 °F, 1\.0 %/);
});

test('a second look at the end that differs is said, and widens the range', async () => {
  const page = await typed();
  await typePairs(page, 'end', [['74', '50', '75', '51.2']]);
  await expect
    .poll(() => page.locator('.sheet-answer').innerText().then(plain))
    .toMatch(
      /Since the beginning they have moved by 0\.6 °F and 0\.0 %\. More than 0\.2 °F or 1 %: the range is widened by it\./,
    );
});

test('nonsense gets its sentence under the lines, is kept, and does not count', async () => {
  const page = await typed();
  await cell(page, 'return', 1, 'leavingDryBulb').fill('warm');
  await cell(page, 'return', 1, 'leavingDryBulb').blur();
  await expect.poll(() => step(page, 'probesReturn').innerText()).toMatch(/Reading 2: “warm” is not a number/);
  await expect.poll(() => bar(page).then(([, small]) => small)).toBe('1 of 5 readings');
  await keptText(page, 'warm');
});

test('points of the supply plane give a mean, which becomes the supply temperature when somebody says so', async () => {
  const page = await open(probes);
  await openAll(page);
  for (const [row, text] of ['55', '56', '57'].entries()) await page.locator(`#point-${row}`).fill(text);
  await expect
    .poll(() => step(page, 'probesPoints').innerText().then(plain))
    .toMatch(/Check: 3 points: mean 56\.0 °F, spread 2\.0 °F\. A laboratory allows a spread of 1\.5 °F\./);
  await page.getByRole('button', { name: 'Take the mean as the supply temperature' }).tap();
  await keptText(page, '56.0');
  await go(page, sheet);
  await openAll(page);
  await expect.poll(() => field(page, 'leaving.dryBulb').inputValue()).toBe('56.0');
});

const two = (count: number) => String(count).padStart(2, '0');
/** Forty minutes of a logger, a reading every ten seconds: the supply air cools down to 56 °F, and one line is spoilt. */
const record = [
  'Time,Return T (°F),Return RH (%),Supply T (°F),Supply RH (%),Outdoor (°F)',
  ...Array.from({ length: 240 }, (_, row) => {
    const time = `${two(14 + Math.floor(row / 360))}:${two(Math.floor(row / 6) % 60)}:${two((row % 6) * 10)}`;
    const supply = 56 + 12 * Math.exp(-row / 18);
    return row === 60 ? `2026-08-12 ${time},75,--,56,88,91` : `2026-08-12 ${time},75,50,${supply.toFixed(2)},88,91`;
  }),
].join('\n');

async function openRecord(page: Page): Promise<void> {
  const buffer = Buffer.from(record);
  await page.locator('#open-record').setInputFiles({ name: 'logger.csv', mimeType: 'text/csv', buffer });
  await page.locator('.steady-result').waitFor();
}

test('a logger’s record is recognised, judged, drawn and taken over: its means go to the capacity sheet', async () => {
  const page = await open(probes);
  await openAll(page);
  await page.locator('#open-record').waitFor({ state: 'attached' });
  await openRecord(page);
  expect(
    await page
      .locator('.record-column select')
      .evaluateAll((all) => all.map((one) => (one as HTMLSelectElement).value)),
  ).toEqual(['time', 'entering.dryBulb', 'entering.humidity', 'leaving.dryBulb', 'leaving.humidity', 'outdoorDryBulb']);
  const said = () => page.locator('.steady-result').innerText().then(plain);
  await expect.poll(said).toMatch(/^Steady since 14:\d\d\./);
  expect(await said()).toMatch(/One row could not be read: line 62 \(“--”\)\./);
  const plot = page.locator('.steady-result svg.drawing');
  expect(plain((await plot.getAttribute('aria-label')) ?? '')).toMatch(/over 40 minutes.*Steady since 14:\d\d/);
  await page.locator('#record-moment').focus();
  await page.keyboard.press('Home');
  await expect.poll(said).toMatch(/14:00: return temperature 75\.0 °F, .*supply temperature 68\.0 °F/);
  await page.getByRole('button', { name: 'Take these means to the capacity sheet' }).tap();
  await keptText(page, '56.00');
  await go(page, sheet);
  await openAll(page);
  await expect.poll(() => field(page, 'leaving.dryBulb').inputValue()).toBe('56.00');
  await expect.poll(() => field(page, 'outdoorDryBulb').inputValue()).toBe('91.00');
});

/** Twenty minutes of one probe, a reading every ten seconds, in air that swings by some degrees. */
function ownRecord(offset: number, behind: number): Buffer {
  const rows = Array.from({ length: 121 }, (_, row) => {
    const at = new Date(Date.UTC(2026, 7, 12, 14) + (row * 10 - behind) * 1000).toISOString();
    return `${at},${(74 + 3 * Math.sin(row / 9) + offset).toFixed(2)},${50 + offset}`;
  });
  return Buffer.from(['Time,T (°F),RH (%)', ...rows].join('\n'));
}

test('the records of both probes are brought to one clock, and their readings taken over as five means', async () => {
  const page = await open(probes);
  await openAll(page);
  await step(page, 'probesReturn').getByText('From their records').tap();
  const record = (name: string, buffer: Buffer) => ({ name, mimeType: 'text/csv', buffer });
  const files = [record('a.csv', ownRecord(0, 0)), record('b.csv', ownRecord(0.5, 60))];
  const field = page.locator('#open-pairs-return');
  await field.waitFor({ state: 'attached' });
  await field.setInputFiles(files);
  const said = () => step(page, 'probesReturn').innerText().then(plain);
  await expect
    .poll(said)
    .toMatch(
      /60 pairs of readings, as the means of five parts: differ by 0\.5 °F\. The clock of the taped probe is 60 s behind/,
    );
  await page.getByRole('button', { name: 'Take these readings' }).tap();
  await expect.poll(() => sentence(page)).toBe('The probes differ by 0.5 °F and 0.5 %.');
  await expect.poll(() => cell(page, 'return', 4, 'leavingRelativeHumidity').inputValue()).toBe('50.50');
});

test('what a probe showed over the salt is taken off both readings, and said', async () => {
  const page = await typed();
  await page.getByRole('radio', { name: 'Over a saturated salt' }).check();
  const shown = page.locator('#standard-leavingRelativeHumidity');
  await shown.fill('79');
  await expect
    .poll(() => step(page, 'probesShared').innerText().then(plain))
    .toMatch(/Together they read 3\.1 % too high: .* Both readings are lowered by it, and ±1\.8 % stays in doubt\./);
  await expect
    .poll(() => page.locator('.sheet-answer').innerText().then(plain))
    .toMatch(/Of that, −3\.1 % on both by what they showed of a standard\./);
});

test('columns put right by hand are judged anew, and a file that is none gets its sentence', async () => {
  const page = await open(probes);
  await openAll(page);
  await page.locator('#open-record').waitFor({ state: 'attached' });
  await openRecord(page);
  await page.locator('#record-column-0').selectOption('none');
  await expect.poll(() => step(page, 'probesSteady').innerText()).toContain('Say which column is the time');
  const buffer = Buffer.from('a letter to nobody');
  await page.locator('#open-record').setInputFiles({ name: 'letter.txt', mimeType: 'text/plain', buffer });
  await expect.poll(() => step(page, 'probesSteady').innerText()).toContain('No row with a time and a figure');
});

test('the clock of the wait is kept with the job, and survives a page that is opened anew', async () => {
  const page = await open(probes);
  await openAll(page);
  await page.getByRole('button', { name: 'Full speed and full airflow: now' }).tap();
  const said = () => step(page, 'probesSteady').innerText().then(plain);
  await expect.poll(said).toMatch(/Not before \d\d:\d\d; then ten minutes of readings, to \d\d:\d\d\./);
  const [before] = /Not before \d\d:\d\d/.exec(await said()) ?? [];
  await expect.poll(() => stored(page).then((all) => JSON.stringify(all))).toContain('steady.startedAt');
  await page.reload();
  await ready(page);
  await openAll(page);
  await expect.poll(said).toContain(before ?? '–');
});

test.each([
  ['phone', phone],
  ['desk', desk],
])('typed and unfolded on a %s it is clean in every light, and nothing is wider than the page', async (_, options) => {
  const page = await typed(options);
  await page.locator('.sheet-margin').waitFor();
  await page.locator('.sheet-answer summary').first().click();
  await page.locator('#open-record').waitFor({ state: 'attached' });
  await openRecord(page);
  await page.locator('.steady-result summary').click();
  expect(await faults(page, 'unfolded')).toEqual([]);
  const overflow = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  expect(overflow).toBeLessThanOrEqual(0);
});

test('on paper the differences and what is done with them are text', async () => {
  const page = await typed(desk);
  await page.locator('.sheet-margin').waitFor();
  const paper = plain(pdfText(await page.pdf({ format: 'Letter' })));
  for (const text of ['The probes differ by 0.4 °F and 1.2 %.', 'Return reading moved by', 'JCGM 100'])
    expect(paper).toContain(text);
});
