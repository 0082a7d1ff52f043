/** Words around an article: the card for the field, its common mistakes, its sources. */
export const fieldCard = {
  heading: 'In the field',
  print: 'As a pocket card',
  printSay: 'Print this page now: only the card comes out, 74 × 105\u00a0mm (2.9 × 4.1\u00a0in).',
  whole: 'Back to the whole article',
  worksheet: 'Worksheet:',
} as const;

export const cardsPage = {
  title: 'Pocket cards',
  description:
    'The steps of every article on a card of 74 × 105\u00a0mm, four to a page, to print, cut and take along.',
  say: 'Print this page, cut along the frames, and take the cards that the job needs. Each is the short side of an article: read that first.',
  link: 'All steps as pocket cards, to print',
} as const;

export const mistakeWords = {
  about: {
    cooling: 'the cooling',
    share: 'the share',
    airflow: 'the airflow',
    expected: 'what it should make',
    heating: 'the heating',
  },
  /** Such as “the cooling reads 10 % low”. */
  reads: (about: string, size: string, side: string) => `${about} reads ${size} ${side}`,
  off: (about: string, size: string) => `${about} is off by ${size}`,
  high: 'high',
  low: 'low',
  to: ' to ',
  noVerdict: 'no verdict',
  depends: 'depends on the case',
} as const;

export const sourcesHeading = 'Sources';

/** Around the state that the costs of mistakes are worked out at. */
export const mistakesAt = {
  before: 'By how much, when this page was built, at an invented test:',
  entering: 'and 50\u00a0% in,',
  leaving: 'and 88\u00a0% out,',
  after: 'at sea level. Another state gives other figures of the same size.',
} as const;
