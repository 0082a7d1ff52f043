/** Brings in the words of what is asked about how sure the readings are. */
import { choiceWords } from './choices.ts';
import { quantityWords } from './quantities.ts';
import { sureChoiceWords, sureQuantityWords } from './sureFields.ts';

export function joinSureWords(): void {
  Object.assign(quantityWords, sureQuantityWords);
  Object.assign(choiceWords, sureChoiceWords);
}
