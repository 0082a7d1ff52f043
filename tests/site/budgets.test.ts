/** What the built site may weigh, kind by kind, over the wire. What a page may load of script is in scripts.test.ts. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, inject, test } from 'vitest';
import { compressed, filesUnder } from './builtSite.ts';

const dist = inject('dist');
const files = filesUnder(dist);

/** Nothing is gained by compressing these again. */
const isPacked = (path: string) => /\.(woff2|png)$|^pagefind\/.*\.pf_/.test(path);
const weigh = (path: string) => {
  const data = readFileSync(join(dist, path));
  return isPacked(path) ? data.length : compressed(data);
};
const weights = new Map(files.map((path) => [path, weigh(path)]));
const heaviest = (paths: readonly string[]) => paths.toSorted((a, b) => weights.get(b)! - weights.get(a)!);

/** Every file is of one kind: the first whose pattern its path has. Bytes: all of a kind together, and the heaviest one. */
const kinds: readonly { readonly name: string; readonly is: RegExp; readonly all: number; readonly one: number }[] = [
  { name: 'search, engine and index', is: /^pagefind\//, all: 700_000, one: 90_000 },
  { name: 'the calculation package', is: /^calc(\/|\.)/, all: 120_000, one: 60_000 },
  { name: 'pages', is: /\.html$/, all: 900_000, one: 45_000 },
  { name: 'scripts', is: /\.js$/, all: 330_000, one: 50_000 },
  { name: 'styles', is: /\.css$/, all: 22_000, one: 22_000 },
  { name: 'fonts', is: /\.woff2$/, all: 34_100, one: 34_100 },
  { name: 'pictures', is: /\.(svg|png|webp|jpg)$/, all: 4_000, one: 2_000 },
  { name: 'all else', is: /./, all: 12_000, one: 6_000 },
];
const kindOf = (path: string) => kinds.find(({ is }) => is.test(path));

test.each(kinds)('$name: no more than what is allowed, all together and each', (kind) => {
  const [first, ...rest] = heaviest(files.filter((path) => kindOf(path) === kind));
  expect(first, `there are none: ${kind.name}`).toBeDefined();
  const paths = [first!, ...rest];
  const all = paths.reduce((sum, path) => sum + weights.get(path)!, 0);
  const five = paths.slice(0, 5).map((path) => `${path} ${weights.get(path)}`);
  console.log(`  ${kind.name}: ${all} bytes in ${paths.length} files, the heaviest ${five.join(', ')}`);
  expect(all).toBeLessThanOrEqual(kind.all);
  expect(weights.get(first!), first).toBeLessThanOrEqual(kind.one);
});

test('the whole site weighs no more than 2 MB over the wire', () => {
  const all = [...weights.values()].reduce((sum, bytes) => sum + bytes, 0);
  console.log(`  the whole site: ${all} bytes in ${files.length} files`);
  expect(all).toBeLessThanOrEqual(2_000_000);
});
