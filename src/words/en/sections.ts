/** The four shelves of articles, and the words around them. */

export const sections = {
  method: {
    title: 'How to',
    description: 'How to measure the cooling of a ducted system: what to read, where, in which order, and why.',
    say: 'What to read, where, in which order, and why.',
  },
  cautions: {
    title: 'Safety',
    description: 'Cautions for measuring the cooling of an air conditioner.',
    say: 'Read this before you touch anything. Local codes and licensed practice come first.',
  },
  reports: {
    title: 'Your report',
    description: 'For the owner of a system: what a cooling report shows, what it cannot show, and what to ask.',
    say: 'For the owner of the system. No training needed.',
  },
  classroom: {
    title: 'In class',
    description: 'Lessons on measured cooling that ask first and answer after.',
    say: 'Each lesson asks first. Say a figure aloud before you open the answer: that is how it stays.',
  },
} as const;

export type Section = keyof typeof sections;

/** What stands on a shelf beside its articles. */
export const besideArticles: Readonly<
  Partial<Record<Section, readonly { readonly path: string; readonly title: string; readonly say: string }[]>>
> = {
  classroom: [
    {
      path: '/classroom/exercises/',
      title: 'Exercises',
      say: 'Six at a time, with invented figures, to print; the answers stand on a sheet of their own.',
    },
    {
      path: '/classroom/spoilt/',
      title: 'Spoilt tests',
      say: 'Invented tests with one mistake planted in each; the class finds it from the figures.',
    },
    {
      path: '/classroom/traverse-grids/',
      title: 'Blank grids for a traverse',
      say: 'To print and write velocities into, with the places of the points.',
    },
    {
      path: '/worksheets/moist-air/blank/',
      title: 'Blank charts',
      say: 'Air charts to write on, for several heights.',
    },
  ],
};

export const onThisPage = 'On this page';
export const articles = 'Articles';
export const neighbours = { name: 'Before and after', before: 'Before this', after: 'After this' };

export const missing = {
  title: 'No such page',
  description: 'There is no page at this address.',
  say: 'There is no page at this address. It may have moved, or the address may be cut short.',
  home: 'Go to the first page',
};
