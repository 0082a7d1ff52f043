/**
 * An open step fits a phone: of its 844 px some 664 are left between the line of the job and the bar. Each is measured when it
 * is opened and as it is typed. Left out: grids of a traverse or of several grilles, which grow with what is measured; and what
 * an airflow comes to, which stands below what is typed.
 */
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { cellFields, cells, choose, fill, plain, readings, sheet, step, useSite } from './support.ts';

const { open } = useSite();
const most = 664;

async function openStep(page: Page, name: string): Promise<void> {
  const head = step(page, name).locator('.step-key');
  if ((await head.getAttribute('aria-expanded')) === 'false') await head.click();
}

/** Leaves the field, so that everything is said, and notes a step that is too long. */
class Rule {
  readonly found: string[] = [];
  readonly page: Page;
  constructor(page: Page) {
    this.page = page;
  }
  async hold(name: string, state: string): Promise<void> {
    await this.page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
    await this.page.evaluate(() => new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve))));
    const height = await step(this.page, name).evaluate((one) => {
      const result = one.querySelector('.airflow-result')?.getBoundingClientRect().height ?? 0;
      return one.getBoundingClientRect().height - result;
    });
    expect(height, `${name} ${state} is drawn`).toBeGreaterThan(150);
    if (height > most) this.found.push(`${name} ${state}: ${Math.round(height)}`);
  }
}

test('no step of the capacity sheet is longer than a phone, from an empty sheet to a verdict', async () => {
  const rule = new Rule(await open(sheet));
  const { page } = rule;
  const names = ['entering', 'leaving', 'airflow', 'outdoors', 'rating', 'sure'] as const;
  for (const name of names) {
    await openStep(page, name);
    await rule.hold(name, 'empty');
  }
  for (const [key, text] of Object.entries(readings)) {
    const [name = ''] = key.split('.');
    await openStep(page, name);
    await fill(page, { [key]: text });
    await rule.hold(name, `with ${key}`);
  }
  await page.locator('select').selectOption('flowGrid');
  await step(page, 'airflow').getByRole('button', { name: 'Change', exact: true }).click();
  await rule.hold('airflow', 'with its place and kind');
  await openStep(page, 'outdoors');
  await fill(page, { outdoorDryBulb: '91' });
  await choose(page, 'outdoors', 'Yes, high stage');
  await rule.hold('outdoors', 'with what holds it');
  await openStep(page, 'rating');
  await cellFields(page).first().waitFor();
  await rule.hold('rating', 'with its cells named');
  await fill(page, { nominalCapacity: '3', 'rating.airflow': '1200' });
  for (const [index, text] of cells.entries()) await cellFields(page).nth(index).fill(text);
  await rule.hold('rating', 'with its figures');
  await choose(page, 'rating', 'Yes (net)');
  await expect.poll(() => step(page, 'rating').innerText().then(plain)).toContain('it should make');
  await rule.hold('rating', 'with the blower’s heat said');
  await openStep(page, 'sure');
  for (const answer of ['No', 'Yes, type the difference']) {
    await choose(page, 'sure', answer);
    await step(page, 'sure').locator('svg.drawing').waitFor();
    await rule.hold('sure', answer);
  }
  expect(rule.found).toEqual([]);
});

test('no way to an airflow is longer than a phone while it is typed', async () => {
  const rule = new Rule(await open('worksheets/airflow/'));
  const { page } = rule;
  const typed: Readonly<Record<string, readonly (readonly [id: string, text: string])[]>> = {
    readout: [['field-readout.volumeFlow', '1180']],
    fanTable: [
      ['field-fanTable.supplyStatic', '0.3'],
      ['field-fanTable.returnStatic', '0.26'],
      ['cell-fanTable-0-static', '0.5'],
      ['cell-fanTable-0-flow1', '1180'],
      ['cell-fanTable-1-static', '0.6'],
      ['cell-fanTable-1-flow1', '1125'],
    ],
    flowGrid: [
      ['field-flowGrid.normal', '0.25'],
      ['field-flowGrid.withGrid', '0.16'],
      ['cell-flowGrid.plates-0-flow', '900'],
    ],
    hood: [
      ['cell-hood.returns-0-flow', '520'],
      ['cell-hood.returns-1-flow', '610'],
    ],
    traverse: [],
    temperatureRise: [
      ['field-rise.voltage', '240'],
      ['field-rise.current', '41'],
      ['field-rise.entering', '70'],
      ['field-rise.leaving', '99'],
    ],
    pressureMatch: [
      ['field-match.normal', '0.4'],
      ['field-match.reached', '0.4'],
      ['field-match.fanFlow', '1100'],
    ],
    grille: [],
  };
  for (const [way, figures] of Object.entries(typed)) {
    await openStep(page, way);
    await step(page, way).locator('.fold').first().waitFor();
    await expect.poll(() => step(page, way).innerText()).toContain('Still needed');
    await rule.hold(way, 'empty');
    for (const [id, text] of figures) await page.locator(`[id="${id}"]`).fill(text);
    if (figures.length > 0) {
      await step(page, way).locator('.airflow-result').waitFor();
      await rule.hold(way, 'typed');
    }
  }
  expect(rule.found).toEqual([]);
});

test('no step of the probe check and of the lines is longer than a phone', async () => {
  const rule = new Rule(await open('worksheets/probes/'));
  const { page } = rule;
  const columns = ['enteringDryBulb', 'enteringRelativeHumidity', 'leavingDryBulb', 'leavingRelativeHumidity'];
  for (const [name, air] of [
    ['probesReturn', 'return'],
    ['probesSupply', 'supply'],
    ['probesShared', ''],
    ['probesSteady', ''],
    ['probesPoints', ''],
    ['probesEnd', 'end'],
  ] as const) {
    await openStep(page, name);
    if (name === 'probesSteady') await step(page, name).locator('.grid-cells').waitFor();
    await rule.hold(name, 'empty');
    if (air === '') continue;
    for (const [index, column] of columns.entries())
      await page.locator(`[id="pair-${air}-0-${column}"]`).fill(['75', '50', '75.4', '51'][index] ?? '');
    await step(page, name).getByText('one reading').waitFor();
    await rule.hold(name, 'with a reading');
  }
  await page.goto(new URL('../line-set/', page.url()).href);
  await page.waitForFunction(() => document.querySelector('astro-island[ssr]') === null);
  for (const name of ['lineSystem', 'lineTubes', 'lineLengths', 'lineMaker', 'lineRunning']) {
    await openStep(page, name);
    await rule.hold(name, 'empty');
  }
  expect(rule.found).toEqual([]);
});
