/** Words for a whole table of the maker: taking it in, what is said of it, and the tables kept from earlier jobs. */
import type { FindingCode, Role } from '../../job/tableImport/types.ts';
import type { UnitKey } from '../../job/types.ts';

export const tablePaste = {
  fold: 'Paste or open a whole table',
  lead: 'Copy the cells in a spreadsheet, heads and all, and paste them here. Nothing changes until you say “Use this table”.',
  field: 'The table',
  file: 'Open a file',
  fileHint: 'A file of text: CSV, or tab-separated.',
  reading: 'Reading the table…',
  readingLarge: (letters: number) =>
    letters < 1e6
      ? `Reading ${Math.ceil(letters / 1000)}\u00a0kB…`
      : `Reading ${(letters / 1e6).toFixed(1)}\u00a0MB, which takes a moment…`,
  parted: (lines: number) => `${lines.toLocaleString('en-US')} lines. Looking at their figures…`,
  stop: 'Stop reading',
  taken: 'What it is taken for',
  takenLead: 'Look at each line and put right what is not so.',
  preview: 'The upper left corner of the sheet',
  row: 'Row',
  more: (rows: number, columns: number) =>
    [
      rows > 0 && `${rows} more ${rows === 1 ? 'row' : 'rows'}`,
      columns > 0 && `${columns} more ${columns === 1 ? 'column' : 'columns'}`,
    ]
      .filter(Boolean)
      .join(' and '),
  role: (title: string) => `${title} is`,
  unit: 'in',
  assumedUnit: 'in (assumed: the sheet does not say)',
  basis: 'Is the blower’s heat already taken off?',
  bases: { net: 'Yes (net)', gross: 'No (gross)', unsure: 'It doesn’t say' },
  stage: 'Which stage is it for?',
  stages: { one: 'The only one', high: 'High', low: 'Low' },
  whichStage: 'Which of its stages?',
  page: 'Where is it printed? (document and page)',
  open: 'Choose one',
  size: (rows: number) => `${rows} ${rows === 1 ? 'line' : 'lines'} of figures`,
  said: 'What there is to say of it',
  allFixes: (count: number) => `Put all ${count} right`,
  careful: 'Read as a careful person would',
  moreRemarks: (count: number) => `And ${count} more of this kind.`,
  use: 'Use this table',
  keep: 'Keep the one before',
  keepNone: 'Leave it',
  cannot: 'This cannot be used yet: see above.',
  used: 'This table is in use.',
  factors: {
    airflow: (count: number) =>
      `Factors for ${count} airflows were found. They are applied once, as a step of their own.`,
    indoorMatch: 'The factor of which indoor unit holds here?',
    lineLength: 'The factor of which line length holds here?',
    none: 'None of them',
  },
} as const;

export const roleNames: Readonly<Record<Role, string>> = {
  outdoorDryBulb: 'outdoor temperature',
  enteringWetBulb: 'entering wet bulb',
  enteringDryBulb: 'entering dry bulb',
  airflow: 'airflow',
  total: 'total capacity',
  sensible: 'sensible capacity',
  ratio: 'sensible over total',
  power: 'power that goes in',
  stage: 'stage',
  none: 'nothing to use',
};

/** Units as they are offered, where the label of the unit alone would not do. */
export const unitNames: Readonly<Partial<Record<UnitKey, string>>> = {
  mbh: 'MBh (thousands of Btu/h)',
  fraction: 'a fraction (0.76)',
  percent: 'per cent (76)',
  count: 'no unit',
};

export const wherePrinted = {
  column: (letter: string) => `Column ${letter}`,
  across: 'The numbers across the top',
  under: 'The second row of numbers across',
  line: 'The line above a block',
  figures: 'The figures',
} as const;

export const place = (row: number, letter: string) => `row ${row}, column ${letter}`;

