/** The lines of the page that checks a report: what is asked, and under which name the figures may stand. */
import type { readReportChoices } from '../../job/readReport/choices.ts';
import type { ReportLineId } from '../../job/readReport/lines.ts';
import type { readReportQuantities } from '../../job/readReport/quantities.ts';
import { type ChoiceWords, choiceWords } from './choices.ts';
import { type QuantityWords, quantityWords } from './quantities.ts';

export const readReport = {
  lines: 'What stands on your report',
  notOnMine: 'Not on mine',
  wetBulbInstead: 'Mine shows wet bulbs',
  humidityInstead: 'Mine shows humidities',
  says: 'What it says',
  wetBulb: { entering: 'Return air: wet bulb', leaving: 'Supply air: wet bulb' },
  clear: 'Empty every line',
  article: 'Reading your report',
} as const;

interface LineWords {
  readonly ask: string;
  /** Under which names it may stand. */
  readonly also?: string;
}

export const lineWords: Readonly<Record<ReportLineId, LineWords>> = {
  capacity: {
    ask: 'How much cooling it makes, measured',
    also: 'Total, measured or net capacity, in Btu/h, tons or kW.',
  },
  nameplate: { ask: 'The size on the nameplate', also: 'Nominal tons or kW. A 36 in the model number means 3 tons.' },
  expected: { ask: 'What it should make that day', also: 'Expected or maker’s capacity at that day’s temperatures.' },
  share: { ask: 'A per cent', also: 'Of what? Often it is not said.' },
  range: { ask: 'How sure that per cent is', also: 'Between which two figures, or the figure less and plus its ±.' },
  drop: { ask: 'The temperature drop', also: 'Return less supply; also called split or ΔT.' },
  return: { ask: 'Return air: temperature', also: 'Entering dry bulb.' },
  returnHumidity: { ask: 'Return air: humidity' },
  supply: { ask: 'Supply air: temperature', also: 'Leaving dry bulb.' },
  supplyHumidity: { ask: 'Supply air: humidity' },
  airflow: { ask: 'The airflow', also: 'In cfm or litres a second.' },
  static: { ask: 'The static pressure of the ducts', also: 'Total external static pressure.' },
  outdoors: { ask: 'The temperature outdoors' },
  compared: { ask: 'Whether the two probes were checked side by side' },
};

const readReportQuantityWords: Readonly<Record<keyof typeof readReportQuantities, QuantityWords>> = {
  'report.capacity': { name: 'Cooling, measured', inSentence: 'cooling measured' },
  'report.expected': { name: 'What it should make', inSentence: 'what it should make' },
  'report.share': { name: 'Per cent', inSentence: 'per cent' },
  'report.low': { name: 'From', inSentence: 'low end' },
  'report.high': { name: 'To', inSentence: 'high end' },
  'report.temperatureDrop': { name: 'Temperature drop', inSentence: 'temperature drop' },
  'report.static': { name: 'Static pressure', inSentence: 'static pressure' },
};

const readReportChoiceWords = {
  'report.shareOf': {
    ask: 'Per cent of what?',
    options: {
      hereAndNow: 'Of what it should make that day',
      nameplate: 'Of the nameplate’s size',
      unsaid: 'It doesn’t say',
    },
  },
  'report.airflowBy': {
    ask: 'How was it found?',
    options: {
      measured: 'Measured: it says how',
      readout: 'Read off the control',
      rule: 'By a rule, so much a ton',
      unsaid: 'It doesn’t say',
    },
  },
  'report.compared': {
    ask: 'Were the two probes checked side by side?',
    options: { yes: 'Yes', no: 'No', unsaid: 'It doesn’t say' },
  },
} as const satisfies Readonly<Record<keyof typeof readReportChoices, ChoiceWords>>;

export type ReadReportChoiceWords = typeof readReportChoiceWords;

/** Brings in the words of these fields. */
export function joinReadReportWords(): void {
  Object.assign(quantityWords, readReportQuantityWords);
  Object.assign(choiceWords, readReportChoiceWords);
}
