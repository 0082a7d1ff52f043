/** What the host is asked to send with each file: one policy for all, and how long a copy may be kept. */
import { createHash } from 'node:crypto';
import { expect, inject, test } from 'vitest';
import { attributes, filesUnder, inlineScripts, pagesUnder, textOf } from './builtSite.ts';

const dist = inject('dist');
const at = (path: string) => fetch(inject('url') + path);

/** A policy by its directives, each with its words in order. */
function directives(policy: string): Record<string, readonly string[]> {
  const parts = policy.split(';').map((part) => part.trim());
  return Object.fromEntries(
    parts
      .filter((part) => part !== '')
      .map((part) => part.split(/\s+/))
      .map(([name = '', ...words]) => [name, words.sort()]),
  );
}

const policyOf = async (path: string) => directives((await at(path)).headers.get('content-security-policy') ?? '');
const inPages = pagesUnder(dist).map((path) => {
  const html = textOf(dist, path);
  const tag = /<meta http-equiv="content-security-policy"[^>]*>/i.exec(html)?.[0] ?? '';
  const hashes = inlineScripts(html).map((code) => `'sha256-${createHash('sha256').update(code).digest('base64')}'`);
  return { policy: directives(attributes(tag, 'meta', 'content')[0] ?? ''), hashes };
});

test('the header has the policy of every page, a word for the engine of the search, and lets nobody frame a page', async () => {
  const { 'frame-ancestors': frames, 'script-src': scripts, ...rest } = await policyOf('');
  expect(frames).toEqual(["'none'"]);
  const wanted = new Set(["'wasm-unsafe-eval'"]);
  for (const { policy, hashes } of inPages) {
    const { 'script-src': inPage = [], ...others } = policy;
    expect(rest).toEqual(others);
    for (const word of [...inPage, ...hashes]) wanted.add(word);
  }
  // What a page runs before its own policy begins, too, and nothing else.
  expect(scripts).toEqual([...wanted].sort());
  for (const name of ['default-src', 'object-src', 'base-uri', 'form-action'])
    expect(rest[name], name).toEqual(["'none'"]);
  expect(JSON.stringify([scripts, rest])).not.toMatch(/(?<!wasm-)unsafe-|https?:|\*/);
});

test('scripts, workers and pictures come under the same policy as pages', async () => {
  const page = await policyOf('');
  for (const path of ['sw.js', 'icon.svg', 'pagefind/pagefind-worker.js', 'no/such/place'])
    expect(await policyOf(path), path).toEqual(page);
});

test('files that are named by what is in them are kept for good, everything else is asked for anew', async () => {
  const kept = async (path: string) => (await at(path)).headers.get('cache-control');
  const named = filesUnder(dist).filter((path) => path.startsWith('_astro/'));
  expect(named.length).toBeGreaterThan(50);
  // A name without a code of its contents would keep an old file for a year.
  expect(named.filter((path) => !/[.-][\w-]{8}\.\w+$/.test(path))).toEqual([]);
  expect(await kept(named[0]!)).toBe('public, max-age=31536000, immutable');
  for (const path of ['', 'sw.js', 'worksheets/capacity/', 'manifest.webmanifest', 'pagefind/pagefind.js'])
    expect(await kept(path), path).toBe('no-cache');
});

test('the list of headers is for the host: it is neither handed out nor kept for use without a signal', async () => {
  expect((await at('_headers')).status).toBe(404);
  expect(textOf(dist, 'sw.js')).not.toContain('_headers');
});
