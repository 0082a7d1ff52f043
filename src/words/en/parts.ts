/** Words that a piece says of itself, wherever it stands. */
export const parts = {
  caution: 'Caution.',
  check: 'Check:',
  noVerdict: 'No verdict:',
  assumed: '(assumed)',
  answerSoFar: 'The answer so far',
  sign: '+/−',
  changeSign: (name: string) => `Change the sign of: ${name}`,
} as const;

/** The articles that a caution can lead to. */
export type CautionPage =
  | 'electricity'
  | 'switches-that-protect'
  | 'refrigerants'
  | 'heat-and-height'
  | 'flames-and-carbon-monoxide'
  | 'drilling-and-duct-materials'
  | 'moving-parts'
  | 'ice-and-drain-water';
