/** What a page may weigh in scripts before it gives its first answer, on the slowest phone that should still be quick. */
import { readFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, inject, test } from 'vitest';
import { fileNames } from '../../src/build/files.mjs';
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
const mostBefore: Readonly<Record<string, number>> = {
  'reports/read/index.html': 45_000,
  'reports/view/index.html': 45_000,
  'worksheets/airflow/index.html': 45_000,
  'worksheets/capacity/index.html': 45_000,
  'worksheets/expected/index.html': 45_000,
  'worksheets/line-set/index.html': 45_000,
  'worksheets/probes/index.html': 45_000,
  // A chart is drawn before anything is asked: all of its drawing is there from the first moment.
  'worksheets/moist-air/index.html': 48_000,
};
const worksheets = Object.keys(mostBefore);
/** Articles with a picture that wakes when it is seen: what it brings then, before anybody asks it to move. */
const livePictures = [
  'method/duct-system/index.html',
  'method/measured-cooling/index.html',
  'reference/factors/index.html',
];
const mostWhenSeen = 30_000;
/** Articles with a picture that is moved by sliders: its figures stand in the page, and no calculation comes with it. */
const tried = [
  'airflow-per-ton',
  'altitude',
  'blower-heat',
  'how-sure',
  'long-lines',
  'near-saturation',
  'static-pressure',
  'wait-until-steady',
  'what-it-should-make',
].map((name) => `method/${name}/index.html`);
const mostWhenTried = 27_500;
/** Pages whose island is a list and no sheet: of jobs, of exercises. */
const lists = [
  'jobs/index.html',
  'jobs/compare/index.html',
  'classroom/exercises/index.html',
  'classroom/exercises/answers/index.html',
  'classroom/spoilt/index.html',
  'classroom/spoilt/answers/index.html',
];
const mostOfList = 30_000;
/** Lessons: a question that asks first, before its answer or another question is asked for; then the part that makes them. */
const lessons = pagesUnder(inject('dist')).filter((path) =>
  /^classroom\/(?!exercises|spoilt\/|traverse)[^/]+\/index\.html$/.test(path),
);
/** Of these 22 000 are what any page with an island has. */
const mostOfLesson = 33_500;
const mostOfAnswers = 20_000;
/** The search, before its engine and its index, which come with the first letter. */
const searching = ['search/index.html'];
const mostOfSearch = 2_600;
const mostOfEngine = 110_000;
const dist = inject('dist');
const chunks = inject('chunks');

