/**
 * How hard a text is to read, as a grade of an American school: Kincaid, Fishburne, Rogers and Chissom, Derivation of new
 * readability formulas for Navy enlisted personnel, Research Branch Report 8-75 (1975). Made for English; a figure to compare
 * texts by, not a measure of whether they are understood.
 */
export interface ReadingLevel {
  readonly sentences: number;
  readonly words: number;
  readonly syllables: number;
  readonly grade: number;
}

const wordPattern = /\p{L}[\p{L}’'-]*/gu;

/** Grade = 0.39 · words a sentence + 11.8 · syllables a word − 15.59. Figures and signs are no words. */
export function readingLevel(text: string): ReadingLevel {
  const found = sentencesOf(text);
  const words = found.flatMap((sentence) => sentence.match(wordPattern) ?? []);
  const syllables = words.reduce((sum, word) => sum + syllablesOf(word), 0);
  const grade = (0.39 * words.length) / found.length + (11.8 * syllables) / words.length - 15.59;
  return { sentences: found.length, words: words.length, syllables, grade };
}

/** Sentences of two words and more: they end at a full stop, a question or exclamation mark, or with their paragraph. */
export function sentencesOf(text: string): readonly string[] {
  return text
    .split(/(?<=[.?!])["”’)]?\s+|\n\s*\n/)
    .map((sentence) => sentence.replace(/\s+/g, ' ').trim())
    .filter((sentence) => (sentence.match(wordPattern)?.length ?? 0) >= 2);
}

/** Groups of vowels, less an e that is not spoken; each part of a compound by itself. A rule of thumb, right for most words. */
export function syllablesOf(word: string): number {
  return word
    .toLowerCase()
    .split('-')
    .reduce((sum, part) => sum + syllablesOfPart(part.replace(/[’'].*$/, '')), 0);
}

function syllablesOfPart(part: string): number {
  if (part === '') return 0;
  const spoken = part
    .replace(/(?<=[^aeiouyscgxz])(?<![cs]h)es$|(?<=[^aeioutd])ed$|(?<![aeiouy])(?<=.[^l])e$|(?<=[aeiouy]l)e$/, '')
    .replace(/(?<=[^aeiouy])e(?=ment|ful|less|ly$)/, '');
  const groups = spoken.match(/[aeiouy]+/g)?.length ?? 0;
  // Two vowels that are spoken apart: radiator, being, area, quiet, science.
  const apart = spoken.match(/(?<![cstg])i[ao]|[ey]ing|ea$|iet|cien/g)?.length ?? 0;
  return Math.max(1, groups + apart);
}
