/** The air chart as a person uses it: points, processes, reading anywhere, and what cannot be. */
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { chart, chartOpener, handle, linked, said, textField, typeReturn } from './moistAir.ts';
import { desk, go, phone, plain, useSite } from './support.ts';

const { open } = useSite();
const openChart = chartOpener(open);

test('a point that is typed stands on the chart, and its figures follow it', async () => {
  const page = await openChart(chart);
  expect(await handle(page, 'entering').count()).toBe(0);
  await typeReturn(page);
  await expect.poll(() => said(page, 'entering')).toBe('75.0 °F, 50.0 %');
  expect(plain(await page.locator('.air-properties').innerText())).toContain('Wet bulb 62.5 °F');
});

test('the cross-hair reads the air under a mouse, by figures and by keys, and says it once it rests', async () => {
  const page = await openChart(linked);
  const paper = (await page.locator('.air-drawing').boundingBox())!;
  await page.mouse.move(paper.x + paper.width * 0.7, paper.y + paper.height * 0.8);
  await expect.poll(() => page.locator('.air-reading-head').innerText()).toContain('Under the cross-hair');
  await page.getByText('Read a place by its figures').click();
  await page.mouse.move(5, 5);
  await textField(page, 'cross-dryBulb').fill('80');
  await textField(page, 'cross-humidity').fill('40');
  await expect
    .poll(async () => plain(await page.locator('.air-properties').innerText()))
    .toMatch(/Temperature 80\.0 °F Humidity 40\.0 % Wet bulb 63\.5 °F/);
  await expect
    .poll(async () => plain(await page.locator('.air-reading [role=status]').innerText()))
    .toContain('Wet bulb 63.5 °F');
  await page.locator('.air-cross').focus();
  await page.keyboard.press('ArrowRight');
  await expect
    .poll(async () => plain(await page.locator('.air-properties').innerText()))
    .toContain('Temperature 80.1 °F');
  await page.getByRole('button', { name: 'Put the cross-hair away' }).click();
  expect(await page.locator('.air-reading-head').innerText()).not.toContain('Under the cross-hair');
});

test('families of lines are switched by keys that say whether they are on', async () => {
  const page = await openChart(chart);
  const key = (name: string) => page.getByRole('button', { name, exact: true });
  const pressed = async () =>
    Promise.all(['Humidity', 'Wet bulb', 'Enthalpy', 'Volume'].map((name) => key(name).getAttribute('aria-pressed')));
  expect(await pressed()).toEqual(['true', 'true', 'false', 'false']);
  expect(await page.locator('.air-drawing .line-enthalpy').count()).toBe(0);
  await key('Enthalpy').click();
  expect(await pressed()).toEqual(['true', 'true', 'true', 'false']);
  expect(await page.locator('.air-drawing .line-enthalpy').count()).toBe(1);
});

test('states and processes are added, worked out and taken away', async () => {
  const page = await openChart(chart);
  await typeReturn(page);
  await page.getByRole('button', { name: 'Add a state' }).click();
  await textField(page, 'state-a-name').fill('Off the coil');
  await textField(page, 'state-a-dryBulb').fill('55');
  await textField(page, 'state-a-humidity').fill('90');
  await page.getByRole('button', { name: 'Add a process' }).click();
  await textField(page, 'process-p1-from').selectOption('entering');
  await textField(page, 'process-p1-to').selectOption('a');
  await textField(page, 'process-p1-airflow').fill('1,200');
  const ledger = page.locator('#process-p1 .ledger');
  await expect
    .poll(async () => plain(await ledger.innerText()))
    .toMatch(
      /Total cooling [\d,]+ Btu\/h of it sensible [\d,]+ Btu\/h of it latent [\d,]+ Btu\/h Water taken out [\d.]+ lb\/h/,
    );
  await page.locator('#process-p1').getByText('The working').click();
  await expect.poll(() => page.locator('#process-p1 .working-list').innerText()).toContain('Q = ṁ·(h₁ − h₂)');
  await textField(page, 'process-p1-kind').selectOption('heating');
  await textField(page, 'process-p1-endDryBulb').fill('60');
  await expect
    .poll(async () => plain(await page.locator('#process-p1 .check').innerText()))
    .toBe('Check: Heating ends above where it begins, 75.0 °F.');
  await page.getByRole('button', { name: 'Remove Process 1' }).click();
  expect(await page.locator('#process-p1').count()).toBe(0);
  await page.locator('#point-a .step-key').click();
  await page.getByRole('button', { name: 'Remove Off the coil' }).click();
  expect(await page.locator('#point-a').count()).toBe(0);
});

test('air that cannot be is said beside its fields, and the rest of the chart stays as it was', async () => {
  const page = await openChart(linked);
  await page.locator('#point-a .step-key').click();
  await textField(page, 'state-a-humidity').fill('99');
  await textField(page, 'state-a-dryBulb').focus();
  await expect
    .poll(async () => plain(await page.locator('#point-a .check').innerText()))
    .toBe(
      'Check: A wet bulb cannot stand above the temperature. Look whether the two are exchanged. It is not on the chart.',
    );
  expect(await handle(page, 'a').count()).toBe(0);
  expect(await said(page, 'entering')).toBe('75.0 °F, 50.0 %');
  await textField(page, 'state-a-humidity').fill('seventy');
  await textField(page, 'state-a-dryBulb').focus();
  await expect
    .poll(async () => plain(await page.locator('#point-a .check').innerText()))
    .toContain('“seventy” is not a number');
});

