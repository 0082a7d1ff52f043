/** Every place to look, and every reason for one, has its words. */
import { describe, expect, test } from 'vitest';
import source from '../../src/calc/confidence/explanations.ts?raw';
import { assess, explanations } from '../../src/calc/index.ts';
import { evidenceWords, placesToLook } from '../../src/words/en/whereToLook.ts';
import { wholeTest } from '../calc/testCase.ts';

describe('where to look', () => {
  test('each place has a name and what to do there; those that are priced say what their size is', () => {
    const list = explanations(assess(wholeTest));
    expect(list.length).toBeGreaterThan(15);
    const lacking = list.filter(({ code, group, size }) => {
      const words = placesToLook[code];
      return !words || (size !== null && group !== 'leaks' && !words.size);
    });
    expect(lacking.map(({ code }) => code)).toEqual([]);
  });

  test('each sign that speaks for a place or against one has its words', () => {
    const lists = [...source.matchAll(/(?:supports|against): \[([^\]]+)\]/g)];
    const signs = lists.flatMap(([, list = '']) => [...list.matchAll(/'([^']+)'/g)].map(([, sign = '']) => sign));
    expect(signs.length).toBeGreaterThan(20);
    expect(signs.filter((sign) => evidenceWords[sign] === undefined)).toEqual([]);
  });
});
