import { airflowWays } from '~/calc/airflow/ways.ts';
import { attempt } from '~/calc/outcome.ts';
import { airHere } from '~/job/airflow/air.ts';
import { chosen } from '~/job/choices.ts';
import { href } from '~/parts/href.ts';
import { airflowAnswer as words } from '~/words/en/airflowAnswer.ts';
import { methodWords } from '~/words/en/airflowSheet.ts';
import { edit, job } from '../jobStore.ts';
import { flowText, percentFine, sureText } from './flowText.ts';
import { answerOf, counts, methods, together, use, used } from './model.ts';

/** The airflow that counts: the biggest thing on the sheet; how sure it is; the same air counted in other ways. */
export function Answer() {
  const outcome = counts.value;
  const answered = methods.filter((method) => answerOf(method) !== null);
  if (!outcome?.ok) {
    return (
      <section class="answer" aria-labelledby="answer-head">
        <h2 class="answer-sentence" id="answer-head">
          {answered.length > 1 ? words.choose : words.notYet}
        </h2>
        <p class="answer-plain">{answered.length > 1 ? words.chooseLead : words.notYetLead}</p>
        {answered.length > 1 && <Choose />}
      </section>
    );
  }
  const { value } = outcome;
  const onSheet = chosen(job.value, 'airflow.from') === 'found';
  return (
    <section class="answer" aria-labelledby="answer-head">
      <h2 class="answer-sentence" id="answer-head">
        {words.moves(flowText(value))}
      </h2>
      <p class="answer-plain">{words.counted(value.at === 'standard', sureText(value.u))}</p>
      <Ways />
      {answered.length > 1 && <Choose />}
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
    </section>
  );
}

/** Which of several answers counts. */
function Choose() {
  const several = together.value;
  return (
    <div class="choice-row">
      {methods.map((method) => {
        const answer = answerOf(method);
        return (
          answer && (
            <button
              key={method}
              type="button"
              class="plain-button"
              aria-pressed={used.value === method ? 'true' : 'false'}
              onClick={() => use(method)}
            >
              {methodWords[method].name}: {flowText(answer)}
            </button>
          )
        );
      })}
      {several && (
        <button
          type="button"
          class="plain-button"
          aria-pressed={used.value === 'together' ? 'true' : 'false'}
          onClick={() => use('together')}
        >
          {words.together}: {flowText(several)}
        </button>
      )}
    </div>
  );
}

/** The same air as standard air, and as it moves at the return and at the supply. */
function Ways() {
  const outcome = counts.value;
  if (!outcome?.ok) return null;
  const entering = airHere(job.value, 'entering');
  const leaving = airHere(job.value, 'leaving');
  const ways = attempt(() => airflowWays(outcome.value, { entering: entering.air, leaving: leaving.air }));
  if (!ways.ok) return null;
  return (
    <table class="ledger">
      <caption>{words.ways}</caption>
      <tbody>
        {ways.value.map(({ name, volumeFlow, mistaken }) => (
          <tr key={name}>
            <th scope="row">{words.wayNames[name]}</th>
            <td class="number">{flowText({ volumeFlow })}</td>
            <td class="unit">{Math.abs(mistaken) < 5e-4 ? words.asGiven : words.mistaken(percentFine(mistaken))}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
