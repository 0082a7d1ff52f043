/** Every link and every file that a page names leads somewhere, at the root of a host and under a path of it. */
import { execFile } from 'node:child_process';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { serve } from '../../src/build/serve.mjs';
import { attributes, filesUnder, pagesUnder, scriptsOf, textOf } from './builtSite.ts';
import { bar, fill, openAll, phone, readings, ready, sheet, useSite } from './support.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const astro = fileURLToPath(import.meta.resolve('astro/package.json')).replace('package.json', 'bin/astro.mjs');

const { blank } = useSite();

const sites = [
  { base: '/', folder: inject('dist') },
  { base: '/sub/', folder: '' },
];

beforeAll(async () => {
  const folder = await mkdtemp(join(tmpdir(), 'ton-for-ton-sub-'));
  sites[1]!.folder = folder;
  // The test runner's own variables would pass for those of the build.
  const others = Object.entries(process.env).filter(
    ([name]) => !/^(BASE_URL|DEV|PROD|SSR|MODE|NODE_ENV|TEST|VITEST.*)$/.test(name),
  );
  const env = { ...Object.fromEntries(others), BASE: '/sub/' };
  await promisify(execFile)(process.execPath, [astro, 'build', '--outDir', folder], { cwd: root, env });
});
afterAll(() => rm(sites[1]!.folder, { recursive: true, force: true }));

/** What a page fetches on its own, without being asked. */
function fetched(html: string): string[] {
  const links = (html.match(/<link\b(?![^>]*rel="canonical")[^>]*>/g) ?? []).flatMap((tag) =>
    attributes(tag, 'link', 'href'),
  );
  const sets = ['srcset', 'imagesrcset'].flatMap((name) => attributes(html, '', name));
  const fromSets = sets.flatMap((set) => set.split(',').map((part) => part.trim().split(/\s/)[0] ?? ''));
  return [
    ...links,
    ...fromSets,
    ...scriptsOf(html),
    ...['src', 'poster', 'data'].flatMap((name) => attributes(html, '', name)),
  ];
}

const styleAddresses = (css: string) =>
  [...css.matchAll(/url\(["']?([^"')]+)["']?\)|@import\s+["']([^"']+)/g)].map((m) => m[1] ?? m[2] ?? '');

/** The file that an address on this site names, or why there is none. A page's address ends with a slash. */
function fileOf(address: string, from: string, base: string, files: ReadonlySet<string>): string {
  const { pathname } = new URL(address, `http://site${base}${from.replace(/index\.html$/, '')}`);
  if (!pathname.startsWith(base)) return `outside ${base}: ${address}`;
  const path = decodeURIComponent(pathname.slice(base.length));
  const file = path === '' || path.endsWith('/') ? `${path}index.html` : path;
  return files.has(file) ? file : `nothing at ${address}`;
}

const leavesSite = (address: string) => /^(https?:)?\/\//.test(address);
const isData = (address: string) => /^(data|blob):/.test(address);
const idsIn = (html: string) => new Set(attributes(html, '', 'id'));

test.each(sites)('every link and every file on a site at $base leads to a built file, anchors included', (site) => {
  const files = new Set(filesUnder(site.folder));
  const pages = pagesUnder(site.folder);
  expect(pages.length).toBeGreaterThan(8);
  const faults: string[] = [];
  let followed = 0;
  for (const page of pages) {
    const html = textOf(site.folder, page);
    const addresses = [...attributes(html, 'a', 'href'), ...attributes(html, 'area', 'href'), ...fetched(html)];
    for (const address of addresses.filter((one) => !leavesSite(one) && !isData(one))) {
      followed++;
      const file = fileOf(address, page, site.base, files);
      const anchor = /#(.+)$/.exec(address)?.[1];
      if (!files.has(file)) faults.push(`${page}: ${file}`);
      else if (anchor && !idsIn(textOf(site.folder, file)).has(decodeURIComponent(anchor)))
        faults.push(`${page}: no ${anchor} in ${file}`);
    }
  }
  expect(faults).toEqual([]);
  expect(followed).toBeGreaterThan(100);
});

test.each(sites)('no page or style of a site at $base fetches anything from elsewhere', ({ folder }) => {
  const foreign = filesUnder(folder).flatMap((path) => {
    const text = /\.(html|css)$/.test(path) ? textOf(folder, path) : '';
    const addresses = path.endsWith('.css') ? styleAddresses(text) : fetched(text);
    return addresses.filter(leavesSite).map((address) => `${path}: ${address}`);
  });
  expect(foreign).toEqual([]);
});

test.each(sites)('the styles of a site at $base name files that are there', ({ base, folder }) => {
  const files = new Set(filesUnder(folder));
  const styles = [...files].filter((path) => path.endsWith('.css'));
  const named = styles.flatMap((path) => styleAddresses(textOf(folder, path)).map((address) => ({ path, address })));
  expect(named.length).toBeGreaterThan(0);
  for (const { path, address } of named.filter(({ address: one }) => !isData(one)))
    expect(files, `${path}: ${address}`).toContain(fileOf(address, path, base, files));
});

test.each(sites)(
  'the manifest and the offline list of a site at $base name files that are there',
  ({ base, folder }) => {
    const files = new Set(filesUnder(folder));
    const manifest = JSON.parse(textOf(folder, 'manifest.webmanifest')) as {
      readonly start_url: string;
      readonly icons: readonly { readonly src: string }[];
    };
    for (const address of [manifest.start_url, ...manifest.icons.map(({ src }) => src)])
      expect(files, address).toContain(fileOf(address, 'manifest.webmanifest', base, files));
    const worker = textOf(folder, 'sw.js');
    const kept = Object.keys(JSON.parse(/const FILES = (\{.*\});/.exec(worker)?.[1] ?? '{}') as Record<string, string>);
    expect(kept.filter((path) => !files.has(path))).toEqual([]);
    // All but the worker itself, the package for programs elsewhere and what is for the host.
    const notKept = /^(sw\.js|_headers|calc[./])/;
    expect([...files].filter((path) => !kept.includes(path) && !notKept.test(path))).toEqual([]);
  },
);

test('under a path of its host the sheet comes alive and works without a signal', async () => {
  const { base, folder } = sites[1]!;
  const server = await serve({ dir: folder, base });
  const { page } = await blank({ ...phone, serviceWorkers: 'allow' });
  await page.goto(server.url + sheet);
  await ready(page);
  await page.locator('.frame-saved:not([hidden])').waitFor({ state: 'attached' });
  await expect
    .poll(() => page.evaluate(() => navigator.serviceWorker.controller?.scriptURL))
    .toBe(`${server.url}sw.js`);
  await page.context().setOffline(true);
  await page.reload();
  await ready(page);
  await openAll(page);
  await fill(page, readings);
  await expect.poll(() => bar(page).then(([big]) => big)).toMatch(/^\d\d,\d00 Btu\/h$/);
  await page.goto(`${server.url}${sheet}?demo`);
  await page.locator('.invented').waitFor();
  await page.goto(`${server.url}search/?q=latent`);
  await page.locator('.search-found a').first().waitFor();
  await server.close();
});
