import { standardVolumeFlow } from '~/calc/dryAirFlow.ts';
import { RangeRows } from '~/charts/airflow/RangeRows.tsx';
import { unitLabel } from '~/job/format.ts';
import { displayUnit, fromSi } from '~/job/units.ts';
import { Check, Echo } from '~/parts/Echo.tsx';
import { Ledger } from '~/parts/Ledger.tsx';
import { methodWords } from '~/words/en/airflowSheet.ts';
import { disagreementWords, leftOutWords, togetherWords as words } from '~/words/en/airflowTogether.ts';
import { system } from '../jobStore.ts';
import { betweenText, endsOf, flowText, percentFine, standardText } from './flowText.ts';
import { answered, answerOf, isDesk, together } from './model.ts';

/** What several methods come to together, drawn on one scale; whether they agree, and what usually explains it when they do not. */
export function Together() {
  const mean = together.value;
  if (!mean || answered.value.length < 2) return null;
  const { weighed, leftOut, consistent, birge, disagreements } = mean;
  return (
    <section class="airflow-together" aria-labelledby="together-head">
      <h2 id="together-head">{words.head}</h2>
      <p>{words.mean(flowText(mean), betweenText(mean))}</p>
      <Picture />
      <p class="answer-note">{words.picture}</p>
      <Ledger
        caption={words.weights}
        lines={weighed.map(({ method, dryAirFlow, weight }) => ({
          name: methodWords[method].name,
          number: standardText(dryAirFlow),
          unit: words.weight(percentFine(weight)),
        }))}
      />
      {leftOut.map(({ method, why }) => (
        <Echo key={method}>{words.leftOut(methodWords[method].name, leftOutWords[why])}</Echo>
      ))}
      {weighed.length > 1 && <Consistency {...mean} />}
      {!consistent && <Check>{words.disagree(birge.toFixed(1))}</Check>}
      {consistent && birge > 1 && <Echo>{words.scatter(birge.toFixed(2))}</Echo>}
      {disagreements.map(({ high, low, gap, usual }) => (
        <Check key={`${high}/${low}`}>
          {words.pair(methodWords[high].name, methodWords[low].inSentence, percentFine(gap))} {disagreementWords[usual]}
        </Check>
      ))}
    </section>
  );
}

/** The test of consistency: how far the answers scatter, beside how far they may. */
function Consistency({ chiSquare, allowed, consistent }: NonNullable<typeof together.value>) {
  const scatter = chiSquare.toFixed(1);
  const most = allowed.toFixed(1);
  return <Echo>{consistent ? words.agree(scatter, most) : words.apart(scatter, most)}</Echo>;
}

/** Each method as a dot with its range, the mean as a thick line with its own. */
function Picture() {
  const mean = together.value;
  if (!mean) return null;
  const unit = displayUnit.volumeFlow[system.value];
  const shown = (volumeFlow: number) => fromSi(volumeFlow, unit);
  const rows = answered.value.flatMap((method) => {
    const answer = answerOf(method);
    if (!answer) return [];
    const volumeFlow = standardVolumeFlow(answer.dryAirFlow);
    const [low, high] = endsOf({ volumeFlow, u: answer.u });
    const open = mean.leftOut.some((one) => one.method === method);
    const name = methodWords[method].name;
    return [{ name, low: shown(low), high: shown(high), at: shown(volumeFlow), open }];
  });
  const [low, high] = endsOf(mean);
  return (
    <RangeRows
      rows={rows}
      line={shown(mean.volumeFlow)}
      band={[shown(low), shown(high)]}
      unit={unitLabel(unit)}
      width={isDesk.value ? 600 : 358}
      summary={words.summary(flowText(mean), betweenText(mean), rows.length)}
    />
  );
}
