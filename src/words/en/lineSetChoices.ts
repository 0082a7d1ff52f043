/** What only the sheet on long lines asks. */
import type { ChoiceKey } from '../../job/types.ts';
import type { ChoiceWords } from './choices.ts';

export const lineSetChoiceWords = {
  refrigerant: {
    ask: 'Which refrigerant?',
    options: { 'R-410A': 'R-410A', 'R-32': 'R-32', 'R-454B': 'R-454B', 'R-22': 'R-22' },
  },
  'lineSet.meteringAt': {
    ask: 'Where is the metering device for cooling?',
    options: { indoors: 'At the indoor coil', outdoors: 'In the outdoor unit', unsure: 'Not sure' },
  },
} as const satisfies Partial<Record<ChoiceKey, ChoiceWords>>;
