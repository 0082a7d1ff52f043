/** What every built page owes a reader, a search engine and the policy of the site. */
import { createHash } from 'node:crypto';
import { expect, inject, test } from 'vitest';
import { attributes, inlineScripts, pagesUnder, textOf } from './builtSite.ts';

const dist = inject('dist');
const pages = pagesUnder(dist).map((path) => ({ path, html: textOf(dist, path) }));

const titleOf = (html: string) => /<title>([^<]*)<\/title>/.exec(html)?.[1]?.trim() ?? '';
const metaOf = (html: string, name: string) => {
  const tags = html.match(/<meta\b[^>]*>/g) ?? [];
  const tag = tags.find((one) => new RegExp(`(name|http-equiv)="${name}"`, 'i').test(one));
  return tag ? (attributes(tag, 'meta', 'content')[0] ?? '') : '';
};

test.each(pages)('$path has one heading of the first rank, a title, a description and a language', ({ html }) => {
  expect(html.match(/<h1\b/g)).toHaveLength(1);
  expect(titleOf(html)).not.toBe('');
  expect(metaOf(html, 'description').length).toBeGreaterThan(20);
  expect(attributes(html, 'html', 'lang')).toEqual(['en']);
});

test('no two pages share a title or a description', () => {
  const titles = pages.map(({ html }) => titleOf(html));
  const descriptions = pages.map(({ html }) => metaOf(html, 'description'));
  expect(new Set(titles).size).toBe(pages.length);
  expect(new Set(descriptions).size).toBe(pages.length);
});

test.each(pages)('$path goes down its headings without leaving out a rank', ({ html }) => {
  const ranks = [...html.matchAll(/<h([1-6])\b/g)].map(([, rank]) => Number(rank));
  for (const [index, rank] of ranks.slice(1).entries())
    expect(rank - ranks[index]!, `heading ${index + 2}`).toBeLessThan(2);
});

test.each(pages)('$path carries a policy that allows nothing inline but what it names', ({ html }) => {
  const policy = metaOf(html, 'content-security-policy');
  expect(policy).toMatch(/default-src 'none'/);
  expect(policy).toMatch(/script-src 'self'/);
  expect(policy).toMatch(/style-src 'self'/);
  expect(policy).not.toMatch(/unsafe|https?:|\*/);
  // The policy rules over what stands after it.
  const ruled = html.slice(html.indexOf('content-security-policy'));
  for (const code of inlineScripts(ruled)) {
    const hash = createHash('sha256').update(code).digest('base64');
    expect(policy, code.slice(0, 60)).toContain(`'sha256-${hash}'`);
  }
});

test.each(pages)('$path has no style and no handler in its elements, which the policy would refuse', ({ html }) => {
  const tags = html.replace(/<script\b[\s\S]*?<\/script>/g, '').match(/<[a-z][^>]*>/g) ?? [];
  expect(tags.filter((tag) => /\s(style|on[a-z]+)="/.test(tag))).toEqual([]);
});

test.each(pages)('$path uses no name of an element twice', ({ html }) => {
  const ids = attributes(html.replace(/<script\b[\s\S]*?<\/script>/g, ''), '', 'id');
  expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
});
