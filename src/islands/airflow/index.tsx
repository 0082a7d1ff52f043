import type { ComponentChildren } from 'preact';
import { useEffect } from 'preact/hooks';
import { airflowChoices } from '~/job/airflow/choices.ts';
import { airflowQuantities } from '~/job/airflow/quantities.ts';
import { joinChoices } from '~/job/choices.ts';
import { joinQuantities } from '~/job/quantities.ts';
import { airflowSheet } from '~/words/en/airflowSheet.ts';
import { joinAirflowWords } from '~/words/en/joinAirflow.ts';
import { refused } from '../jobStore.ts';
import { lazy } from '../lazy.tsx';
import { OpenAll } from '../OpenAll.tsx';
import { noticed } from '../opening.ts';
import { SheetBar } from '../SheetBar.tsx';
import { MethodStep } from './MethodStep.tsx';
import { airflowWays, answered, bar, methods } from './model.ts';
import { start } from './start.ts';

joinQuantities(airflowQuantities);
joinChoices(airflowChoices);
joinAirflowWords();

const AskCopy = lazy(() => import('../AskCopy.tsx').then((module) => module.AskCopy));
const Notices = lazy(() => import('../Notices.tsx').then((module) => module.Notices));
const Air = lazy(() => import('./Air.tsx').then((module) => module.Air));
const Answer = lazy(() => import('./late.ts').then((late) => late.Answer));
const Margin = lazy(() => import('./late.ts').then((late) => late.Margin));

/** The airflow sheet: a line for every method, one of them open, the airflow that comes of it, and the bar that is always in view. */
export function AirflowSheet({ children }: { children?: ComponentChildren }) {
  useEffect(start, []);
  const any = answered.value.length > 0;
  return (
    <div class="sheet airflow-sheet">
      <div class="sheet-steps">
        {noticed.value && <Notices />}
        {children}
        <h2 class="airflow-ask">{airflowSheet.ask}</h2>
        {methods.map((method) => (
          <MethodStep key={method} method={method} />
        ))}
        <OpenAll sheet={airflowWays} />
        <Air />
      </div>
      <div class="sheet-answer" id="answer" tabIndex={-1}>
        {any ? <Answer /> : <First />}
      </div>
      {any && <Margin />}
      <SheetBar sheet={airflowWays} says={bar.value} />
      {refused.value && <AskCopy />}
    </div>
  );
}

/** Before anything is found. */
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
