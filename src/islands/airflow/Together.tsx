import { Check, Echo } from '~/parts/Echo.tsx';
import { Ledger } from '~/parts/Ledger.tsx';
import { methodWords } from '~/words/en/airflowSheet.ts';
import { disagreementWords, leftOutWords, togetherWords as words } from '~/words/en/airflowTogether.ts';
import { flowText, percentFine, standardText, sureText } from './flowText.ts';
import { together } from './model.ts';

/** What several methods come to together, whether they agree, and what usually explains it when they do not. */
export function Together() {
  const mean = together.value;
  if (!mean) return null;
  return (
    <section class="airflow-together" aria-labelledby="together-head">
      <h2 id="together-head">{words.head}</h2>
      <p>{words.mean(flowText(mean), sureText(mean.u))}</p>
      <Ledger
        caption={words.weights}
        lines={mean.weighed.map(({ method, dryAirFlow, weight }) => ({
          name: methodWords[method].name,
          number: standardText(dryAirFlow),
          unit: words.weight(percentFine(weight)),
        }))}
      />
      {mean.leftOut.map(({ method, why }) => (
        <Echo key={method}>{words.leftOut(methodWords[method].name, leftOutWords[why])}</Echo>
      ))}
      {mean.consistent ? (
        mean.weighed.length > 1 && <Echo>{words.agree}</Echo>
      ) : (
        <Check>{words.disagree(mean.birge.toFixed(1))}</Check>
      )}
      {mean.disagreements.map(({ high, low, gap, usual }) => (
        <Check key={`${high}/${low}`}>
          {words.pair(methodWords[high].name, methodWords[low].name, percentFine(gap))} {disagreementWords[usual]}
        </Check>
      ))}
    </section>
  );
}
