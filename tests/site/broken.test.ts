/** Storage that is broken, full or refused: the sheet works all the same, says what is the matter, and deletes nothing. */
import { mkdtemp, readFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, inject, test } from 'vitest';
import { readJobFile } from '../../src/job/jobFile.ts';
import { bar, fill, go, keptText, openAll, phone, readings, ready, sheet, stored, useSite } from './support.ts';

const { blank, open } = useSite();

const saved = (page: Page) => page.locator('.job-line', { hasText: 'Saved' }).waitFor();
const notices = (page: Page) => page.locator('.notices').innerText();

/** Puts a value in place of the job that is open, or of the name of the open job. */
function spoil(page: Page, what: 'job' | 'open', value: unknown): Promise<void> {
  return page.evaluate(
    async ([target, put]) => {
      const settled = <T>(request: IDBRequest<T>) =>
        new Promise<T>((resolve, reject) => {
          request.onsuccess = () => resolve(request.result);
          request.onerror = () => reject(request.error);
        });
      const database = await settled(indexedDB.open('ton-for-ton'));
      const shelf = database.transaction(['jobs', 'state'], 'readwrite');
      const id = await settled(shelf.objectStore('state').get('open'));
      const value = JSON.parse(put);
      if (target === 'open') await settled(shelf.objectStore('state').put(value, 'open'));
      else await settled(shelf.objectStore('jobs').put({ ...value, id }));
      database.close();
    },
    [what, JSON.stringify(value)] as const,
  );
}

/** A sheet on which a job was typed and kept. */
async function keptJob(): Promise<Page> {
  const page = await open(sheet);
  await fill(page, { 'entering.dryBulb': '75', 'entering.relativeHumidity': '50' });
  await saved(page);
  return page;
}

const deep = (levels: number): unknown => (levels === 0 ? 'end' : { next: deep(levels - 1), list: [levels, null, ''] });
const maps = { chosen: {}, tables: {}, notes: {} };

const junk: readonly (readonly [string, object])[] = [
  ['nothing but a name', {}],
  ['a version in words', { version: 'one', entered: {}, ...maps }],
  ['text where the figures should be', { version: 1, entered: 'seventy-five', ...maps }],
  ['null where the figures should be', { version: 1, entered: null, ...maps }],
  ['a list where the figures should be', { version: 1, entered: ['75'], ...maps }],
  ['a figure that is a bare number', { version: 1, entered: { 'entering.dryBulb': 75 }, ...maps }],
  [
    'a figure in an unknown unit',
    { version: 1, entered: { 'entering.dryBulb': { text: '75', unit: 'degX', origin: 'typed' } }, ...maps },
  ],
  [
    'a table without end',
    { version: 1, entered: {}, ...maps, tables: { rating: { columns: [], rows: Array(5000).fill(['1']) } } },
  ],
  ['junk two hundred levels deep', { version: 1, entered: { 'entering.dryBulb': deep(200) }, ...maps }],
  [
    'names that reach for a prototype',
    { version: 1, entered: { constructor: { text: '1', unit: 'degF', origin: 'typed' } }, ...maps },
  ],
];

test('a kept job that cannot be read is set aside whole, and the page opens and says so', async () => {
  const page = await keptJob();
  for (const [index, [what, record]] of junk.entries()) {
    await spoil(page, 'job', record);
    await page.reload();
    await expect.poll(() => notices(page), { message: what }).toContain('It was set aside, not deleted');
    expect((await bar(page))[0]).toBe('Start with the return air');
    const aside = Object.entries((await stored(page))['state'] ?? {}).filter(([key]) => key.startsWith('set aside'));
    expect(aside, what).toHaveLength(index + 1);
    expect(JSON.stringify(aside.map(([, value]) => value))).toContain(JSON.stringify(record).slice(1, -1));
    await fill(page, { 'entering.dryBulb': '76' });
    await saved(page);
  }
});

