/** The first sentences of the answer: one for anyone, two for the technician. What stands below them is in `results.ts`. */
export const answer = {
  nothing: 'Nothing to tell yet.',
  nothingLead: (needs: string) => `Still needed: ${needs}.`,
  makes: (capacity: string) => `It makes ${capacity}.`,
  makesLead: (needs: string) => `What it should make here and now still needs ${needs}.`,
  noExpectation: 'What it should make here and now cannot be told from these figures: step 5 says why.',
  share: (share: string) => `It makes ${share} of what it should.`,
  estimate: (band: string) =>
    `An estimate: published curves stand for the table, and open sources differ by ${band} either way.`,
  noVerdictYet: 'No verdict:',
  rangeMissing: (share: string) =>
    `${share} is a figure without its range, and a verdict needs the range. This sheet does not work it out.`,
  rangeAdvice:
    'Ordinary probes that were not checked side by side leave about 10 % of standard uncertainty in this share; checked, about 5.5 %.',
  rangeChecked: 'Checked side by side, ordinary probes leave about 5.5 % of standard uncertainty in this share.',
  noVerdict: 'No verdict.',
} as const;
