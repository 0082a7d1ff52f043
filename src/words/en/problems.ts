/** Sentences for text that cannot be used: what is wrong, what is usual, what to do. */
import type { Kind } from '../../calc/types.ts';

export interface ProblemParts {
  /** What was typed, shortened. */
  readonly text: string;
  readonly name: string;
  readonly low: string;
  readonly high: string;
  readonly usual: string;
  readonly kind: Kind;
}

const quoted = (text: string) => `“${text}”`;
/** A full stop, unless a unit ends in one. */
const stop = (text: string) => (text.endsWith('.') ? text : `${text}.`);

export const problemWords: Readonly<Record<string, (parts: ProblemParts) => string>> = {
  notANumber: ({ text, usual }) => `${quoted(text)} is not a number. Usual: ${stop(usual)} Type figures only.`,
  wrongUnit: ({ text, usual }) => `${quoted(text)} has a unit that does not fit here. Usual: ${stop(usual)}`,
  twoNumbers: ({ text }) => `${quoted(text)} has more than one number. Type one.`,
  below: ({ text, low, high, usual }) =>
    `${text} is below what can be: ${low} to ${stop(high)} Usual: ${stop(usual)} Read it again.`,
  above: ({ text, low, high, usual }) =>
    `${text} is beyond what can be: ${low} to ${stop(high)} Usual: ${stop(usual)} Read it again.`,
  equal: ({ text }) => `Both are ${text}. Two rows, columns or blocks of a table differ; change one.`,
  needsTotal: ({ text }) => `${text} looks like a share of the total. Type the total first.`,
};

/** In the answer bar, where there is room for a few words only. */
export const problemInBar = ({ text, usual }: ProblemParts, code: string) =>
  `${code === 'notANumber' ? quoted(text) : text}: usual ${usual}`;