export interface FindingParts {
  /** "row 5, column C", or '' where it is about the whole sheet. */
  readonly place: string;
  readonly text: string;
  readonly reading: string;
  readonly count: number;
}

const others = (count: number) => (count > 1 ? ` The same in ${count - 1} more.` : '');
const at = (where: string) => `${where.charAt(0).toUpperCase()}${where.slice(1)}`;

export const findingWords: Readonly<Record<FindingCode, (parts: FindingParts) => string>> = {
  noFigures: () => 'Nothing in it looks like a table of capacities.',
  noOutdoors: () => 'Nothing is taken for the outdoor temperature. Say above which numbers are.',
  noWetBulb: () => 'Nothing is taken for the entering wet bulb. Say above which numbers are.',
  noTotal: () => 'Nothing is taken for the total capacity. Say above which figures are.',
  whichStage: ({ reading }) => `It has figures for several stages (${reading}). Say above which one is wanted.`,
  tooManyRows: ({ count, reading }) =>
    `${count} lines of figures are more than one job holds (${reading}). Paste only the blocks for the airflows that come near yours.`,
  notAGrid: ({ count }) =>
    `Taken like this the table would have ${count} places, nearly all of them empty. Something is not what it is taken for above.`,
  roleTwice: ({ text }) => `Two columns are taken for the same; of them the second is “${text}”. Say above what it is.`,
  airflowOnSome: ({ place: where, count }) =>
    `${count} figures stand under no airflow, the first in ${where}. Add it above them, or set the others to “nothing to use”.`,
  dryBulbOnSome: ({ place: where, count }) =>
    `${count} figures have no dry bulb while others have one, the first in ${where}.`,
  headMissing: ({ place: where, text, count }) =>
    `${at(where)}: “${text}” is no temperature or airflow, so its figures are left out.${others(count)}`,
  notANumber: ({ place: where, text, count }) =>
    `${at(where)}: “${text}” is not a number. The place stays empty.${others(count)}`,
  strayWord: ({ place: where, text, reading, count }) =>
    `${at(where)}: “${text}” is probably ${reading}.${others(count)}`,
  formula: ({ place: where, text, count }) =>
    `${at(where)}: “${text}” is a formula and no figure. Copy the values instead. The place stays empty.${others(count)}`,
  impossible: ({ place: where, text, count }) =>
    `${at(where)}: ${text} cannot be. The place stays empty.${others(count)}`,
  otherUnit: ({ text, reading }) => `These figures are not usual in ${text}, and all of them would be in ${reading}.`,
  cellInOtherUnit: ({ place: where, text, reading, count }) =>
    `${at(where)}: ${text} stands among others as ${reading} would.${others(count)}`,
  inThousands: ({ text, reading, count }) =>
    `${text} is read as ${reading}\u00a0Btu/h, and so are ${count} figures in all: they are thousands.`,
  splitThousands: () => 'Figures such as 32,300 were torn in two by the commas of the file.',
  filled: ({ place: where, reading, count }) =>
    `${at(where)} is empty and read as ${reading}, the cell above it (merged cells). ${count} in all.`,
  holes: ({ place: where, count }) => `${at(where)} has no figure. ${count} in all; no expectation is read there.`,
  twice: ({ place: where, text, count }) =>
    `${at(where)}: ${text} stands for a place that has a figure already. The first one counts.${others(count)}`,
  flat: ({ place: where, text }) =>
    `The column of ${where} says ${text} in every row. That may be so on a dry coil, or where the speed is controlled; or a cell was filled down.`,
  skipped: ({ place: where, count }) =>
    `${count} ${count === 1 ? 'line was' : 'lines were'} passed over, the first at ${where}.`,
};

/** On the key that puts something right. */
export const fixWords = {
  join: 'Put them together',
  cells: (reading: string, count: number) => (count > 1 ? `Put all ${count} right` : `Make it ${reading}`),
  meaning: (reading: string) => `Take them as ${reading}`,
} as const;

