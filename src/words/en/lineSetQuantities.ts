/** What is asked of a line set, in words, under the keys of its quantities. */
import type { QuantityKey } from '../../job/types.ts';
import type { QuantityWords } from './quantities.ts';

type LineKey = Extract<QuantityKey, `lineSet.${string}`>;

export const lineSetQuantityWords: Readonly<Record<LineKey, QuantityWords>> = {
  'lineSet.length': {
    name: 'Length of the lines',
    term: 'one way',
    inSentence: 'length of the lines',
    hint: 'As the tubes lie, from unit to unit.',
  },
  'lineSet.ratedLength': {
    name: 'Length in the rating',
    inSentence: 'length in the rating',
    empty: 'Empty: 25\u00a0ft (7.6\u00a0m), as systems are rated.',
  },
  'lineSet.fittings': {
    name: 'Fittings in the lines',
    term: 'equivalent length',
    inSentence: 'length that stands for the fittings',
    hint: 'A short 90° elbow counts as some 30 inside diameters (common practice): 1.7\u00a0ft (0.5\u00a0m) at 3/4.',
    empty: 'Empty: none.',
  },
  'lineSet.lift': {
    name: 'Indoor coil above the outdoor unit',
    term: 'lift',
    inSentence: 'lift',
    hint: 'Where it stands below, with a minus.',
    empty: 'Empty: level.',
  },
  'lineSet.maximumLength': { name: 'Longest line allowed', inSentence: 'longest line allowed' },
  'lineSet.maximumLift': { name: 'Greatest lift allowed', inSentence: 'greatest lift allowed' },
  'lineSet.makerFactor': {
    name: 'Capacity left with these lines',
    term: 'the maker’s correction',
    inSentence: 'maker’s correction',
    hint: 'A loss of 3\u00a0% is 97\u00a0%. It outranks what is worked out here.',
  },
  'lineSet.evaporating': {
    name: 'Evaporating temperature',
    term: 'dew point at the suction gauge',
    inSentence: 'evaporating temperature',
    empty: 'Empty: 45\u00a0°F (7.2\u00a0°C), common practice.',
  },
  'lineSet.superheat': {
    name: 'Superheat',
    inSentence: 'superheat',
    empty: 'Empty: 10\u00a0°F (5.6\u00a0°C), common practice.',
  },
  'lineSet.liquidTemperature': {
    name: 'Liquid line at the outdoor unit',
    inSentence: 'temperature of the liquid line',
    empty: 'Empty: 100\u00a0°F (37.8\u00a0°C), common practice.',
  },
  'lineSet.subcooling': {
    name: 'Subcooling',
    inSentence: 'subcooling',
    empty: 'Empty: 10\u00a0°F (5.6\u00a0°C), common practice.',
  },
};
