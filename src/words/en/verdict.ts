/** The verdict in words: on the mark, in the bar, in the answer. The ends of a range come as "79" and "107 %". */
export const verdictNames = {
  meets: (line: string) => `Meets ${line}`,
  short: (line: string) => `Short of ${line}`,
  cannotTell: () => 'Cannot tell',
} as const;

/** For anyone. */
export const verdictSentences = {
  meets: 'It delivers what it should.',
  short: 'It delivers less than it should, and the readings are good enough to say so.',
  improvable: 'These readings cannot tell.',
  tooNear: 'Too near the line to call.',
  higherThanItCanMake: 'Cannot tell: higher than this system can make.',
} as const;

/** For the technician. */
export const verdictReasons = {
  meets: (share: string, low: string, line: string) => `${share}; even the low end, ${low}, is past the ${line} line.`,
  short: (share: string, high: string) => `${share}, at most ${high}. Check the measurement first.`,
  improvable: (share: string, low: string, high: string, check: string) =>
    `${share}, between ${low} and ${high}. ${check}`,
  tooNear: (least: string) => `At least ${least}. No further check here would decide it.`,
  higherThanItCanMake: 'Airflow overstated, a cold spot at the supply probe, or the wrong row or stage come first.',
} as const;

export const shareWords = {
  makes: (share: string) => `It makes ${share} of what it should.`,
  between: (low: string, high: string) => `Between ${low} and ${high}.`,
  /** Beside the mark. */
  marked: (name: string, share: string, low: string, high: string) => [
    `${name}:`,
    `${share}, between ${low} and ${high}`,
  ],
  unasked: (low: string, high: string) =>
    `Between ${low} and ${high} with probes that nobody compared. No verdict yet: step 6 says how sure.`,
  speedUnasked: 'No verdict yet: step 4 asks whether it runs at full speed.',
  withheld: 'No verdict.',
  estimate: (band: string) =>
    `An estimate: published curves stand for the table, and open sources differ by ${band} either way.`,
  /** In the bar. */
  ofWhatItShould: 'of what it should make',
  barRange: (share: string, low: string, high: string) => `${share}: between ${low} and ${high}`,
  barEstimate: (rest: string) => `an estimate · ${rest}`,
  barTooHigh: (share: string) => `${share}: higher than it can make`,
  barUnasked: 'no verdict yet: step 6 says how sure',
  barSpeedUnasked: 'no verdict yet: step 4 asks its speed',
} as const;

/** What the range is, and the key for the other confidence. */
export const rangeWords = {
  nine: 'Nine chances in ten that the truth is above the low end, nine in ten that it is below the high end.',
  nineteen:
    'Nineteen chances in twenty that the truth is above the low end, nineteen in twenty that it is below the high end.',
  askNineteen: 'Ask for nineteen in twenty',
  backToNine: 'Back to nine in ten',
  summary: (share: string, low: string, high: string, line: string, name: string) =>
    `A scale of the share: it makes ${share} of what it should make, between ${low} and ${high}. The line agreed on is at ${line}. ${name}.`,
  byDraws: (draws: string) =>
    `The ends come from ${draws} draws: adding up causes to first order differs by more than half a point here.`,
  lateLine: (set: string, read: string) => `The line was set at ${set}, after the readings of ${read}.`,
} as const;
