/** Words that this site keeps out, because they say something else, or something that two probes cannot show. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, inject, test } from 'vitest';
import { attributes, filesUnder, pagesUnder, textOf } from './builtSite.ts';

const dist = inject('dist');
const words = fileURLToPath(new URL('../../src/words/', import.meta.url));

const keptOut = /\b(scores?|scored|grades?|graded|vitals?|health|healthy|targets?|test-(in|out)|pairing|settled)\b/i;
/** A result carries its range; ± belongs to the limit of an instrument. */
const resultWithLimit = /\d\s*%?\s*±\s*\d/;

const spoken = ['alt', 'aria-label', 'title', 'content', 'placeholder'];

/** What is seen or heard of a page. */
function said(html: string): string[] {
  const body = html.replace(/<(script|style|annotation)\b[\s\S]*?<\/\1>/g, ' ').replace(/<!--[\s\S]*?-->/g, ' ');
  const text = body.replace(/<meta http-equiv[^>]*>/g, ' ').replace(/<[^>]*>/g, '\n');
  return [
    ...text.split('\n'),
    ...spoken.flatMap((name) => attributes(body.replace(/<meta http-equiv[^>]*>/g, ''), '', name)),
  ];
}

/** The strings of a module of words, its keys and comments left out. */
function strings(code: string): string[] {
  const bare = code.replace(/\/\*[\s\S]*?\*\//g, '').replace(/^\s*\/\/.*$/gm, '');
  return [...bare.matchAll(/'([^'\n]*)'(?!\s*:)|`([^`]*)`/g)].map((found) => found[1] ?? found[2] ?? '');
}

const against = (pattern: RegExp, texts: readonly string[]) => texts.filter((text) => pattern.test(text));

test.each(pagesUnder(dist))('%s says none of the words that are kept out', (path) => {
  const texts = said(textOf(dist, path));
  expect(texts.join('').length).toBeGreaterThan(200);
  expect(against(keptOut, texts)).toEqual([]);
  expect(against(resultWithLimit, texts)).toEqual([]);
});

test.each(pagesUnder(dist))('%s has no heading that promises what was “delivered”', (path) => {
  const headings = textOf(dist, path).match(/<(h[1-6]|title)\b[^>]*>[\s\S]*?<\/\1>/g) ?? [];
  expect(against(/\bdelivered\b/i, headings)).toEqual([]);
});

test.each(filesUnder(words))('the words in %s are none of those that are kept out', (path) => {
  const texts = strings(readFileSync(words + path, 'utf8'));
  expect(texts.length).toBeGreaterThan(0);
  expect(against(keptOut, texts)).toEqual([]);
  expect(against(resultWithLimit, texts)).toEqual([]);
});
