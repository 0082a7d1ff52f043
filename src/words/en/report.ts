/** Words of the report's first page, for the owner, and of what stands around both pages on a screen. */
type Parts<T> = readonly (string | T)[];

export const report = {
  title: 'The report',
  description:
    'One cooling test on two pages: the first for the owner of the system, the second for the trade. To print, to send, to look into.',
  noScript: 'The report is worked out in your browser from the readings of the job, and scripts are switched off.',
  demoWay: 'Look at a report of ours (invented)',
  print: 'Print, or save as PDF',
  backToSheet: 'To the sheet',
  howToRead: 'How to read this report',
  sendFold: 'Send this report as a link',
  wordsFold: 'Words on the report',
  wordsLead: 'They change no figure. On paper they stand as text; what is left empty leaves room for a pen.',
  ownerPage: 'Page 1 of 2, for the owner',
  ownerOther: 'Page 2 is for the trade',
  tradePage: 'Page 2 of 2, for the trade',
  head: (place: string) => (place === '' ? 'Cooling test' : `Cooling test at ${place}`),
  tested: (system: string, when: string, by: string) =>
    `${[system, when && `tested ${when}`].filter(Boolean).join(', ')}${by && ` by ${by}`}` ||
    'Nobody has said what, when and by whom',
  onDay: (day: string, time: string) => `${day} at ${time}`,
  invented: 'Invented: a system, a house and readings that do not exist.',
  noVerdict: 'No verdict.',
  shareOf: (share: string, low: string, high: string) => `${share} of what it should make, between ${low} and ${high}`,
  /** In and beside the picture. */
  barMeasured: 'measured',
  barShould: 'should make, here and now',
  barSummary: (share: string, low: string, high: string, line: string, made: string, should: string) =>
    `A bar from zero. Measured: ${made}. It should make ${should} here and now. That is ${share}, between ${low} and ${high}; the line is at ${line}.`,
  came: (what: string) => `${what}: show how it came about`,
} as const;

/** The three sentences. A figure in them may be touched. */
export const sentences = {
  measured: <T>(made: T): Parts<T> => ['We measured how much heat the system took out of the air: ', made, '.'],
  net: 'Its own blower’s heat is taken off.',
  measuredOnly: 'What it should make cannot be said, so that figure stands alone.',
  expected: <T>(outdoors: string, should: T, share: T, range: T, chances: string): Parts<T> => [
    `With ${outdoors} outdoors it should make `,
    should,
    '. It makes ',
    share,
    ' of that, ',
    range,
    `, with ${chances} at each end.`,
  ],
  between: (low: string, high: string) => `between ${low} and ${high}`,
  chances: { nine: 'nine chances in ten', nineteen: 'nineteen chances in twenty' },
  meets: (line: string) => `All of that range is at ${line}, or above it: the system makes what it should.`,
  short: (line: string) =>
    `All of that range is below ${line}: the system makes less than it should, and the readings are good enough to say so.`,
  improvable: (line: string, narrowing: string) =>
    `Inside that range lies ${line}, so this test cannot say that the system meets it, nor that it falls short. ${narrowing}`,
  tooNear: (line: string) =>
    `Inside that range lies ${line}, so this test cannot say that the system meets it, nor that it falls short. No further check on that visit would decide it.`,
  higherThanItCanMake:
    'That is more than such a system can make, so some reading is off: the airflow, the supply probe’s place, or the row of the table come first.',
  withheld: (reason: string) => `Why there is no verdict: ${reason}`,
  line: {
    agreed: (line: string) => `the line agreed on, ${line}`,
    late: (line: string) => `the line, ${line}, which was set after the readings`,
    assumed: (line: string) => `the usual line, ${line}`,
  },
  notAFail: '“Cannot tell” is not a fail: improving a reading is the tester’s job.',
} as const;

export const ownerParts = {
  doesNotProve: 'What this does not prove',
  doesNotProveSay:
    'It does not prove the refrigerant charge, the ducts beyond the probes, the right size, even rooms, or another day.',
  next: 'What happens next',
  nextEmpty: 'Nobody has written it down yet.',
  questions: 'Three questions to ask',
} as const;

/** What an owner may ask, by what the test came to. */
export const ownerQuestions = {
  meets: [
    'How was the airflow found, and how sure is it?',
    'Were the two probes checked side by side that day?',
    'Which rows of the maker’s table were used, and may I see them?',
  ],
  short: [
    'Which measurement did you check first, and did the figures stay where they were?',
    'Where do you think the cooling is lost, and what shows it?',
    'What will be done, and will it be measured again in the same way?',
  ],
  improvable: [
    'Which reading would narrow the range most, and when can it be made?',
    'How was the airflow found, and how sure is it?',
    'Which rows of the maker’s table were used, and may I see them?',
  ],
  tooNear: [
    'How was the airflow found, and could it be found in a second way?',
    'Would a better instrument or another day tell more, and is it worth it?',
    'Which rows of the maker’s table were used, and may I see them?',
  ],
  higherThanItCanMake: [
    'How was the airflow found, and what does a second way say?',
    'Where in the duct did the supply probe stand, and is the air mixed there?',
    'Is the table that was used for this very pair of units and this stage?',
  ],
  withheld: [
    'What has to be different before there can be a verdict?',
    'When will it be measured again, and by whom?',
    'What do the readings show all the same?',
  ],
} as const;

export const reportBlock = {
  sheet: (page: number) => `${page} of 2`,
  code: 'Code',
  state: {
    open: 'not locked',
    locked: (at: string) => `locked ${at}`,
    changes: (count: number) => (count === 1 ? 'one change since' : `${count} changes since`),
    assumed: (count: number) => (count === 1 ? 'one value assumed: page 2' : `${count} values assumed: page 2`),
  },
} as const;

export const reportSquare = {
  lead: 'Point a phone at the square: it opens these very figures, each with its working. Address and name are left out of it.',
  name: 'This report as a link, in a square code (QR)',
  none: (characters: string) =>
    `These readings need a link of ${characters} characters, too long for a square that a phone reads from paper. Ask for the link itself.`,
} as const;

export const incomplete = {
  head: 'No report yet',
  needs: (needs: string) => `Still needed: ${needs}.`,
  cannotBe: 'The readings do not go together: they describe air that cannot be.',
  measured: (made: string) =>
    `Measured so far: ${made}. Alone that says nothing: what the same system should make here and now is missing.`,
  way: 'Go on with the sheet',
  demo: 'Look at the report of the demo (invented)',
  sideBySide: 'whether the probes were compared (step 6)',
} as const;

/** Fields of the fold. */
export const reportWords = {
  next: 'What happens next, in your words',
  remarks: 'Remarks for the trade',
  instruments: 'Instruments: make no difference to the figures, but name them',
  calibration: 'When and how they were calibrated',
  readAt: 'When it was read, where that is not when it was typed',
} as const;
