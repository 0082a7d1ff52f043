/** Words of all questions that ask first. Nothing here may give an answer away before “Show”. */
export const predict = {
  number: (seed: number) => `Question ${seed}`,
  guessName: 'Your guess',
  answerName: 'The answer',
  show: 'Show',
  needGuess: 'Say something first, or have it shown without a guess.',
  without: 'Show me without guessing',
  another: 'Another one',
  large: 'Show large',
  normal: 'Show at its usual size',
  itIs: (answer: string) => `It is ${answer}.`,
  youSaid: (guess: string, answer: string) => `You said ${guess}. It is ${answer}.`,
} as const;

/** Counting hands, for the teacher. */
export const handWords = {
  fold: 'Count hands',
  say: 'Say aloud what A, B and C stand for, then count. The counts are kept nowhere.',
  /** Where the answers carry the letters themselves. */
  sayLetters: 'Count who is for A, for B and for C. The counts are kept nowhere.',
  letters: ['A', 'B', 'C'],
  counter: (letter: string) => `Hands for ${letter}`,
  less: (letter: string) => `One hand fewer for ${letter}`,
  more: (letter: string) => `One hand more for ${letter}`,
} as const;
