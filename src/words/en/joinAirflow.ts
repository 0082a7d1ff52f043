/** Brings in the words of what only the airflow sheet asks. */
import { airflowChoiceWords } from './airflowChoices.ts';
import { airflowQuantityWords } from './airflowQuantities.ts';
import { choiceWords } from './choices.ts';
import { quantityWords } from './quantities.ts';

export function joinAirflowWords(): void {
  Object.assign(quantityWords, airflowQuantityWords);
  Object.assign(choiceWords, airflowChoiceWords);
}
