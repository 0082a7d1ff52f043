/** What the browser tests share: pages that collect every complaint, and the words for what a person does on the sheet. */
import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, inject } from 'vitest';
import { cells, readings } from './readings.ts';

export { cells, readings };

export const phone: BrowserContextOptions = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true };
/** The same phone with its keyboard open. */
export const typingPhone: BrowserContextOptions = { ...phone, viewport: { width: 390, height: 400 } };
export const desk: BrowserContextOptions = { viewport: { width: 1440, height: 900 } };

export const sheet = 'worksheets/capacity/';

export interface Visit {
  readonly page: Page;
  /** What the browser complained about: errors, refused resources, violations of the policy. */
  readonly complaints: string[];
}

/**
 * Gives a way to open pages of the built site, each in a context of its own. After each test nothing stays open, and no page
 * may have complained. The offline worker is kept out unless it is asked for: it would fetch the whole site each time.
 */
export function useSite() {
  let browser: Browser;
  const visits: Visit[] = [];
  beforeAll(async () => {
    browser = await chromium.connect(inject('browser'));
  });
  afterAll(() => browser.close());
  afterEach(async () => {
    const complaints = visits.splice(0).flatMap((visit) => visit.complaints);
    await Promise.all(browser.contexts().map((context) => context.close()));
    expect(complaints).toEqual([]);
  });

  /** A page in a new context, or another one in the context of `beside`. */
  async function blank(options: BrowserContextOptions, beside?: Page): Promise<Visit> {
    const defaults: BrowserContextOptions = {
      locale: 'en-US',
      serviceWorkers: 'block',
      // The server compresses on each request, which costs more than it saves on this machine.
      extraHTTPHeaders: { 'accept-encoding': 'identity' },
    };
    const context = beside?.context() ?? (await browser.newContext({ ...defaults, ...options }));
    context.setDefaultTimeout(10_000);
    const visit: Visit = { page: await context.newPage(), complaints: [] };
    visit.page.on('console', (message) => message.type() === 'error' && visit.complaints.push(message.text()));
    visit.page.on('pageerror', (error) => visit.complaints.push(String(error)));
    visits.push(visit);
    return visit;
  }

  /** For a test that brings a complaint about: it is there, and forgiven. */
  function forgive(page: Page, complaint: RegExp): void {
    const visit = visits.find((one) => one.page === page);
    expect(visit?.complaints).toContainEqual(expect.stringMatching(complaint));
    visit?.complaints.splice(0);
  }

  async function open(path: string, options: BrowserContextOptions = phone, beside?: Page): Promise<Page> {
    const { page } = await blank(options, beside);
    await go(page, path);
    return page;
  }
  return { blank, open, forgive };
}

/** An event of the browser's own record of its work; times in microseconds, `tdur` of the processor alone. */
interface Traced {
  readonly name: string;
  readonly pid: number;
  readonly tid: number;
  readonly tdur?: number;
}

/** Keeps the scripts of a page back until they are released. */
export async function holdScripts(page: Page): Promise<() => void> {
  let release = () => {};
  const held = new Promise<void>((resolve) => {
    release = resolve;
  });
  await page.route('**/_astro/*.js', async (route) => {
    await held;
    await route.continue();
  });
  return release;
}

/**
 * The work of the longest task while a page comes alive, ms of its thread on the processor, as the least of five loads: time
 * in which the machine does other things does not count. One browser keeps one such record at a time, so these tests share a
 * file. `then` waits for what else has to stand.
 */
export async function longestTask(
  blank: (options: BrowserContextOptions) => Promise<Visit>,
  path: string,
  limit: number,
  then: (page: Page) => Promise<unknown> = async () => {},
): Promise<number> {
  const longest: number[] = [];
  // The least of five is no more than the limit as soon as one of them is.
  for (let load = 0; load < 5 && Math.min(...longest) > limit; load++) {
    const { page } = await blank(phone);
    const session = await page.context().newCDPSession(page);
    const events: Traced[] = [];
    session.on('Tracing.dataCollected', ({ value }) => events.push(...(value as unknown as Traced[])));
    await session.send('Tracing.start', { traceConfig: { includedCategories: ['toplevel', 'blink.user_timing'] } });
    await go(page, path);
    await then(page);
    await page.evaluate(() => new Promise((resolve) => requestIdleCallback(resolve)));
    await page.evaluate(() => performance.mark('alive'));
    const complete = new Promise((resolve) => session.once('Tracing.tracingComplete', resolve));
    await session.send('Tracing.end');
    await complete;
    const marked = events.find(({ name }) => name === 'alive');
    const work = events.flatMap(({ name, pid, tid, tdur }) =>
      name.endsWith('RunTask') && pid === marked?.pid && tid === marked.tid && tdur ? [tdur / 1000] : [],
    );
    // A record without tasks would let everything pass.
    expect(work.length).toBeGreaterThan(10);
    longest.push(Math.max(...work));
    await page.context().close();
  }
  console.log(`  longest task of each load of ${path}: ${longest.map(Math.round).join(', ')} ms`);
  return Math.min(...longest);
}