test('a job of a newer version stays where it is, whatever is typed meanwhile', async () => {
  const page = await keptJob();
  const newer = { version: 99, entered: { 'entering.enthalpy': { text: '30' } }, later: [1, 2] };
  await spoil(page, 'job', newer);
  await page.reload();
  await ready(page);
  await expect.poll(() => notices(page)).toContain('newer version');
  await fill(page, { 'entering.dryBulb': '76' });
  await saved(page);
  const { jobs } = await stored(page);
  expect(Object.values(jobs ?? {})).toHaveLength(2);
  expect(Object.values(jobs ?? {})).toContainEqual(expect.objectContaining(newer));
});

test('an open job that is named by nonsense gives an empty sheet, and the jobs stay', async () => {
  const page = await keptJob();
  for (const [index, name] of [null, 42, { id: 1 }, ['a'], 'a name that nothing bears'].entries()) {
    await spoil(page, 'open', name);
    // As in a tab of its own, which remembers no job.
    await page.evaluate(() => sessionStorage.clear());
    await go(page, sheet);
    await fill(page, { 'entering.dryBulb': '76' });
    expect((await bar(page))[1]).toBe('return humidity, supply temperature, supply humidity, airflow');
    await saved(page);
    expect(Object.values((await stored(page))['jobs'] ?? {}), JSON.stringify(name)).toHaveLength(index + 2);
  }
});

const refusals: readonly (readonly [string, () => void])[] = [
  [
    'throws',
    () => {
      IDBFactory.prototype.open = () => {
        throw new DOMException('refused', 'SecurityError');
      };
    },
  ],
  [
    'is missing',
    () => {
      Object.defineProperty(globalThis, 'indexedDB', { value: undefined });
    },
  ],
  [
    'fails later',
    () => {
      IDBFactory.prototype.open = function open() {
        const request = new EventTarget() as IDBOpenDBRequest;
        Object.defineProperty(request, 'error', { value: new DOMException('refused', 'UnknownError') });
        Object.setPrototypeOf(request, IDBOpenDBRequest.prototype);
        setTimeout(() => request.dispatchEvent(new Event('error')));
        return request;
      };
    },
  ],
];

test.each(refusals)('where the database %s the sheet works, and says how long figures last', async (_, refuse) => {
  const { page } = await blank(phone);
  await page.addInitScript(refuse);
  await page.goto(inject('url') + sheet);
  await ready(page);
  await expect.poll(() => notices(page)).toContain('Your figures last until you close this page');
  await openAll(page);
  await fill(page, readings);
  await expect.poll(() => bar(page).then(([big]) => big)).toMatch(/^\d\d,\d00 Btu\/h$/);
  expect(await page.locator('.job-line').innerText()).not.toContain('Saved');
});

test('on a device without room the sheet works, and says that figures last until the page is closed', async () => {
  const { page } = await blank(phone);
  await page.addInitScript(() => {
    IDBObjectStore.prototype.put = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
  });
  await page.goto(inject('url') + sheet);
  await ready(page);
  await openAll(page);
  await fill(page, readings);
  await expect.poll(() => notices(page)).toContain('out of room');
  expect(await page.locator('.job-line').innerText()).toContain('Not saved');
  expect((await bar(page))[0]).toMatch(/^\d\d,\d00 Btu\/h$/);
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save this job as a file' }).tap(),
  ]);
  const path = join(await mkdtemp(join(tmpdir(), 'jobs-')), 'job.json');
  await download.saveAs(path);
  const file = readJobFile(await readFile(path, 'utf8'));
  expect(file.ok && file.jobs[0]?.entered['entering.dryBulb']?.text).toBe(readings['entering.dryBulb']);
});