const weigh = (path: string) => compressed(readFileSync(join(dist, path)));
const total = (paths: Iterable<string>) => [...paths].reduce((sum, path) => sum + weigh(path), 0);
const inlineWeight = (html: string) => inlineScripts(html).reduce((sum, code) => sum + compressed(code), 0);
const loadedBy = (html: string) =>
  closure(
    dist,
    scriptsOf(html).map((url) => url.replace(/^\//, '')),
  );

const inSheet = () =>
  [...loadedBy(textOf(dist, 'worksheets/capacity/index.html'))].flatMap((file) => chunks[file] ?? []);

/** A module of the sources and all that it imports for more than its types. */
function sourceClosure(start: string): Set<string> {
  const root = fileURLToPath(new URL('../../', import.meta.url));
  const reached = new Set<string>();
  const follow = (path: string): void => {
    if (reached.has(path)) return;
    reached.add(path);
    const code = readFileSync(root + path, 'utf8');
    for (const [, to = ''] of code.matchAll(/^(?:import|export) (?!type)[^;]*?from '(\.[^']+)'/gm))
      follow(posix.join(posix.dirname(path), to));
  };
  follow(start);
  return reached;
}

const isTypes = (path: string) => path === 'src/calc/types.ts';

/** The names of the modules in a file, folder by folder. */
function contents(file: string): string {
  const folders = Map.groupBy(chunks[file] ?? [], (path) => posix.dirname(path));
  return [...folders]
    .map(([folder, paths]) => `${folder}: ${paths.map((path) => posix.parse(path).name).join(' ')}`)
    .join('; ');
}

/** Late parts, and the late parts of late parts, each with what is loaded by then: a part is asked for by one that is there. */
function lateParts(loaded: ReadonlySet<string>): Map<string, ReadonlySet<string>> {
  const late = new Map<string, ReadonlySet<string>>();
  const waiting: (readonly [paths: Iterable<string>, there: ReadonlySet<string>])[] = [[loaded, loaded]];
  for (let next = waiting.shift(); next; next = waiting.shift()) {
    const [paths, there] = next;
    for (const path of [...paths].flatMap((from) => importsOf(dist, from).late)) {
      if (loaded.has(path) || late.has(path)) continue;
      late.set(path, there);
      const brought = closure(dist, [path], there);
      waiting.push([brought, new Set([...there, ...brought])]);
    }
  }
  return late;
}

test.each(worksheets)('%s loads no more script before its first answer than its budget', (path) => {
  const html = textOf(dist, path);
  const loads = loadedBy(html);
  const bytes = total(loads) + inlineWeight(html);
  console.log(`  ${path}: ${bytes} bytes of script, ${inlineWeight(html)} of them in the page`);
  for (const file of loads) console.log(`    ${file} ${weigh(file)}: ${contents(file)}`);
  expect(loads.size).toBeGreaterThan(3);
  expect(bytes).toBeLessThanOrEqual(mostBefore[path] ?? 0);
});

test('the capacity sheet starts without the expected half of the assessment', () => {
  const measured = sourceClosure('src/calc/measured.ts');
  // What a figure can be at all is known where it is typed.
  const fields = sourceClosure('src/job/quantities.ts');
  const expectedHalf = [...sourceClosure('src/calc/assess.ts')].filter(
    (path) => !measured.has(path) && !fields.has(path),
  );
  expect(expectedHalf.length).toBeGreaterThan(10);
  expect(inSheet().filter((path) => expectedHalf.includes(path))).toEqual([]);
  expect(inSheet()).toEqual(expect.arrayContaining([...measured].filter((path) => !isTypes(path))));
});

test('a first file of a worksheet is one that the list of files names, or an entry', () => {
  const first = worksheets.flatMap((page) => [...loadedBy(textOf(dist, page))]);
  const isListed = (file: string) => fileNames.some((name) => file.includes(`/${name}.`));
  const others = first.filter((file) => !isListed(file)).flatMap((file) => chunks[file] ?? []);
  expect(others.filter((path) => path.startsWith('src/'))).toEqual([]);
});

test('nothing of the capacity sheet comes to the air chart, not even late', () => {
  const loads = loadedBy(textOf(dist, 'worksheets/moist-air/index.html'));
  const all = [...loads, ...[...lateParts(loads)].flatMap(([late, there]) => [...closure(dist, [late], there)])];
  const sources = all.flatMap((file) => chunks[file] ?? []);
  expect(sources).toContain('src/islands/jobProcess.ts');
  expect(sources.filter((path) => path.startsWith('src/islands/capacity/'))).toEqual([]);
});

/**
 * The explorer and the check of a report begin with next to nothing: their parts bring the expectation with them. The page of a report
 * for the trade brings chart, plot and working as well. Elsewhere the expectation, with how sure it is and what was typed of limits
 * and standards, is the largest.
 */
const mostLate = (page: string) => (/reports\/view/.test(page) ? 53_000 : /expected|read/.test(page) ? 48_000 : 45_000);

test.each(worksheets)('each part of %s that comes late brings no more than its budget', (page) => {
  const loads = loadedBy(textOf(dist, page));
  const late = [...lateParts(loads)].map(([path, there]) => ({ path, bytes: total(closure(dist, [path], there)) }));
  console.log(`  late: ${late.map(({ path, bytes }) => `${path} ${bytes}`).join(', ')}`);
  expect(late.length).toBeGreaterThan(0);
  for (const { path, bytes } of late) expect(bytes, path).toBeLessThanOrEqual(mostLate(page));
});

test.each([...livePictures, ...tried])(
  '%s loads nothing of its picture before that is seen, and then little',
  (path) => {
    const html = textOf(dist, path);
    const bytes = total(loadedBy(html));
    console.log(`  ${path}: ${bytes} bytes of script once its picture is seen`);
    expect(attributes(html, 'astro-island', 'client')).toEqual(['visible']);
    expect(html).not.toContain('modulepreload');
    expect(inlineWeight(html)).toBeLessThanOrEqual(4_200);
    expect(bytes).toBeLessThanOrEqual(tried.includes(path) ? mostWhenTried : mostWhenSeen);
  },
);

test.each(tried)(
  '%s brings figures to its sliders and no calculation, and shows its picture without any script',
  (path) => {
    const html = textOf(dist, path);
    // The file that every island starts with has constants and units, and what a figure can be.
    const own = [...loadedBy(html)].filter((file) => !file.includes('/base.')).flatMap((file) => chunks[file] ?? []);
    expect(own.length).toBeGreaterThan(3);
    const calculated = own.filter((module) => module.startsWith('src/calc/'));
    expect(calculated).toEqual([]);
    const figure = /<figure class="picture try-it">[\s\S]*?<\/figure>/.exec(html)?.[0] ?? '';
    expect(figure.match(/<svg/g)?.length).toBeGreaterThanOrEqual(2);
    expect(figure).toMatch(/role="status">[^<]{20,}</);
  },
);

test.each(lists)('%s brings at most 30 000 bytes of script', (path) => {
  const html = textOf(dist, path);
  const bytes = total(loadedBy(html)) + inlineWeight(html);
  console.log(`  ${path}: ${bytes} bytes of script`);
  expect(bytes).toBeLessThanOrEqual(mostOfList);
});

test.each(lessons)(
  '%s brings at most 33 500 bytes of script once its question is seen, and 20 000 for an answer',
  (path) => {
    const html = textOf(dist, path);
    const loads = loadedBy(html);
    const bytes = total(loads) + inlineWeight(html);
    // Beside them there are the parts that any page with an island may ask for.
    const isOfLessons = (part: string) => (chunks[part] ?? []).some((one) => /\/(lessons|predict)\//.test(one));
    const late = [...lateParts(loads)]
      .filter(([part]) => isOfLessons(part))
      .map(([part, there]) => total(closure(dist, [part], there)));
    console.log(`  ${path}: ${bytes} bytes of script, and late ${late.join(', ')}`);
    if (path === lessons[0]) for (const file of loads) console.log(`    ${file} ${weigh(file)}: ${contents(file)}`);
    expect(attributes(html, 'astro-island', 'client')).toEqual(['visible']);
    expect(bytes).toBeLessThanOrEqual(mostOfLesson);
    expect(late.length).toBeGreaterThan(5);
    for (const more of late) expect(more).toBeLessThanOrEqual(mostOfAnswers);
  },
);

test.each(searching)('%s has at most 2 600 bytes of script, and its engine at most 110 000', (path) => {
  const html = textOf(dist, path);
  const bytes = total(loadedBy(html)) + inlineWeight(html);
  const engine = filesUnder(dist).filter((file) => /^pagefind\/(pagefind(-worker)?\.js|wasm)/.test(file));
  console.log(`  ${path}: ${bytes} bytes of script, and ${total(engine)} of the engine`);
  expect(html).not.toContain('<astro-island');
  expect(bytes).toBeLessThanOrEqual(mostOfSearch);
  expect(engine.length).toBe(3);
  expect(total(engine)).toBeLessThanOrEqual(mostOfEngine);
});

test.each(
  pagesUnder(dist).filter(
    (path) => ![...worksheets, ...livePictures, ...tried, ...lists, ...lessons, ...searching].includes(path),
  ),
)('%s has at most 1 500 bytes of script, and no island', (path) => {
  const html = textOf(dist, path);
  const bytes = total(loadedBy(html)) + inlineWeight(html);
  console.log(`  ${path}: ${bytes} bytes of script`);
  expect(html).not.toContain('<astro-island');
  expect(bytes).toBeLessThanOrEqual(1_500);
});

test('every built script is reached from a page: nothing slips past these sums', () => {
  const reached = pagesUnder(dist).flatMap((path) => {
    const loaded = loadedBy(textOf(dist, path));
    return [...loaded, ...[...lateParts(loaded).keys()].flatMap((late) => [...closure(dist, [late])])];
  });
  const built = filesUnder(dist).filter((path) => path.startsWith('_astro/') && path.endsWith('.js'));
  expect(built.filter((path) => !reached.includes(path))).toEqual([]);
});
