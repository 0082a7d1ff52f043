/** What every article owes its reader, as far as a machine can read it. */
import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { type AnySourceKey, sources } from '~/calc/sources.ts';
import { costs } from '~/components/mistakes/index.ts';
import { sourcesIn } from '~/components/sourcesIn.ts';
import { worksheets } from '~/words/en/worksheets.ts';
import { prose } from './prose.ts';

const content = new URL('../../content/', import.meta.url);
const sections = ['method', 'cautions', 'reports', 'classroom'] as const;

interface Article {
  readonly path: string;
  readonly section: (typeof sections)[number];
  readonly front: string;
  readonly body: string;
}

const articles: readonly Article[] = sections.flatMap((section) =>
  readdirSync(new URL(section, content)).map((name) => {
    const text = readFileSync(new URL(`${section}/${name}`, content), 'utf8');
    const [, front = '', body = ''] = /^---\n([\s\S]*?)\n---\n([\s\S]*)$/.exec(text) ?? [];
    return { path: `${section}/${name}`, section, front, body };
  }),
);
const of = (...names: readonly Article['section'][]) => articles.filter(({ section }) => names.includes(section));

const frontOf = ({ front }: Article, key: string) => new RegExp(`^${key}: "?(.*?)"?$`, 'm').exec(front)?.[1] ?? '';
const stepsOf = ({ front }: Article) => [...front.matchAll(/^ {2}- "?(.*?)"?$/gm)].map(([, step = '']) => step);

/** All that is read of an article: its summary, its steps, its text. */
const words = (article: Article) =>
  [frontOf(article, 'summary'), ...stepsOf(article), prose(article.body)]
    .join(' ')
    .match(/[\p{L}\d][\p{L}\d’'.,°%/-]*/gu)?.length ?? 0;
const sentences = (text: string) => text.match(/[.!?](?=\s|$)/g)?.length ?? 0;

test('there are articles on every shelf, and no two of a shelf have one place', () => {
  for (const section of sections) {
    const orders = of(section).map((article) => Number(frontOf(article, 'order')));
    expect(orders.length, section).toBeGreaterThan(0);
    expect(new Set(orders).size, section).toBe(orders.length);
  }
  expect(of('method').length).toBeGreaterThan(30);
});

test.each(of('method', 'cautions', 'reports'))('$path has 400 to 1200 words', (article) => {
  expect(words(article)).toBeGreaterThanOrEqual(400);
  expect(words(article)).toBeLessThanOrEqual(1200);
});

test.each(of('method', 'cautions', 'reports'))('$path says what it is about in two sentences', (article) => {
  expect(sentences(frontOf(article, 'summary'))).toBe(2);
});

test.each(of('method', 'cautions'))('$path has steps for the field that fit on a card', (article) => {
  const steps = stepsOf(article);
  expect(steps.length).toBeGreaterThanOrEqual(3);
  // 74 × 105 mm hold 25 lines of 38 letters under a title of two.
  const lines = steps.reduce((sum, step) => sum + Math.ceil(step.length / 38), 0);
  expect(lines).toBeLessThanOrEqual(25);
  for (const step of steps) {
    expect(step).toMatch(/[.?!]$/);
    expect(step.length).toBeLessThanOrEqual(110);
  }
  expect(steps.length).toBeLessThanOrEqual(9);
});

test.each(of('method', 'cautions', 'classroom'))('$path names what it rests on', ({ body }) => {
  expect(sourcesIn(body).length).toBeGreaterThan(0);
});

test.each(articles)('$path names sources and costs that exist', ({ body }) => {
  for (const [, key = ''] of body.matchAll(/<Source of="([^"]*)"/g)) expect(Object.keys(sources)).toContain(key);
  for (const [, key = ''] of body.matchAll(/costs=\{costs\.(\w+)\}/g)) expect(Object.keys(costs)).toContain(key);
});

test.each(of('method'))('$path tells what its mistakes cost by the package, and types no cost', ({ body }) => {
  for (const [mistake] of body.matchAll(/<Mistake[ >][\s\S]*?<\/Mistake>/g)) {
    const said = mistake.replace(/<[^>]*>/g, '');
    expect(said).not.toMatch(/(reads|is) (about )?\d+(\.\d+)? % (high|low|too)/);
  }
});

/** Sources known from memory stand for equations and rules; a limit that a reader might hold somebody to needs one that was read. */
test.each(articles)('$path quotes no limit on the word of a source that nobody read', ({ body }) => {
  const remembered = sourcesIn(body).filter((key) => sources[key].known === 'memory');
  const limit = /\b(at most|at least|no more than|not more than|minimum|maximum|must not exceed|limit of)\b[^.]*\d/i;
  for (const key of remembered)
    for (const [, before = ''] of body.matchAll(new RegExp(`([^.]*\\.)\\s*<Source of="${key}"`, 'g')))
      expect(before, key).not.toMatch(limit);
});

test.each(articles)('$path leads to worksheets that exist', (article) => {
  const named = [frontOf(article, 'worksheet'), ...article.body.matchAll(/\]\((\/worksheets\/[^)#?]*)/g)].map((one) =>
    typeof one === 'string' ? one : (one[1] ?? ''),
  );
  for (const path of named.filter((one) => one !== '')) expect(worksheets.map((one) => one.path)).toContain(path);
});

test('what is common practice says so by that name alone', () => {
  const key: AnySourceKey = 'commonPractice';
  for (const { path, body } of articles)
    if (/common practice/i.test(prose(body))) expect(sourcesIn(body), path).toContain(key);
});

test.each(Object.entries(costs))('the cost of %s is a share that can be true', (_, { by }) => {
  for (const share of typeof by === 'number' ? [by] : by) {
    expect(Number.isFinite(share)).toBe(true);
    expect(Math.abs(share)).toBeGreaterThan(0.0005);
    expect(Math.abs(share)).toBeLessThan(0.5);
  }
});

test('a probe off by one degree, and by one point, costs what the budget of this state says', () => {
  // From an independent computation at the same state: 10.30 and −10.38 % a °F; 3.66 and −1.88 % a point of humidity.
  expect(100 * Number(costs.returnWarm.by)).toBeCloseTo(10.3, 0);
  expect(100 * Number(costs.supplyWarm.by)).toBeCloseTo(-10.4, 0);
  expect(100 * Number(costs.returnMoist.by)).toBeCloseTo(3 * 3.66, 0);
  expect(100 * Number(costs.supplyMoist.by)).toBeCloseTo(3 * -1.88, 0);
  // A 5 by 5 grid of equal areas on the seventh-root law reads 3.4 % high; averaged pressures of this traverse, 1.2 %.
  expect(100 * Number(costs.equalAreas.by)).toBeCloseTo(3.4, 1);
  expect(100 * Number(costs.pressuresAveraged.by)).toBeCloseTo(1.2, 1);
});

test('a caution of a worksheet leads to an article, and every article on a danger is led to', () => {
  const source = readFileSync(new URL('../../src/words/en/parts.ts', import.meta.url), 'utf8');
  const pages = [...source.matchAll(/^ {2}\| '([\w-]+)'/gm)].map(([, page = '']) => page);
  const there = of('cautions').map(({ path }) => path.replace(/^cautions\/|\.mdx$/g, ''));
  const overviews = ['before-you-open-a-panel', 'your-own-house'];
  expect(pages.toSorted()).toEqual(there.filter((page) => !overviews.includes(page)).toSorted());
});
