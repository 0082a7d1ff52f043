import { type AnySourceKey, sources } from '~/calc/sources.ts';

/** The sources that the text of an article names, each once, in the order in which they come. */
export function sourcesIn(text: string): readonly AnySourceKey[] {
  const named = [...text.matchAll(/<Source of="(\w+)"/g)].map(([, key = '']) => key);
  return [...new Set(named)].filter((key): key is AnySourceKey => Object.hasOwn(sources, key));
}
