/**
 * Whole stories, as they happen: a technician without a signal tests three systems, from a new job to a link; a homeowner opens
 * the link. What is measured and what it should make was computed outside this project.
 */
import type { Page } from 'playwright-core';
import { expect, inject, test } from 'vitest';
import { type GoldenJob, goldenJobRows } from '../published/data/goldenJobRows.ts';
import {
  bar,
  cellFields,
  field,
  fill,
  keptText,
  phone,
  plain,
  ready,
  sheet,
  step,
  thenOffline,
  useSite,
} from './support.ts';

const { open } = useSite();

interface System {
  readonly golden: GoldenJob;
  readonly kind: string;
  /** As typed; empty at sea level. */
  readonly altitude: string;
  /** The wet bulbs of its table, where they are not the usual ones. */
  readonly rows?: string;
  readonly basis: string;
  readonly speed: string;
  readonly tons: string;
  /** Both sides of the unit, in. w.c., and what its fan table has around them, read here and in thinner air: static pressure, cfm. */
  readonly statics: readonly [supply: string, back: string];
  readonly fan: readonly (readonly [pressure: string, cfm: string])[];
}

const [heatPump, furnace, packaged] = goldenJobRows as readonly [GoldenJob, GoldenJob, GoldenJob];
const systems: readonly System[] = [
  {
    golden: heatPump,
    kind: 'Air handler',
    altitude: '',
    basis: 'Yes (net)',
    speed: 'Yes, one speed',
    tons: '3',
    statics: ['0.3', '0.26'],
    fan: [
      ['0.5', '1215'],
      ['0.6', '1155'],
    ],
  },
  {
    golden: furnace,
    kind: 'Furnace with cased coil',
    altitude: '5280',
    rows: '59 63 67 71 °F',
    basis: 'No (gross)',
    speed: 'Yes, high stage',
    tons: '2.5',
    statics: ['0.35', '0.2'],
    fan: [
      ['0.5', '1100'],
      ['0.6', '1045'],
      ['0.7', '985'],
    ],
  },
  {
    golden: packaged,
    kind: 'Packaged unit',
    altitude: '984',
    rows: '59 63 67 71 °F',
    basis: 'Yes (net)',
    speed: 'Yes, held in test mode',
    tons: '5',
    statics: ['0.36', '0.34'],
    fan: [
      ['0.6', '1970'],
      ['0.7', '1900'],
      ['0.8', '1820'],
    ],
  },
];

const to = async (page: Page, path: string) => {
  await page.goto(inject('url') + path);
  await ready(page);
};

async function openStep(page: Page, name: string): Promise<void> {
  const head = step(page, name).locator('.step-key');
  if ((await head.getAttribute('aria-expanded')) === 'false') await head.tap();
}

async function answer(page: Page, name: string, option: string): Promise<void> {
  await openStep(page, name);
  await step(page, name).getByRole('radio', { name: option, exact: true }).check();
}

const percent = (share: number) => String(Math.round(share * 1000) / 10);

async function newJob(page: Page, { golden, kind, altitude }: System): Promise<void> {
  await page.goto(inject('url'));
  await page.getByRole('link', { name: 'Start a new job' }).tap();
  await page.waitForURL(/capacity/);
  await ready(page);
  await page.locator('summary', { hasText: 'The job and the system' }).tap();
  await page.getByRole('radio', { name: kind, exact: true }).check();
  // Outdoor air would be read as the house's: said where the unit may have a damper for it, and nowhere else.
  await expect
    .poll(() => page.getByText('Outdoor-air damper (economiser)').count())
    .toBe(kind === 'Packaged unit' ? 1 : 0);
  await page.locator('summary', { hasText: 'The job and the system' }).tap();
  await openStep(page, 'outdoors');
  await fill(page, { outdoorDryBulb: String(golden.outdoor) });
  await openStep(page, 'airflow');
  if (altitude !== '') await fill(page, { altitude });
  await keptText(page, altitude || String(golden.outdoor));
}

/** Two probes that agree: the outside figures are of readings that nothing was taken off. */
async function checkProbes(page: Page): Promise<void> {
  await to(page, 'worksheets/probes/');
  const texts = ['75', '50', '75', '50'];
  const columns = ['enteringDryBulb', 'enteringRelativeHumidity', 'leavingDryBulb', 'leavingRelativeHumidity'];
  for (const [index, column] of columns.entries())
    await page.locator(`[id="pair-return-0-${column}"]`).fill(texts[index] ?? '');
  await expect.poll(() => page.locator('.answer-sentence').innerText().then(plain)).toContain('The probes agree');
  await openStep(page, 'probesSteady');
  await page.getByRole('button', { name: 'Full speed and full airflow: now' }).tap();
  await step(page, 'probesSteady').getByText('Not before').waitFor();
}

