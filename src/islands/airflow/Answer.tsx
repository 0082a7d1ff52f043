import { standardVolumeFlow } from '~/calc/dryAirFlow.ts';
import { chosen, isChoice } from '~/job/choices.ts';
import { Choices } from '~/parts/Choices.tsx';
import { href } from '~/parts/href.ts';
import { airflowAnswer as words } from '~/words/en/airflowAnswer.ts';
import { methodWords } from '~/words/en/airflowSheet.ts';
import { edit, job } from '../jobStore.ts';
import { lazy } from '../lazy.tsx';
import { AnswerWorking } from './AnswerWorking.tsx';
import { Block } from './Block.tsx';
import { betweenText, flowText } from './flowText.ts';
import { answered, answerOf, counts, isDesk, together, use, used, wayName } from './model.ts';
import { PerTon } from './PerTon.tsx';
import { Together } from './Together.tsx';
import { Ways } from './Ways.tsx';

const MoreOrLess = lazy(() => import('./MoreOrLess.tsx').then((module) => module.MoreOrLess));

/** The airflow that counts, the biggest thing on the sheet; how sure it is; what else it may be called, and what it is worth. */
export function Answer() {
  const outcome = counts.value;
  if (!outcome?.ok) {
    return (
      <section class="answer" aria-labelledby="answer-head">
        <h2 class="answer-sentence" id="answer-head">
          {words.choose}
        </h2>
        <p class="answer-plain">{words.chooseLead}</p>
        <Choose />
        <Together />
      </section>
    );
  }
  const { value } = outcome;
  const onSheet = chosen(job.value, 'airflow.from') === 'found';
  const by = used.value ? wayName(used.value) : '';
  const standard = standardVolumeFlow(value.dryAirFlow);
  return (
    <>
      <section class="answer" aria-labelledby="answer-head">
        <h2 class="answer-sentence" id="answer-head">
          {words.moves(flowText(value))}
        </h2>
        <p class="answer-plain" role="status">
          {words.counted(value.at === 'standard', betweenText(value), by)}
        </p>
        {value.at !== 'standard' && <p class="answer-note">{words.asStandard(flowText({ volumeFlow: standard }))}</p>}
        {answered.value.length > 1 && <Choose />}
        <p class="tools">
          <button
            type="button"
            class="action"
            onClick={() => edit({ slot: 'chosen', key: 'airflow.from', to: onSheet ? 'typed' : 'found' })}
          >
            {onSheet ? words.useTyped : words.useFound}
          </button>
          <a href={href('/worksheets/capacity/')}>{words.toSheet}</a>
        </p>
        <p class="answer-note">{onSheet ? words.isUsed : words.isNotUsed}</p>
      </section>
      <Together />
      <Ways airflow={value} />
      <PerTon dryAirFlow={value.dryAirFlow} u={value.u} />
      <MoreOrLess />
      <section class="folds">
        <AnswerWorking />
      </section>
      {isDesk.value && <Block />}
    </>
  );
}

/** Which of several answers counts. */
function Choose() {
  const several = together.value;
  const options = answered.value.flatMap((method) => {
    const answer = answerOf(method);
    return answer ? [[method, words.option(methodWords[method].name, flowText(answer))] as const] : [];
  });
  const all = several ? [['together', words.option(words.together, flowText(several))] as const] : [];
  return (
    <Choices
      id="choice-airflow.use"
      ask={words.which}
      options={Object.fromEntries([...options, ...all])}
      value={used.value ?? undefined}
      onChoose={(way) => isChoice('airflow.use', way) && use(way)}
    />
  );
}
