/** After one visit the whole site works without a signal. */
import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Page } from 'playwright-core';
import { expect, inject, test } from 'vitest';
import { offline } from '../../src/build/offline.mjs';
import { serve } from '../../src/build/serve.mjs';
import { compressed, pagesUnder } from './builtSite.ts';
import {
  bar,
  cellFields,
  field,
  fillJob,
  keptText,
  openAll,
  phone,
  plain,
  ready,
  sheet,
  thenOffline,
  useSite,
} from './support.ts';

const { blank, open, forgive } = useSite();

/** A first visit, until the worker has kept the site; then the signal goes. */
async function visitedThenOffline(path: string): Promise<Page> {
  const page = await open(path, { ...phone, serviceWorkers: 'allow' });
  await thenOffline(page);
  return page;
}

test('every page of the site loads without a signal, styles and all', async () => {
  const page = await visitedThenOffline('');
  for (const path of pagesUnder(inject('dist'))) {
    const response = await page.goto(inject('url') + path.replace(/index\.html$/, ''));
    expect(response?.ok(), path).toBe(true);
    expect(await page.locator('h1').count(), path).toBe(1);
    const styled = await page.evaluate(() =>
      getComputedStyle(document.documentElement).getPropertyValue('--paper').trim(),
    );
    expect(styled, path).not.toBe('');
    expect(await page.evaluate(() => document.fonts.load('16px Next').then((found) => found.length)), path).toBe(1);
  }
});

test('the sheet works its figures out without a signal, late parts and demo included, and a reload keeps them', async () => {
  const page = await visitedThenOffline('');
  await page.goto(`${inject('url')}${sheet}`);
  await ready(page);
  await openAll(page);
  await fillJob(page);
  const answer = await bar(page);
  expect(answer[0]).toMatch(/of what it should make/);
  await page.locator('summary', { hasText: 'The working' }).tap();
  await page.locator('.working-list').first().waitFor();
  await cellFields(page).first().fill('33.60');
  await keptText(page, '33.60');
  await page.reload();
  await ready(page);
  await expect.poll(() => bar(page)).toEqual(answer);
  await page.goto(`${inject('url')}${sheet}?demo`);
  await page.locator('.invented').waitFor();
  await expect.poll(() => field(page, 'entering.dryBulb').inputValue()).toBe('75.0');
});

test('an address that leads nowhere says so without a signal too', async () => {
  const page = await visitedThenOffline('');
  const response = await page.goto(`${inject('url')}no/such/page/`);
  expect(response?.status()).toBe(404);
  forgive(page, /404/);
  expect(plain(await page.locator('h1').innerText())).toBe('No such page');
});

test('a page says on which day the site was saved, and before that it says nothing', async () => {
  const { page } = await blank(phone);
  await page.goto(inject('url'));
  expect(await page.locator('.frame-saved').isVisible()).toBe(false);
  const saved = await visitedThenOffline('');
  expect(plain(await saved.locator('.frame-saved').innerText())).toMatch(
    /^Saved for use with no signal: [A-Z][a-z]+ \d+\.$/,
  );
});

test('the copy of the whole site is at most 2 MB over the wire and 6 MB on the device', async () => {
  const dist = inject('dist');
  const [, list = '{}'] = /const FILES = (.*);\n/.exec(await readFile(join(dist, 'sw.js'), 'utf8')) ?? [];
  const files = await Promise.all(Object.keys(JSON.parse(list)).map((file) => readFile(join(dist, file))));
  const stored = files.reduce((sum, file) => sum + file.length, 0);
  // What is compressed already is sent as it is.
  const sent = files.reduce((sum, file) => sum + Math.min(file.length, compressed(file)), 0);
  console.log(`  ${files.length} files, ${sent} bytes over the wire, ${stored} stored`);
  expect(files.length).toBeGreaterThan(100);
  expect(sent).toBeLessThanOrEqual(2_000_000);
  expect(stored).toBeLessThanOrEqual(6_000_000);
});

test('a new version says that it is ready and waits; the open page goes on with the old one until it is asked for', async () => {
  const dir = await mkdtemp(join(tmpdir(), 'ton-for-ton-next-'));
  await cp(inject('dist'), dir, { recursive: true });
  const server = await serve({ dir });
  const { page } = await blank({ ...phone, serviceWorkers: 'allow' });
  const address = `${server.url}cautions/`;
  await page.goto(address);
  await page.locator('.frame-saved:not([hidden])').waitFor({ state: 'attached' });
  await expect.poll(() => page.evaluate(() => navigator.serviceWorker.controller !== null)).toBe(true);
  const changed = join(dir, 'cautions', 'index.html');
  await writeFile(changed, (await readFile(changed, 'utf8')).replace('<h1', '<h1 data-next'));
  await offline().hooks['astro:build:done']({ dir: pathToFileURL(`${dir}/`), logger: { info: () => {} } });
  await page.evaluate(async () => void (await (await navigator.serviceWorker.ready).update()));
  await page.locator('.frame-update:not([hidden])').waitFor();
  await page.goto(`${server.url}${sheet}?demo`);
  await page.locator('.answer-sentence').waitFor();
  await page.locator('summary', { hasText: 'The working' }).tap();
  await page.locator('.working-list').first().waitFor();
  await page.goto(address);
  expect(await page.locator('h1[data-next]').count()).toBe(0);
  await page.locator('.frame-update button').tap();
  await page.locator('h1[data-next]').waitFor();
  await server.close();
  await rm(dir, { recursive: true });
});
