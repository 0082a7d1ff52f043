/** Brings in the words of what only the sheet on long lines asks. */
import { choiceWords } from './choices.ts';
import { lineSetChoiceWords } from './lineSetChoices.ts';
import { lineSetQuantityWords } from './lineSetQuantities.ts';
import { quantityWords } from './quantities.ts';

export function joinLineSetWords(): void {
  Object.assign(quantityWords, lineSetQuantityWords);
  Object.assign(choiceWords, lineSetChoiceWords);
}