/** The airflow by the fan table, to count on the capacity sheet. */
async function readFanTable(page: Page, { statics, fan }: System): Promise<void> {
  await to(page, 'worksheets/airflow/');
  await openStep(page, 'fanTable');
  await fill(page, { 'fanTable.supplyStatic': statics[0], 'fanTable.returnStatic': statics[1] });
  for (const [row, [pressure, flow]] of fan.entries()) {
    await page.locator(`[id="cell-fanTable-${row}-static"]`).fill(pressure);
    await page.locator(`[id="cell-fanTable-${row}-flow1"]`).fill(flow);
  }
  await page.getByRole('button', { name: 'Use it on the capacity sheet' }).tap();
  await keptText(page, 'found');
}

/** The standard air that counts on the capacity sheet, cfm. */
async function standardAir(page: Page): Promise<number> {
  await openStep(page, 'airflow');
  const said = step(page, 'airflow').getByText(/: standard air, by the fan table/);
  return Number(/([\d,]+) cfm: standard air/.exec(plain(await said.innerText()))?.[1]?.replace(',', ''));
}

/** Reads and copies the rest; gives the two lines of the bar. */
async function readAndJudge(page: Page, { golden, rows, basis, speed, tons }: System) {
  await to(page, sheet);
  // The sheet opens where it was left.
  await expect.poll(() => step(page, 'airflow').locator('.step-key').getAttribute('aria-expanded')).toBe('true');
  for (const [name, [dryBulb, humidity]] of [
    ['entering', golden.entering],
    ['leaving', golden.leaving],
  ] as const) {
    await openStep(page, name);
    await fill(page, { [`${name}.dryBulb`]: String(dryBulb), [`${name}.relativeHumidity`]: percent(humidity) });
  }
  await answer(page, 'outdoors', speed);
  await openStep(page, 'rating');
  await fill(page, { nominalCapacity: tons });
  await cellFields(page).first().waitFor();
  if (rows) {
    await step(page, 'rating').getByRole('button', { name: 'Other rows' }).tap();
    await answer(page, 'rating', rows);
  }
  // The rows of the outside job go by outdoor temperature first; a table is read by wet bulb.
  const inOrder = [...golden.ratingRows].sort((a, b) => a[1] - b[1] || a[0] - b[0]);
  for (const [index, [, , total]] of inOrder.entries()) await cellFields(page).nth(index).fill(String(total));
  await answer(page, 'rating', basis);
  await answer(page, 'sure', 'Yes, type the difference');
  await expect.poll(() => bar(page).then(([big]) => big)).toMatch(/^(Cannot tell|Short of 90 %|Meets 90 %)$/);
  return bar(page);
}

const btuPerHour = 0.293_071_07;
const cubicMetersPerSecond = 0.000_471_947_443_2;

/** Sends the job as a link: what stands behind its #. */
async function takeLink(page: Page): Promise<string> {
  await page.locator('summary', { hasText: 'Send this job as a link' }).tap();
  const link = page.locator('#send-link');
  await expect.poll(() => link.inputValue()).toContain('#job=1.');
  return new URL(await link.inputValue()).hash;
}

test('without a signal, three systems are tested from a new job to a report and a link, and who gets a link reads the same', async () => {
  const page = await open('', { ...phone, serviceWorkers: 'allow' });
  await thenOffline(page);
  let last = { hash: '', share: '' };
  for (const system of systems) {
    const { golden } = system;
    await newJob(page, system);
    await checkProbes(page);
    await readFanTable(page, system);
    const [big, small] = await readAndJudge(page, system);
    // Capacity goes with the dry air: the outside figure for the air that the fan table gives here.
    const dryAirFlow = (await standardAir(page)) * cubicMetersPerSecond * 1.2014;
    const outside = (golden.total / golden.dryAirFlow) * (dryAirFlow / btuPerHour);
    const measured = Number(
      (await page.locator('#answer .answer .ledger tr').first().locator('.number').innerText()).replace(',', ''),
    );
    expect(Math.abs(measured / outside - 1), `${golden.name}: ${measured} and ${outside}`).toBeLessThan(0.005);
    const share = /\d+ %/.exec(small)?.[0] ?? '';
    const hash = await takeLink(page);
    await page.getByRole('link', { name: /^The report, to print or to send/ }).tap();
    await page.waitForURL(/reports\/view/);
    await expect
      .poll(() => page.locator('.report-verdict').innerText().then(plain), { message: golden.name })
      .toContain(`${big.replace(/ of 90 %| 90 %/, '')}`);
    expect(plain(await page.locator('.report-verdict').innerText())).toContain(share);
    last = { hash, share };
  }

  // The owner has a signal, and another phone.
  const home = await open(`reports/view/${last.hash}`, phone);
  await expect.poll(() => home.locator('.report-verdict').innerText().then(plain)).toContain(last.share);
  const figure = home.getByRole('button', { name: /show how it came about/ }).first();
  await figure.tap();
  await home.locator('.working-list li').first().waitFor();
  await to(home, '');
  await home.getByRole('link', { name: 'Read my report' }).tap();
  await home.waitForURL(/reports\/read/);
  await ready(home);
  await field(home, 'report.share').fill('81');
  await home.getByRole('radio', { name: 'Of the nameplate’s size' }).check({ force: true });
  await expect
    .poll(() => home.locator('.read-report-answer').innerText().then(plain))
    .toContain('81 % is a share of the size on the nameplate');
});
