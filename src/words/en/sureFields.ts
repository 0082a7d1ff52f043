/** What stands on the fields and buttons where it is asked how sure the readings are. */

import type { sureQuantities } from '../../job/sure/quantities.ts';
import type { ChoiceKey } from '../../job/types.ts';
import type { ChoiceWords } from './choices.ts';
import type { QuantityWords } from './quantities.ts';

export const sureQuantityWords: Readonly<Record<keyof typeof sureQuantities, QuantityWords>> = {
  'sideBySide.wetBulb': { name: 'Difference, wet bulb', inSentence: 'difference in wet bulb' },
  'airflow.limit': { name: '± airflow', term: 'of the figure', inSentence: 'limit of the airflow' },
  'condensate.mass': {
    name: 'Water caught',
    hint: 'By weight, less the jug: a pint is about a pound, a litre a kilogram.',
    inSentence: 'water caught',
  },
  'condensate.duration': { name: 'Caught for', inSentence: 'time of the catch' },
};

export const sureChoiceWords = {
  'sure.confidence': {
    ask: 'How sure should the range be?',
    options: { nine: 'Nine in ten', nineteen: 'Nineteen in twenty' },
  },
  'probes.class': {
    ask: 'What kind of probes are they?',
    options: { ordinary: 'Ordinary', better: 'Better', calibrated: 'Calibrated lately' },
  },
  'probes.how': {
    ask: 'How are they compared?',
    options: { together: 'Side by side', swapped: 'Exchanged in the ducts' },
  },
  'probes.reference': {
    ask: 'Is one of the two taken as right?',
    options: { neither: 'Neither: each gives way by half', entering: 'The return probe', leaving: 'The supply probe' },
  },
  'probes.humidityStandard': {
    ask: 'Was one of them held against a humidity that is known?',
    options: { none: 'No', salt: 'Over a saturated salt', wetBulb: 'Against an aspirated wet bulb' },
  },
  'probes.iceBath': { ask: 'Was one of them held in an ice bath?', options: { no: 'No', yes: 'Yes' } },
} as const satisfies Partial<Record<ChoiceKey, ChoiceWords>>;
