import { useEffect } from 'preact/hooks';
import { airflowChoices } from '~/job/airflow/choices.ts';
import { airflowQuantities } from '~/job/airflow/quantities.ts';
import { joinChoices } from '~/job/choices.ts';
import { joinQuantities } from '~/job/quantities.ts';
import { airflowSheet } from '~/words/en/airflowSheet.ts';
import { joinAirflowWords } from '~/words/en/joinAirflow.ts';
import { refused, source } from '../jobStore.ts';
import { lazy } from '../lazy.tsx';
import { noticed } from '../opening.ts';
import { MethodStep } from './MethodStep.tsx';
import { counts, methods, openPart } from './model.ts';
import { start } from './start.ts';

joinQuantities(airflowQuantities);
joinChoices(airflowChoices);
joinAirflowWords();

const AskCopy = lazy(() => import('../AskCopy.tsx').then((module) => module.AskCopy));
const Notices = lazy(() => import('../Notices.tsx').then((module) => module.Notices));
const Answer = lazy(() => import('./Answer.tsx').then((module) => module.Answer));
const Together = lazy(() => import('./Together.tsx').then((module) => module.Together));
const Air = lazy(() => import('./Air.tsx').then((module) => module.Air));

/** The airflow sheet: a line for every method, one of them open, and the airflow that comes of it. */
export function AirflowSheet() {
  useEffect(start, []);
  return (
    <div class="sheet airflow-sheet">
      <div class="sheet-steps">
        {noticed.value && <Notices />}
        <h2 class="airflow-ask">{airflowSheet.ask}</h2>
        {methods.map((method) => (
          <MethodStep key={method} method={method} />
        ))}
        <Together />
        <Air />
      </div>
      <div class="sheet-answer" id="answer" tabIndex={-1}>
        {counts.value || openPart.value ? <Answer /> : <First />}
      </div>
      {refused.value && source.value !== 'own' && <AskCopy />}
    </div>
  );
}

/** Before anything is typed. */
function First() {
  return (
    <section class="answer" aria-labelledby="answer-head">
      <h2 class="answer-sentence" id="answer-head">
        {airflowSheet.nothing}
      </h2>
      <p class="answer-plain">{airflowSheet.nothingLead}</p>
    </section>
  );
}
