/** What a page may weigh in scripts before it gives its first answer, on the slowest phone that should still be quick. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, inject, test } from 'vitest';
import {
  attributes,
  closure,
  compressed,
  filesUnder,
  importsOf,
  inlineScripts,
  pagesUnder,
  scriptsOf,
  textOf,
} from './builtSite.ts';

/** Pages with an island, and what they may load before their first answer. */
const worksheets = ['worksheets/capacity/index.html', 'worksheets/moist-air/index.html'];
const mostBefore = 45_000;
/** Articles with a picture that wakes when it is seen: what it brings then, before anybody asks it to move. */
const livePictures = ['method/measured-cooling/index.html'];
const mostWhenSeen = 30_000;
const dist = inject('dist');

const weigh = (path: string) => compressed(readFileSync(join(dist, path)));
const total = (paths: Iterable<string>) => [...paths].reduce((sum, path) => sum + weigh(path), 0);
const inlineWeight = (html: string) => inlineScripts(html).reduce((sum, code) => sum + compressed(code), 0);
const loadedBy = (html: string) =>
  closure(
    dist,
    scriptsOf(html).map((url) => url.replace(/^\//, '')),
  );

/** Late parts, and the late parts of late parts. */
function lateParts(loaded: ReadonlySet<string>): Set<string> {
  const late = new Set<string>();
  const look = (paths: Iterable<string>): void => {
    for (const path of [...paths].flatMap((from) => importsOf(dist, from).late)) {
      if (loaded.has(path) || late.has(path)) continue;
      late.add(path);
      look(closure(dist, [path], loaded));
    }
  };
  look(loaded);
  return late;
}

test.each(worksheets)('%s loads at most 45 000 bytes of script before its first answer', (path) => {
  const html = textOf(dist, path);
  const loads = loadedBy(html);
  const bytes = total(loads) + inlineWeight(html);
  console.log(`  ${path}: ${bytes} bytes of script, ${inlineWeight(html)} of them in the page`);
  expect(loads.size).toBeGreaterThan(3);
  expect(bytes).toBeLessThanOrEqual(mostBefore);
});

test.each(worksheets)('each part of %s that comes late brings at most 40 000 bytes more', (page) => {
  const loads = loadedBy(textOf(dist, page));
  const late = [...lateParts(loads)].map((path) => ({ path, bytes: total(closure(dist, [path], loads)) }));
  console.log(`  late: ${late.map(({ path, bytes }) => `${path} ${bytes}`).join(', ')}`);
  expect(late.length).toBeGreaterThan(0);
  for (const { path, bytes } of late) expect(bytes, path).toBeLessThanOrEqual(40_000);
});

test.each(livePictures)(
  '%s loads nothing of its picture before that is seen, and then at most 30 000 bytes',
  (path) => {
    const html = textOf(dist, path);
    const bytes = total(loadedBy(html));
    console.log(`  ${path}: ${bytes} bytes of script once its picture is seen`);
    expect(attributes(html, 'astro-island', 'client')).toEqual(['visible']);
    expect(html).not.toContain('modulepreload');
    expect(inlineWeight(html)).toBeLessThanOrEqual(4_200);
    expect(bytes).toBeLessThanOrEqual(mostWhenSeen);
  },
);

test.each(pagesUnder(dist).filter((path) => ![...worksheets, ...livePictures].includes(path)))(
  '%s has at most 1 500 bytes of script, and no island',
  (path) => {
    const html = textOf(dist, path);
    const bytes = total(loadedBy(html)) + inlineWeight(html);
    console.log(`  ${path}: ${bytes} bytes of script`);
    expect(html).not.toContain('<astro-island');
    expect(bytes).toBeLessThanOrEqual(1_500);
  },
);

test('every built script is reached from a page: nothing slips past these sums', () => {
  const reached = pagesUnder(dist).flatMap((path) => {
    const loaded = loadedBy(textOf(dist, path));
    return [...loaded, ...[...lateParts(loaded)].flatMap((late) => [...closure(dist, [late])])];
  });
  const built = filesUnder(dist).filter((path) => path.startsWith('_astro/') && path.endsWith('.js'));
  expect(built.filter((path) => !reached.includes(path))).toEqual([]);
});
