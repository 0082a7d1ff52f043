import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { sources } from '../../src/calc/sources.ts';

const root = new URL('../../', import.meta.url);
const textsUnder = (folder: string, ending: RegExp) =>
  readdirSync(new URL(folder, root), { recursive: true, encoding: 'utf8' })
    .filter((path) => ending.test(path) && !/^calc\/(sources|sourceLabels|.*[wW]orks)\.ts$/.test(path))
    .map((path) => readFileSync(new URL(`${folder}${path}`, root), 'utf8'));

test('every source is used by a calculation, an article, a word of the glossary or an outside check', () => {
  const all = [
    ...textsUnder('src/', /\.(ts|tsx|astro)$/),
    ...textsUnder('content/', /\.(mdx|yaml)$/),
    ...textsUnder('tests/published/', /\.ts$/),
  ].join('\n');
  expect(Object.keys(sources).filter((key) => !new RegExp(`['"\\s]${key}\\b`).test(all))).toEqual([]);
});
