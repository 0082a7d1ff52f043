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