export const refusalWords: Readonly<Record<string, (count: number) => string>> = {
  empty: () => 'There is nothing in it.',
  tooLong: () => 'It is larger than 20 MB, which no table of one machine is.',
  tooManyRows: () => 'It has more than 50,000 rows, which no table of one machine has.',
  tooManyColumns: (count) => `It has ${count} columns; 2,000 are the most. Are its lines parted by something else?`,
  workbook: () => 'It is a workbook and not text. Open it in a spreadsheet and copy the cells, or save it as CSV.',
  pdf: () => 'It is a PDF and not text. Copy the table out of it into a spreadsheet first.',
  webPage: () => 'It is the source of a web page. Open the page and copy the table itself.',
  noFigures: () => 'Nothing in it looks like a table of capacities. Copy the heads together with the figures.',
  unreadable: () => 'It could not be read on this device.',
};

/** Remarks on a whole table: the place, then the figures. */
export const carefulWords: Readonly<Record<string, (where: string, ...figures: readonly string[]) => string>> = {
  hole: (where) => `No figure at ${where}.`,
  dryCell: (where) => `Dry coil at ${where}: sensible is all of the total.`,
  sensibleAboveTotal: (where, total, sensible) =>
    `Sensible ${sensible} above the total ${total} at ${where}. No sensible is read there.`,
  totalFallsWithWetBulb: (where, next, total, other) =>
    `The total falls from ${total} at ${where} to ${other} at ${next} wet bulb. Look whether two figures changed places.`,
  totalRisesWithOutdoor: (where, next, total, other) =>
    `The total rises from ${total} at ${where} to ${other} at ${next} outdoors. Look whether two figures changed places.`,
  oddTotal: (where, figure, expected) =>
    `Total ${figure} at ${where}: its neighbours make it about ${expected}. A mistyped digit?`,
  oddSensible: (where, figure, expected) =>
    `Sensible ${figure} at ${where}: its neighbours make it about ${expected}. A mistyped digit?`,
  oddPower: (where, figure, expected) =>
    `Power ${figure} at ${where}: its neighbours make it about ${expected}. A mistyped digit?`,
};

export const axisNames = ['outdoors', 'wet bulb', 'return', ''] as const;

export const tableInUse = {
  title: 'From the whole table',
  lead: (rows: number, basis: string, when: string, page: string) =>
    [`${rows} lines of figures`, basis, when && `taken in on ${when}`, page && `from ${page}`]
      .filter(Boolean)
      .join(', '),
  reads: 'The figures that this job reads',
  none: 'Which of them this job reads is said here once the return air and the outdoor temperature are known.',
  dryBulbHint: 'The table does not say it; often 80\u00a0°F (26.7\u00a0°C), in a footnote.',
  basis: { net: 'net', gross: 'gross', unsure: '' },
  csv: 'Save as CSV',
  file: 'rating-table',
  cells: 'Read the cells instead',
  again: 'Read the whole table again',
  heads: {
    outdoorDryBulb: 'Outdoors',
    enteringWetBulb: 'Wet bulb',
    enteringDryBulb: 'Return',
    airflow: 'Airflow',
    total: 'Total',
    sensible: 'Sensible',
  },
} as const;

export const earlier = {
  fold: (count: number) => `Use a table from an earlier job (${count})`,
  matching: 'There is a table here for these models',
  unnamed: 'No model number',
  about: (when: string, page: string) =>
    [when && `typed on ${when}`, page ? `from ${page}` : 'page not noted'].filter(Boolean).join(', '),
  whole: (rows: number) => `whole table, ${rows} lines`,
  cells: (count: number) => `${count} cells`,
  use: 'Use it',
  remove: 'Remove',
  removed: 'The table is removed from this device.',
  undo: 'Put it back',
  undoUse: 'Put back the one before',
  used: 'The table is in use.',
} as const;