test('a height that no chart is drawn for is said beside it, and the chart stays as it was', async () => {
  const page = await openChart(linked);
  await page.getByText('Height and pressure').click();
  await textField(page, 'field-altitude').fill('16000');
  await expect
    .poll(async () => plain(await page.locator('.air-steps .check').last().innerText()))
    .toContain('It stays as it was');
  expect(await page.locator('.air-title').innerText()).toContain('29.92');
  await textField(page, 'field-altitude').fill('5000');
  await expect.poll(() => page.locator('.air-title').innerText()).toContain('24.90');
});

interface Violation {
  readonly id: string;
  readonly nodes: readonly { readonly target: unknown; readonly failureSummary?: string }[];
}

/** What is wrong by the rules that a machine can check, in light and in dark. */
async function faults(page: Page, state: string): Promise<string[]> {
  const found: string[] = [];
  for (const theme of ['light', 'dark']) {
    await page.evaluate((light) => {
      document.documentElement.dataset['theme'] = light;
    }, theme);
    const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
    const { violations } = await new AxeBuilder({ page }).withTags(tags).setLegacyMode().analyze();
    for (const { id, nodes } of violations as readonly Violation[]) {
      found.push(
        ...nodes.map(
          ({ target, failureSummary }) => `${state}, ${theme}: ${id} at ${target}: ${failureSummary?.split('\n')[1]}`,
        ),
      );
    }
  }
  return found;
}

test.each([
  ['phone', phone],
  ['desk', desk],
])('the chart is clean on a %s, with its steps and folds open, and in class', async (_, options) => {
  const page = await openChart(linked, options);
  await page.getByText('Take it away').click();
  await page.getByText('Table of points and processes').click();
  await page.getByText('Read a place by its figures').click();
  await page.getByText('Height and pressure').click();
  await textField(page, 'air-paste').waitFor();
  const found: string[] = [];
  for (const step of ['point-entering', 'point-a', 'process-p1']) {
    await page.locator(`#${step} .step-key`).click();
    await page.locator(`#${step} .step-body .field`).first().waitFor();
    found.push(...(await faults(page, step)));
  }
  await go(page, `${chart}?class=2`);
  await page.locator('.lesson').waitFor();
  found.push(...(await faults(page, 'question')));
  await page.getByRole('button', { name: 'Show me without guessing' }).click();
  found.push(...(await faults(page, 'answer')));
  expect(found).toEqual([]);
});

test.each([320, 390, 820, 1440])('nothing sticks out of the page at %i px', async (width) => {
  const page = await openChart(linked, { viewport: { width, height: 800 } });
  await page.locator('#process-p1 .step-key').click();
  await page.locator('#process-p1 .ledger').waitFor();
  await page.getByText('Table of points and processes').click();
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
});

/** Six states and three processes about the job's own. */
const crowd =
  '&b=68F,45rh,Bedroom&c=80F,55rh,Attic&d=62F,80rh,Duct&e=50F,95rh,Coil&f=85F,30rh,Roof&p2=drying,p1,,e,,1200cfm';

test.each([320, 390, 820, 1440])('the names of many points do not lie on one another at %i px', async (width) => {
  const page = await openChart(linked, { viewport: { width, height: 800 } });
  await go(page, linked + crowd);
  await page.locator('.air-processes .line-measured').waitFor();
  const words = await page.locator('.air-points text, .air-processes text').evaluateAll((all) =>
    all.map((one) => {
      const { left, right, top, bottom } = one.getBoundingClientRect();
      return { text: one.textContent, left, right, top: top + 3, bottom: bottom - 3 };
    }),
  );
  const filled = words.filter(({ text }) => text !== '');
  expect(filled.length).toBeGreaterThanOrEqual(6);
  const touching = filled.flatMap((a, i) =>
    filled
      .slice(i + 1)
      .filter((b) => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom)
      .map((b) => `${a.text} on ${b.text}`),
  );
  expect(touching).toEqual([]);
});

test('regions say whose limits they are, and a link, which tells none, has no regions', async () => {
  const page = await openChart(`${chart}?demo`);
  await expect
    .poll(async () => plain(await page.locator('.air-figure').innerText()))
    .toMatch(/Hatched: where the air is, 95 times in 100, with probes that read within ±[\d.]+ °F and ±[\d.]+ %/);
  expect(await page.locator('.air-processes .outline').count()).toBe(2);
  const own = await openChart(chart);
  await typeReturn(own);
  await own.locator('#point-leaving .step-key').click();
  await textField(own, 'field-leaving.dryBulb').fill('56');
  await textField(own, 'field-leaving.relativeHumidity').fill('88');
  await expect.poll(() => own.locator('.air-figure').innerText()).toContain('(assumed limits)');
  const visitor = await openChart(linked);
  expect(await visitor.locator('.air-processes .outline').count()).toBe(0);
  expect(await visitor.locator('.air-figure').innerText()).not.toContain('Hatched');
});
