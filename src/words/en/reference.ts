/** Words of the shelf to look things up on, and of its bibliography. */
import type { Known } from '../../calc/sources.ts';

export const title = 'Look up';
export const description =
  'Look up a word, a symbol, a unit, a factor, a line of a drawing, a source, or a figure that this site is checked against.';
export const say = 'One thing in thirty seconds. Search finds it in the articles too.';

/** The pages of the shelf, in the order in which they are asked for. */
export const shelf = [
  { path: '/search/', title: 'Search', say: 'Every page of this site, with no signal too.' },
  { path: '/reference/glossary/', title: 'Words of the trade', say: 'What each word means, in a sentence or two.' },
  {
    path: '/reference/symbols/',
    title: 'Symbols and equations',
    say: 'Every equation that the working shows, and every letter in it.',
  },
  { path: '/reference/factors/', title: '4.5, 1.08 and 0.68', say: 'Where they come from, and when they mislead.' },
  { path: '/reference/units/', title: 'Units', say: 'From one to the other, exactly.' },
  { path: '/reference/drawings/', title: 'How to read our drawings', say: 'Each line, hatch and mark.' },
  { path: '/reference/sources/', title: 'Sources', say: 'Where figures and formulas come from, and how we know.' },
  {
    path: '/reference/checks/',
    title: 'Checks',
    say: 'Every figure from outside that this site is held to, beside our own.',
  },
] as const;

export const sources = {
  title: 'Sources',
  description: 'Every source that the figures and formulas of this site rest on, and how we know what it says.',
  say: 'Where the figures and the formulas come from, and how we know what each source says. A figure that rests on habit alone says so.',
};

export const known: Readonly<Record<Known, string>> = {
  read: 'read in the work named',
  'second-hand': 'read in another work that carries it',
  computed: 'worked out from a read equation',
  memory: 'from memory, still to be checked',
  'common practice': 'common practice',
};

/** Behind a source in the margin, where it was not read. */
export const knownShort: Readonly<Partial<Record<Known, string>>> = {
  'second-hand': 'second-hand',
  memory: 'from memory',
};
