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
  { name: 'search, engine and index', is: /^pagefind\//, all: 500_000, one: 66_000 },
  { name: 'the calculation package', is: /^calc(\/|\.)/, all: 195_000, one: 100_000 },
  { name: 'pages', is: /\.html$/, all: 640_000, one: 36_000 },
  { name: 'scripts', is: /\.js$/, all: 490_000, one: 34_000 },
  { name: 'styles', is: /\.css$/, all: 14_500, one: 14_500 },
  { name: 'fonts', is: /\.woff2$/, all: 34_100, one: 34_100 },
  { name: 'pictures', is: /\.(svg|png|webp|jpg)$/, all: 3_000, one: 1_900 },
  { name: 'all else', is: /./, all: 5_000, one: 3_000 },
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
