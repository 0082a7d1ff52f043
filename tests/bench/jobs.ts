/**
 * How long the list of 1 000 jobs takes from asking the store to its lines on the screen, and a figure from the key to the disk. In a browser, on the built site: `npm run build` first.
 */
import { chromium } from 'playwright-core';
import { serve } from '../../src/build/serve.mjs';
import { demoJob } from '../../src/job/demo.ts';
import { findBrowser, quiet } from '../site/browser.ts';

const jobs = 1000;
const loads = 12;
const keys = 60;

const server = await serve({});
const browser = await chromium.launch({ executablePath: findBrowser(), args: quiet });
const context = await browser.newContext({ serviceWorkers: 'block' });
const page = await context.newPage();
await page.goto(`${server.url}jobs/`);
await page.getByText('No job is kept here yet.').waitFor();
await page.evaluate(
  async ([count, record]) => {
    const database = await new Promise<IDBDatabase>((resolve, reject) => {
      const request = indexedDB.open('ton-for-ton');
      request.onsuccess = () => resolve(request.result);
      request.onerror = reject;
    });
    const shelf = database.transaction('jobs', 'readwrite');
    for (let index = 0; index < count; index++)
      shelf.objectStore('jobs').put({ ...record, id: `job-${index}`, notes: { address: `${index} Sample Lane` } });
    await new Promise((resolve) => {
      shelf.oncomplete = resolve;
    });
    database.close();
  },
  [jobs, demoJob] as const,
);

await page.addInitScript(() => {
  const watch = new MutationObserver(() => {
    if (!document.querySelector('.shelf li')) return;
    watch.disconnect();
    // Drawn, too, and not only in the document.
    requestAnimationFrame(() => setTimeout(() => performance.mark('stood')));
  });
  watch.observe(document, { childList: true, subtree: true });
  const { getAll } = IDBObjectStore.prototype;
  IDBObjectStore.prototype.getAll = function asked(...range) {
    performance.mark('asked');
    return getAll.apply(this, range);
  };
});
const [listed, whole]: [number[], number[]] = [[], []];
for (let load = 0; load < loads; load++) {
  await page.goto(`${server.url}jobs/`);
  await page.waitForFunction(() => performance.getEntriesByName('stood').length > 0);
  const [asked = 0, stood = 0, first = 0] = await page.evaluate(() => [
    performance.getEntriesByName('asked')[0]?.startTime,
    performance.getEntriesByName('stood')[0]?.startTime,
    (performance.getEntriesByType('navigation')[0] as PerformanceNavigationTiming | undefined)?.responseStart,
  ]);
  listed.push(stood - asked);
  whole.push(stood - first);
}

await page.goto(`${server.url}worksheets/capacity/?new`);
await page.waitForFunction(() => location.search.startsWith('?job='));
const saved = await page.evaluate(async (count) => {
  const field = document.querySelector<HTMLInputElement>('[id="field-entering.dryBulb"]');
  const told = new BroadcastChannel('ton-for-ton');
  const times: number[] = [];
  for (let key = 0; key < count && field; key++) {
    const heard = new Promise((resolve) => told.addEventListener('message', resolve, { once: true }));
    const begun = performance.now();
    field.value = String(70 + key / 10);
    field.dispatchEvent(new Event('input', { bubbles: true }));
    await heard;
    times.push(performance.now() - begun);
  }
  return times;
}, keys);

const said = (times: readonly number[]) => {
  const inOrder = [...times].sort((a, b) => a - b);
  return `fastest ${inOrder[0]?.toFixed(1)} ms, middle ${inOrder[inOrder.length >> 1]?.toFixed(1)} ms, of ${times.length}`;
};
console.log(`list of ${jobs} jobs, from asking the store: ${said(listed)}`);
console.log(`the same from the first byte of the page: ${said(whole)}`);
console.log(`a figure kept: ${said(saved)}`);
await browser.close();
await server.close();