/** Goes to a page and waits until its islands stand. */
export async function go(page: Page, path: string): Promise<void> {
  await page.goto(inject('url') + path);
  await ready(page);
}

/** Waits until the islands of a page stand and the kept job has been looked for. Those that wait until they are seen may wait. */
export async function ready(page: Page): Promise<void> {
  await page.waitForFunction(() => document.querySelector('astro-island[ssr]:not([client="visible"])') === null);
}

/** Waits until the worker has kept the site; then the signal goes. */
export async function thenOffline(page: Page): Promise<void> {
  await page.locator('.frame-saved:not([hidden])').waitFor({ state: 'attached' });
  await expect.poll(() => page.evaluate(() => navigator.serviceWorker.controller !== null)).toBe(true);
  await page.context().setOffline(true);
}

export const field = (page: Page, key: string) => page.locator(`[id="field-${key}"]`);
export const step = (page: Page, name: string) => page.locator(`#step-${name}`);
export const nextKey = (page: Page) => page.locator('.answer-bar .next');

/** The two lines of the answer bar, spaces made plain. */
export async function bar(page: Page): Promise<readonly [big: string, small: string]> {
  const line = async (selector: string) =>
    plain(await page.locator(`.answer-bar .answer-key > ${selector}`).innerText());
  return [await line('b'), await line('span')];
}

/** Text as it reads: no-break spaces and line ends are spaces. */
export const plain = (text: string) => text.replace(/[\s\u00a0]+/g, ' ').trim();

/** The `id` of what has the focus; the name of a radio's group where it has none. */
export const focused = (page: Page) =>
  page.evaluate(() => document.activeElement?.id || document.activeElement?.getAttribute('name') || '');

/** Opens every step of the sheet on a phone. */
export async function openAll(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Open all steps' }).click();
}

/** Opens everything in the content that is folded, the working too. */
export async function unfoldAll(page: Page): Promise<void> {
  // Of the parts of a step one alone stands open: here all of them.
  await page.locator('details[name]').evaluateAll((all) => {
    for (const one of all) one.removeAttribute('name');
  });
  const closed = page.locator('main details:not([open]) > summary:visible');
  while ((await closed.count()) > 0) await closed.first().click();
  await page.locator('.working-list').first().waitFor();
}

/** Puts figures into fields that can be seen, in one go each. */
export async function fill(page: Page, figures: Readonly<Record<string, string>>): Promise<void> {
  for (const [key, text] of Object.entries(figures)) await field(page, key).first().fill(text);
}

/** Opens a part of a step, as a tap on its line does. */
export async function openPart(page: Page, stepName: string, name: string): Promise<void> {
  const line = step(page, stepName).locator('.part > summary', { hasText: name });
  if (!(await line.evaluate((one) => (one.parentElement as HTMLDetailsElement).open))) await line.click();
}

export async function choose(page: Page, stepName: string, option: string): Promise<void> {
  await step(page, stepName).getByRole('radio', { name: option, exact: true }).first().check();
}

/** What is needed now and then in step 5: other shapes of the table, other rows, the blower, or no table. */
export const openMore = (page: Page) => step(page, 'rating').getByRole('button', { name: 'More, or no table' }).click();

/** The fields of the maker's table, in the order in which they stand. */
export const cellFields = (page: Page) => page.locator('.cell-fields input');

export async function fillCells(page: Page): Promise<void> {
  for (const [index, text] of cells.entries()) await cellFields(page).nth(index).fill(text);
}

/** The whole job typed: all steps open, share and expectation there. */
export async function fillJob(page: Page): Promise<void> {
  await fill(page, readings);
  await page.locator('select').selectOption('flowGrid');
  await fill(page, { outdoorDryBulb: '91', nominalCapacity: '3' });
  await choose(page, 'outdoors', 'Yes, one speed');
  await fillCells(page);
  await choose(page, 'rating', 'Yes (net)');
}

/** Everything that the database of the site holds on this device, by store and key. */
export async function stored(page: Page): Promise<Record<string, Record<string, unknown>>> {
  const text = await page.evaluate(async () => {
    const settled = <T>(request: IDBRequest<T>) =>
      new Promise<T>((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
    const all: Record<string, Record<string, unknown>> = {};
    if ((await indexedDB.databases()).length === 0) return JSON.stringify(all);
    const database = await settled(indexedDB.open('ton-for-ton'));
    for (const name of database.objectStoreNames) {
      const store = database.transaction(name).objectStore(name);
      const [keys, values] = await Promise.all([settled(store.getAllKeys()), settled(store.getAll())]);
      all[name] = Object.fromEntries(keys.map((key, index) => [String(key), values[index]]));
    }
    database.close();
    return JSON.stringify(all);
  });
  return JSON.parse(text);
}

/** Waits until what was typed last in some field, a text found nowhere else, is kept on the device. */
export async function keptText(page: Page, text: string): Promise<void> {
  await expect.poll(() => stored(page).then(({ jobs }) => JSON.stringify(jobs ?? {}))).toContain(JSON.stringify(text));
}
