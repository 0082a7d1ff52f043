/** What is asked about the equipment, for the report. */
import type { ChoiceKey } from '../../job/types.ts';
import type { ChoiceWords } from './choices.ts';

export const identityChoiceWords = {
  certifiedMatch: {
    ask: 'Is this indoor and outdoor pair a certified match?',
    options: { yes: 'Yes', no: 'No', unsure: 'Not sure' },
  },
  filter: { ask: 'Filter', options: { clean: 'Clean', dirty: 'Dirty', unsure: 'Not seen' } },
  coil: { ask: 'Indoor coil', options: { clean: 'Clean', dirty: 'Dirty', iced: 'Iced', unsure: 'Not seen' } },
} as const satisfies Partial<Record<ChoiceKey, ChoiceWords>>;
