/** Name, trade term and hint of every quantity, under the key of the one table of quantities. */
import type { quantities } from '../../job/quantities.ts';
import type { QuantityKey } from '../../job/types.ts';
import type { lineSetQuantityWords } from './lineSetQuantities.ts';

export interface QuantityWords {
  /** The label above the field. */
  readonly name: string;
  /** The trade's term, shown in brackets behind the name. */
  readonly term?: string;
  /** How it is called inside a sentence: "supply humidity". */
  readonly inSentence: string;
  readonly hint?: string;
  /** Said while the field is empty. */
  readonly empty?: string;
}

const ofEverySheet: Readonly<
  Record<Exclude<keyof typeof quantities, keyof typeof lineSetQuantityWords>, QuantityWords>
> = {
  'entering.dryBulb': { name: 'Temperature', term: 'dry bulb', inSentence: 'return temperature' },
  'entering.relativeHumidity': { name: 'Humidity', term: 'relative', inSentence: 'return humidity' },
  'entering.wetBulb': { name: 'Wet bulb', inSentence: 'return wet bulb' },
  'leaving.dryBulb': { name: 'Temperature', term: 'dry bulb', inSentence: 'supply temperature' },
  'leaving.relativeHumidity': { name: 'Humidity', term: 'relative', inSentence: 'supply humidity' },
  'leaving.wetBulb': { name: 'Wet bulb', inSentence: 'supply wet bulb' },
  'airflow.volumeFlow': { name: 'Airflow', inSentence: 'airflow' },
  altitude: {
    name: 'Height',
    term: 'above the sea',
    inSentence: 'height above sea level',
    empty: 'Empty counts as sea level.',
  },
  barometer: {
    name: 'Barometer on the spot',
    term: 'station pressure',
    inSentence: 'barometer',
    hint: 'Only from an instrument here. Weather reports are corrected to sea level.',
  },
  outdoorDryBulb: {
    name: 'Air into the unit',
    term: 'outdoor dry bulb',
    inSentence: 'outdoor temperature',
    hint: 'In the shade, where the air goes into the outdoor coil.',
  },
  nominalCapacity: { name: 'Nameplate size', inSentence: 'nameplate size' },
  'blower.power': {
    name: 'Power of this blower',
    inSentence: 'blower power',
    hint: 'All of it ends as heat in the air.',
  },
  'rating.outdoorLow': { name: 'Left column', term: 'outdoors', inSentence: 'left column' },
  'rating.outdoorHigh': { name: 'Right column', term: 'outdoors', inSentence: 'right column' },
  'rating.wetBulbLow': { name: 'Upper row', term: 'entering wet bulb', inSentence: 'upper row' },
  'rating.wetBulbHigh': { name: 'Lower row', term: 'entering wet bulb', inSentence: 'lower row' },
  'rating.airflow': { name: 'This block is for', inSentence: 'airflow of the block' },
  'rating.airflowSecond': { name: 'The second block is for', inSentence: 'airflow of the second block' },
  'rating.blowerPower': {
    name: 'Blower power inside the rating',
    inSentence: 'blower power inside the rating',
    hint: 'Often in a footnote of the table.',
    empty: 'Empty: taken to be like this one.',
  },
  'rating.certified': { name: 'Certified capacity', term: 'at 95\u00a0°F', inSentence: 'certified capacity' },
  'rating.certifiedAirflow': { name: 'Airflow of that rating', inSentence: 'airflow of the certified capacity' },
  'rating.indoorMatch': { name: 'Factor for this indoor unit', inSentence: 'factor for the indoor unit' },
  'rating.lineLength': { name: 'Factor for this line length', inSentence: 'factor for the line length' },
  'rating.enteringDryBulb': {
    name: 'Sensible figures are for return air at',
    inSentence: 'dry bulb of the sensible figures',
  },
  'rating.total': { name: 'Total', inSentence: 'total in the table' },
  'rating.sensible': { name: 'Sensible', inSentence: 'sensible in the table' },
  'rating.power': { name: 'Power', inSentence: 'power in the table' },
  line: { name: 'The line', inSentence: 'the line', hint: 'Our choice is 90\u00a0%. Agree on it before you read.' },
  'sideBySide.dryBulb': {
    name: 'Difference, temperature',
    inSentence: 'difference in temperature',
  },
  'sideBySide.humidity': {
    name: 'Difference, humidity',
    inSentence: 'difference in humidity',
  },
  'state.dryBulb': { name: 'Temperature', term: 'dry bulb', inSentence: 'temperature' },
  'state.relativeHumidity': { name: 'Humidity', term: 'relative', inSentence: 'relative humidity' },
  'state.wetBulb': { name: 'Wet bulb', inSentence: 'wet bulb' },
  'state.dewPoint': { name: 'Dew point', inSentence: 'dew point' },
  'state.humidityRatio': { name: 'Water in the air', term: 'humidity ratio', inSentence: 'humidity ratio' },
  'process.airflow': { name: 'Airflow', inSentence: 'airflow' },
  'process.dryAirFlow': { name: 'Dry air', term: 'mass flow', inSentence: 'flow of dry air' },
};

/** Those of one sheet alone join where they are shown: see `joinAirflow.ts`, `joinSure.ts` and `joinLineSet.ts`. */
export const quantityWords = { ...ofEverySheet } as Record<QuantityKey, QuantityWords>;
