/** The causes of error of a test, as a name, a size and what it moves. */
import { expect } from 'vitest';
import { resultsOf } from '../../src/calc/assess.ts';
import { sourceFacts } from '../../src/calc/confidence/sure.ts';
import { testSources } from '../../src/calc/confidence/testSources.ts';
import type { Test } from '../../src/calc/index.ts';
import { wholeTest } from './testCase.ts';

/** K in a degree Fahrenheit. */
export const degree = 5 / 9;
type Moves = Readonly<Record<string, number>>;
/** Name, size, and what it moves. The size of a rectangle is its half-width, of the normal shape its standard uncertainty. */
export type Cause = readonly [name: string, size: number, moves: Moves];
const made = (change: Partial<Test>): Test => ({ ...wholeTest, ...change });
export function sourcesOf(change: Partial<Test>) {
  const whole = made(change);
  return testSources(whole, sourceFacts(resultsOf(whole)) as NonNullable<ReturnType<typeof sourceFacts>>);
}
export const causesOf = (change: Partial<Test>): readonly Cause[] =>
  sourcesOf(change).map(({ name, u, shape, moves }) => [name, shape === 'rectangular' ? u * Math.sqrt(3) : u, moves]);
export const close = (list: readonly Cause[]) =>
  list.map(([name, size, moves]) => [name, expect.closeTo(size, 9), moves]);
/** Those of some names only. */
export const some = (change: Partial<Test>, names: RegExp) => causesOf(change).filter(([name]) => names.test(name));
