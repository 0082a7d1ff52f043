/** A thumb in a glove, a narrow phone, eyes that need large type: everything can be hit, read and reached. */
import type { BrowserContextOptions, Page } from 'playwright-core';
import { expect, inject, test } from 'vitest';
import { pagesUnder } from './builtSite.ts';
import { field, fillJob, go, openAll, openMore, phone, sheet, step, unfoldAll, useSite } from './support.ts';

const { open } = useSite();
const narrow: BrowserContextOptions = { ...phone, viewport: { width: 320, height: 640 } };
const pages = pagesUnder(inject('dist')).map((path) => path.replace(/index\.html$/, ''));

async function wholeSheet(options: BrowserContextOptions): Promise<Page> {
  const page = await open(sheet, options);
  await openAll(page);
  await fillJob(page);
  await openMore(page);
  await step(page, 'sure').getByRole('radio', { name: 'Yes, type the difference' }).check();
  await page.getByRole('button', { name: 'Another reading' }).first().click();
  await unfoldAll(page);
  return page;
}

/** What is wider than the page and cannot be scrolled inside its own box. */
function tooWide() {
  const width = document.documentElement.clientWidth;
  const scrolls = (one: Element | null): boolean =>
    one !== null &&
    one !== document.body &&
    (/auto|scroll|hidden|clip/.test(getComputedStyle(one).overflowX) || scrolls(one.parentElement));
  const wide = [...document.querySelectorAll('body *')].filter((one) => {
    const { left, right, width: own, height } = one.getBoundingClientRect();
    return own > 1 && height > 1 && (right > width + 1 || left < -1) && !scrolls(one.parentElement);
  });
  const named = wide.map((one) => `${one.localName}.${one.getAttribute('class')} ${one.textContent?.slice(0, 30)}`);
  return document.documentElement.scrollWidth > width
    ? [`the page is ${document.documentElement.scrollWidth} wide`, ...named]
    : [];
}

/** The targets that a finger may miss: under 48 px, or under 24 px for a word in a line of text. */
function tooSmall() {
  const found: string[] = [];
  const targets = document.querySelectorAll<HTMLElement>('a[href], button, input, select, textarea, summary');
  for (const one of targets) {
    if (!one.checkVisibility()) continue;
    const box = one.matches('input, select, textarea') ? (one.closest('.choice, label') ?? one) : one;
    const { width, height } = box.getBoundingClientRect();
    const inLine = getComputedStyle(one).display === 'inline';
    // A link inside a sentence is as high as its line; a key there has to be made higher than that.
    if ((inLine && one.localName === 'a') || one.closest('.source')) continue;
    const least = inLine || one.closest('.echo, .ledger th, .term') ? 24 : 48;
    // A field is as high as its box, whose frame may take a pixel on each side.
    const allowed = one.closest('.field-box') ? least - 2 : least - 0.5;
    if (height < allowed || (width < allowed && least === 48))
      found.push(
        `${one.localName} “${(one.getAttribute('aria-label') ?? one.innerText ?? '').slice(0, 30).trim()}” ${one.id}: ${Math.round(width)} × ${Math.round(height)}`,
      );
  }
  return found;
}

/** Pairs of targets that lie over each other. */
function overlapping() {
  const all = [
    ...document.querySelectorAll<HTMLElement>('main :is(a[href], button, input, select, textarea, summary)'),
  ].filter((one) => one.checkVisibility() && one.closest('.answer-bar') === null);
  const boxes = all.map((one) => ({ one, box: one.getBoundingClientRect() }));
  const found: string[] = [];
  for (const [index, { one, box }] of boxes.entries())
    for (const { one: other, box: against } of boxes.slice(index + 1)) {
      const across = Math.min(box.right, against.right) - Math.max(box.left, against.left);
      const down = Math.min(box.bottom, against.bottom) - Math.max(box.top, against.top);
      if (across > 1 && down > 1 && !one.contains(other))
        found.push(`${one.id || one.innerText} and ${other.id || other.innerText}`);
    }
  return found;
}

test('every control of the sheet can be hit with a thumb on a phone', async () => {
  const page = await wholeSheet(phone);
  expect(await page.evaluate(tooSmall)).toEqual([]);
  expect(await page.evaluate(overlapping)).toEqual([]);
});

/** What is too wide once the page has come to rest in a new width: charts measure their place a moment later. */
async function atRest(page: Page): Promise<string[]> {
  let found = await page.evaluate(tooWide);
  for (let turn = 0; turn < 10 && found.length > 0; turn++) {
    await page.evaluate(() => new Promise((resolve) => requestAnimationFrame(resolve)));
    found = await page.evaluate(tooWide);
  }
  return found;
}

const typeSize = (page: Page, size: string) =>
  page.evaluate((to) => {
    document.documentElement.style.fontSize = to;
  }, size);

