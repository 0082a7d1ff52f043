/** The first sentences of the answer: one for anyone, two for the technician. What stands below them is in `results.ts`. */
export const answer = {
  nothing: 'Nothing to tell yet.',
  nothingLead: (needs: string) => `Still needed: ${needs}.`,
  makes: (capacity: string) => `It makes ${capacity}.`,
  makesLead: (needs: string) => `What it should make here and now still needs ${needs}.`,
  noExpectation: 'What it should make here and now cannot be told from these figures: step 5 says why.',
  noVerdict: 'No verdict.',
} as const;
