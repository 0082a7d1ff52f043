/** How hard articles are to read, and that nothing in them is longer than a reader has breath for. */
import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { plainProse } from './prose.ts';
import { readingLevel, sentencesOf, syllablesOf } from './readingLevel.ts';

const content = new URL('../../content/', import.meta.url);
const articles = ['method', 'cautions', 'reports'].flatMap((section) =>
  readdirSync(new URL(section, content)).map((name) => {
    const text = readFileSync(new URL(`${section}/${name}`, content), 'utf8').replace(/^---\n[\s\S]*?\n---\n/, '');
    const path = `${section}/${name}`;
    return { path, forOwners: section === 'reports' || name === 'your-own-house.mdx', text: plainProse(text) };
  }),
);
const wordsOf = (sentence: string) => sentence.split(' ').length;

/** Of a trade school, and lower for the owner of a system: school grades, and words of the longest sentence. Our choice. */
const limits = { trade: { grade: 8, words: 33 }, owner: { grade: 5, words: 24 } } as const;
const limitsOf = ({ forOwners }: (typeof articles)[number]) => limits[forOwners ? 'owner' : 'trade'];

test('syllables are counted as they are spoken', () => {
  const spoken: Readonly<Record<number, string>> = {
    1: 'air coil moved used read one through which taped bridged scale whole filled square shaped burned',
    2: 'airflow blower probe’s-end measured cooling pressure static table houses changes pages needed maker people being quiet science simple furnace engine moment likely outdoors',
    3: 'several capable idea area condenser condition certified expanded instrument uneven side-by-side resistance adjusted radio',
    4: 'temperature humidity capacity refrigerant radiation material calculated evaporate',
  };
  const counted = Object.values(spoken).map((words) => words.split(' ').map(syllablesOf));
  expect(counted).toEqual(Object.entries(spoken).map(([count, words]) => words.split(' ').map(() => Number(count))));
});

test('the grade is that of the formula: 9 words in 2 sentences, 11 syllables', () => {
  const { sentences, words, syllables, grade } = readingLevel('The coil is cold. Water runs off it slowly.');
  expect({ sentences, words, syllables }).toEqual({ sentences: 2, words: 9, syllables: 11 });
  expect(grade).toBeCloseTo(0.39 * 4.5 + (11.8 * 11) / 9 - 15.59, 9);
});

test('a text of long words and long sentences is a higher grade than a plain one', () => {
  const plain = readingLevel('Hold both probes in one air. Write down what they show.');
  const hard = readingLevel(
    'Simultaneous comparative observation of instrumentation within identical psychrometric conditions necessitates documentation.',
  );
  expect(plain.grade).toBeLessThan(4);
  expect(hard.grade).toBeGreaterThan(20);
});

test.each(articles)('$path is written for its reader’s grade', (article) => {
  const { grade, words } = readingLevel(article.text);
  expect(words).toBeGreaterThan(150);
  expect(grade).toBeLessThanOrEqual(limitsOf(article).grade);
});

test.each(articles)('$path has no sentence out of breath', (article) => {
  const { words } = limitsOf(article);
  expect(sentencesOf(article.text).filter((sentence) => wordsOf(sentence) > words)).toEqual([]);
});
