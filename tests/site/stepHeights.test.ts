/**
 * An open step fits a phone: of its 844 px some 664 are left between the line of the job and the bar. Each is measured when it
 * is opened, as it is typed, and with its result. Longer, and left out: what somebody unfolds beside it, a note, a photo held
 * above the cells, a second airflow block, and more than three return grilles read with a vane.
 */
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import {
  cellFields,
  cells,
  choose,
  fill,
  openMore,
  openPart,
  plain,
  readings,
  sheet,
  step,
  useSite,
} from './support.ts';

const { open } = useSite();
const most = 664;

async function openStep(page: Page, name: string): Promise<void> {
  const head = step(page, name).locator('.step-key');
  if ((await head.getAttribute('aria-expanded')) === 'false') await head.click();
}

/** Until nothing has changed for so long that what is said of a field which was left has been said, ms. */
const quiet = 450;

/** Leaves the field, waits until everything is said, and notes a step that is too long. */
class Rule {
  readonly found: string[] = [];
  readonly page: Page;
  constructor(page: Page) {
    this.page = page;
  }
  async hold(name: string, state: string): Promise<void> {
    await this.page.evaluate((wait) => {
      (document.activeElement as HTMLElement | null)?.blur();
      return new Promise<void>((resolve) => {
        let timer = setTimeout(done, wait);
        const watch = new MutationObserver(() => {
          clearTimeout(timer);
          timer = setTimeout(done, wait);
        });
        watch.observe(document.body, { subtree: true, childList: true, attributes: true, characterData: true });
        function done() {
          watch.disconnect();
          resolve();
        }
      });
    }, quiet);
    const height = await step(this.page, name).evaluate((one) => one.getBoundingClientRect().height);
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
  await openMore(page);
  for (const part of ['Another shape', 'Its rows', 'The blowers']) {
    await openPart(page, 'rating', part);
    await rule.hold('rating', `asked more: ${part}`);
  }
  await openPart(page, 'rating', 'Another shape');
  await step(page, 'rating').getByRole('button', { name: 'Add sensible' }).click();
  await expect.poll(() => cellFields(page).count()).toBe(8);
  await rule.hold('rating', 'with room for sensible figures');
  for (const [index, text] of ['33.6', '24.1', '31.7', '23.5', '36.9', '20.9', '34.9', '0.58'].entries())
    await cellFields(page).nth(index).fill(text);
  await rule.hold('rating', 'with sensible figures');
  expect(plain(await step(page, 'rating').innerText())).toContain('0.58 is read as');
  await openMore(page);
  await rule.hold('rating', 'asked more, with sensible figures');
  await openStep(page, 'sure');
  for (const answer of ['No', 'Yes, type the difference']) {
    await choose(page, 'sure', answer);
    await step(page, 'sure').locator('svg.drawing').waitFor();
    await rule.hold('sure', answer);
  }
  expect(rule.found).toEqual([]);
});

/** Fields by their ids, and `> name` for a part of the way that is opened. */
type Typed = readonly (readonly [id: string, text: string] | `> ${string}`)[];

const grille = (row: number): Typed => [
  `> Grille ${row + 1}`,
  ...(['width', 'height', 'areaFactor', 'v1', 'v5', 'v9'] as const).map(
    (column, index) =>
      [`cell-grilles-${row}-${column}`, ['20', '14', '0.75', '410', '420', '430'][index] ?? ''] as const,
  ),
];

const typed: Readonly<Record<string, Typed>> = {
  readout: [['field-readout.volumeFlow', '1180']],
  fanTable: [
    ['field-fanTable.supplyStatic', '0.3'],
    ['field-fanTable.returnStatic', '0.26'],
    ['cell-fanTable-0-static', '0.5'],
    ['cell-fanTable-0-flow1', '1180'],
    ['cell-fanTable-1-static', '0.6'],
    ['cell-fanTable-1-flow1', '1125'],
    ['cell-fanTable-2-static', '0.7'],
    ['cell-fanTable-2-flow1', '1060'],
  ],
  flowGrid: [
    ['field-flowGrid.normal', '0.25'],
    ['field-flowGrid.withGrid', '0.16'],
    ['cell-flowGrid.plates-0-flow', '400'],
    ['cell-flowGrid.plates-1-flow', '500'],
  ],
  hood: ['520', '310', '110', '120', '90'].map((text, row) => [`cell-hood.returns-${row}-flow`, text] as const),
  traverse: [
    ['field-traverse.width', '20'],
    ['field-traverse.height', '12'],
    '> Readings',
    ['cell-traverse.pressures-0-p1', '0.04'],
    ['cell-traverse.pressures-4-p5', '0.05'],
    '> The duct',
    ['choice-traverse.shape', 'round'],
    ['field-traverse.diameter', '14'],
    '> Readings',
  ],
  temperatureRise: [
    ['field-rise.voltage', '240'],
    ['field-rise.current', '41'],
    '> The rise',
    ['field-rise.entering', '70'],
    ['field-rise.leaving', '99'],
    '> The heat',
    ['choice-rise.heat', 'fuel'],
    ['field-rise.heatingValue', '1030'],
    ['field-rise.gasVolume', '2'],
    ['field-rise.gasTime', '110'],
    ['field-rise.efficiency', '80'],
    '> The rise',
  ],
  pressureMatch: [
    ['field-match.normal', '0.4'],
    ['field-match.reached', '0.3'],
    ['field-match.fanFlow', '1100'],
  ],
  grille: [...grille(0), ...grille(1), ...grille(2)],
};

test('no way to an airflow is longer than a phone while it is typed, nor with its result', async () => {
  const rule = new Rule(await open('worksheets/airflow/'));
  const { page } = rule;
  for (const [way, figures] of Object.entries(typed)) {
    await openStep(page, way);
    await step(page, way).locator('.fold').first().waitFor();
    await expect.poll(() => step(page, way).innerText()).toContain('Still needed');
    await rule.hold(way, 'empty');
    for (const one of figures) {
      if (typeof one === 'string') {
        await rule.hold(way, `before ${one}`);
        await openPart(page, way, one.slice(2));
        await rule.hold(way, one);
      } else if (one[0].startsWith('choice-')) await page.locator(`[id="${one[0]}"]`).selectOption(one[1]);
      else await page.locator(`[id="${one[0]}"]`).fill(one[1]);
    }
    await step(page, way).locator('.airflow-result').waitFor();
    await rule.hold(way, 'with its result');
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