/** Ways in which a write goes wrong that had been going right, switched on and off from outside. */
const lateFaults: readonly (readonly [string, string, () => void])[] = [
  [
    'runs out of room',
    'out of room',
    () => {
      const { put } = IDBObjectStore.prototype;
      IDBObjectStore.prototype.put = function full(...given) {
        if (!('broken' in globalThis)) return put.apply(this, given);
        throw new DOMException('full', 'QuotaExceededError');
      };
    },
  ],
  [
    'gives up between the two writes of a transaction',
    'Your figures last until you close this page',
    () => {
      const { put } = IDBObjectStore.prototype;
      IDBObjectStore.prototype.put = function halfDone(...given) {
        const request = put.apply(this, given);
        if ('broken' in globalThis && this.name === 'jobs') this.transaction.abort();
        return request;
      };
    },
  ],
  [
    'finds no room when it comes to the end of a transaction',
    'out of room',
    () => {
      const { put } = IDBObjectStore.prototype;
      IDBObjectStore.prototype.put = function noRoomAtEnd(...given) {
        const request = put.apply(this, given);
        if (!('broken' in globalThis) || this.name !== 'state') return request;
        const { transaction } = this;
        Object.defineProperty(transaction, 'error', { value: new DOMException('full', 'QuotaExceededError') });
        request.addEventListener('success', () => transaction.abort());
        return request;
      };
    },
  ],
];

test.each(lateFaults)(
  'a store that %s leaves what was kept, says so, and keeps the next figure when it can',
  async (_, said, fault) => {
    const { page } = await blank(phone);
    await page.addInitScript(fault);
    await page.goto(inject('url') + sheet);
    await ready(page);
    await openAll(page);
    await fill(page, { 'entering.dryBulb': '75' });
    await keptText(page, '75');
    await page.evaluate(() => Object.assign(globalThis, { broken: true }));
    await fill(page, { 'entering.dryBulb': '76.1', 'entering.relativeHumidity': '51.3' });
    await expect.poll(() => notices(page)).toContain(said);
    expect(await page.locator('.job-line').innerText()).toContain('Not saved');
    // All of a write or nothing: what was kept stands as it was.
    const { jobs } = await stored(page);
    expect(JSON.stringify(jobs)).toContain('"75"');
    expect(JSON.stringify(jobs)).not.toContain('51.3');
    await page.evaluate(() => Reflect.deleteProperty(globalThis, 'broken'));
    await fill(page, { 'leaving.dryBulb': '56.4' });
    await saved(page);
    for (const text of ['76.1', '51.3', '56.4']) await keptText(page, text);
  },
);

test('while a page of an older version holds the store, the sheet works and says what to close', async () => {
  const holder = await open('reference/');
  // As a page of the version before that has not heard that it should let go.
  await holder.evaluate(
    () =>
      new Promise((resolve, reject) => {
        const request = indexedDB.open('ton-for-ton', 1);
        request.onupgradeneeded = () => {
          request.result.createObjectStore('jobs', { keyPath: 'id' });
          request.result.createObjectStore('state');
        };
        request.onsuccess = () => resolve(null);
        request.onerror = reject;
      }),
  );
  const page = await open(sheet, phone, holder);
  await expect.poll(() => notices(page)).toContain('Another version of this site');
  await fill(page, { 'entering.dryBulb': '75' });
  expect(await page.getByRole('button', { name: 'Save this job as a file' }).isVisible()).toBe(true);
  await holder.close();
  await fill(page, { 'entering.dryBulb': '76' });
  await saved(page);
});

test('a store of a newer version of the site is left alone, and the page says so', async () => {
  const page = await keptJob();
  await page.goto(`${inject('url')}reference/`);
  await page.evaluate(
    () =>
      new Promise((resolve, reject) => {
        const request = indexedDB.open('ton-for-ton', 7);
        request.onsuccess = () => resolve(request.result.close());
        request.onerror = reject;
      }),
  );
  await page.goto(inject('url') + sheet);
  await ready(page);
  await expect.poll(() => notices(page)).toContain('Another version of this site');
  await fill(page, { 'entering.dryBulb': '76' });
  expect(Object.values((await stored(page))['jobs'] ?? {})).toHaveLength(1);
});

test('where even the small store for the choices is refused, every page stands', async () => {
  const { page } = await blank(phone);
  await page.addInitScript(() => {
    Object.defineProperty(globalThis, 'localStorage', {
      get: () => {
        throw new DOMException('refused', 'SecurityError');
      },
    });
  });
  await page.goto(inject('url') + sheet);
  await ready(page);
  await page.locator('.frame-settings > summary').tap();
  await page.getByRole('radio', { name: 'Sun' }).check();
  expect(await page.evaluate(() => document.documentElement.dataset['theme'])).toBe('sun');
});