test('every page can be hit with a thumb, fits a phone with type twice as large, and a screen of 320 px', async () => {
  const page = await open('');
  const found: string[] = [];
  for (const path of pages) {
    await page.setViewportSize({ width: 390, height: 844 });
    await go(page, path);
    const small = path === sheet ? [] : await page.evaluate(tooSmall);
    await typeSize(page, '200%');
    const large = await atRest(page);
    await typeSize(page, '');
    await page.setViewportSize({ width: 320, height: 640 });
    const wide = await atRest(page);
    found.push(
      ...small.map((fault) => `${path}: ${fault}`),
      ...large.map((fault) => `${path}, large type: ${fault}`),
      ...wide.map((fault) => `${path}, 320 px: ${fault}`),
    );
  }
  expect(found).toEqual([]);
}, 180_000);

test('with type twice as large the figures of every demo fit a phone, and no name in a ledger is torn apart', async () => {
  const page = await open('worksheets/capacity/?demo');
  const found: string[] = [];
  for (const name of ['capacity', 'airflow', 'expected', 'line-set']) {
    await go(page, `worksheets/${name}/?demo`);
    await page.locator('.ledger-box:visible').first().waitFor();
    await typeSize(page, '200%');
    await expect.poll(() => atRest(page), { message: name }).toEqual([]);
    const torn = await page.locator('.ledger-box th:visible').evaluateAll((names) =>
      names.flatMap((one) => {
        const room = one.closest('.ledger-box')!.clientWidth;
        return one.clientWidth < 0.6 * room ? [one.textContent] : [];
      }),
    );
    found.push(...torn.map((text) => `${name}: ${text}`));
  }
  expect(found).toEqual([]);
});

test.each([
  ['on a phone', phone, '100%'],
  ['at 320 px, with type twice as large', narrow, '200%'],
])(
  'a press on an answer counts %s, though the field above it was just typed and has something to say',
  async (_, options, size) => {
    const page = await open(sheet, options);
    await openAll(page);
    await typeSize(page, size);
    for (const [key, name, by] of [
      ['outdoorDryBulb', 'outdoors', 'click'],
      ['nominalCapacity', 'rating', 'click'],
      ['line', 'sure', 'tap'],
    ] as const) {
      await field(page, key).fill('no');
      const answers = await step(page, name).getByRole('radio').all();
      for (const answer of answers) {
        await answer[by]();
        expect(await answer.isChecked(), `${name}: ${await answer.getAttribute('value')}`).toBe(true);
      }
    }
  },
);

test('the whole sheet, unfolded, fits 320 px, in either system of units', async () => {
  const page = await wholeSheet(narrow);
  expect(await page.evaluate(tooWide)).toEqual([]);
  await page.locator('.frame-settings > summary').tap();
  await page.getByRole('radio', { name: '°C, kW' }).check();
  expect(await page.evaluate(tooWide)).toEqual([]);
});

/** Whether the words of the bar are cut off, run under its key or leave the screen. */
function barFaults() {
  const bar = document.querySelector('.answer-bar')!.getBoundingClientRect();
  const next = document.querySelector('.answer-bar .next')!.getBoundingClientRect();
  const found: string[] = [];
  if (bar.bottom > innerHeight + 1 || bar.left < 0 || bar.right > innerWidth + 1)
    found.push('the bar leaves the screen');
  for (const line of document.querySelectorAll<HTMLElement>('.answer-key > *')) {
    const range = document.createRange();
    range.selectNodeContents(line);
    const text = range.getBoundingClientRect();
    if (text.right > next.left + 1) found.push(`“${line.innerText}” runs under the key`);
    if (text.bottom > bar.bottom + 1 || text.top < bar.top - 1) found.push(`“${line.innerText}” is cut off`);
    if (line.scrollWidth > line.clientWidth + 1) found.push(`“${line.innerText}” is cut off at its side`);
  }
  return found;
}

test.each([
  ['on a phone', phone],
  ['at 320 px', narrow],
])('with type twice as large %s nothing of the bar is cut off', async (_, options) => {
  const page = await open(sheet, options);
  await openAll(page);
  const found: string[] = [];
  await typeSize(page, '200%');
  found.push(...(await page.evaluate(barFaults)));
  await fillJob(page);
  found.push(...(await page.evaluate(barFaults)), ...(await page.evaluate(tooWide)));
  const says = async (verdict: RegExp) => {
    await expect.poll(() => page.locator('.answer-key > b').innerText()).toMatch(verdict);
    found.push(...(await page.evaluate(barFaults)));
  };
  await step(page, 'sure').getByRole('radio', { name: 'No', exact: true }).check();
  await says(/^Cannot tell/);
  await field(page, 'line').fill('60');
  await says(/^Meets 60/);
  await field(page, 'line').fill('90');
  await field(page, 'airflow.volumeFlow').fill('800');
  await says(/^Short of 90/);
  await field(page, 'airflow.volumeFlow').fill('1700');
  await says(/^Cannot tell/);
  await step(page, 'outdoors').getByRole('radio', { name: 'No or not sure' }).check();
  await says(/^No verdict/);
  await page.locator('[id="field-leaving.relativeHumidity"]').fill('880');
  await page.locator('[id="field-leaving.relativeHumidity"]').blur();
  await expect.poll(() => page.locator('.answer-key > b').innerText()).toMatch(/^Check/);
  found.push(...(await page.evaluate(barFaults)));
  expect(found).toEqual([]);
});
