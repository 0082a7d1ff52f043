import { entered } from '~/job/entered.ts';
import type { QuantityKey } from '~/job/types.ts';
import { lineAnswer } from '~/words/en/lineSet.ts';
import { amountOf } from '../fields.ts';
import { job } from '../jobStore.ts';
import { lazy } from '../lazy.tsx';
import { capacityText } from '../show.ts';
import { ends, found, lines, needText, outcome, refusal, share } from './model.ts';

const Results = lazy(() => import('./late.ts').then((late) => late.Results));

/** What the lines leave: one sentence for anyone, one for the technician, then what stands behind it. */
export function Answer() {
  const [first, second, third] = sentences();
  return (
    <div class="sheet-answer" id="answer" tabIndex={-1}>
      <section class="answer" aria-labelledby="answer-head">
        <h2 class="answer-sentence" id="answer-head">
          {first}
        </h2>
        <p class="answer-plain" role="status">
          {second}
        </p>
        {third && <p class="answer-note">{third}</p>}
      </section>
      {found.value?.vapor && <Results />}
    </div>
  );
}

function sentences(): readonly [string, string, string?] {
  const result = outcome.value;
  if (result && !result.ok) return [lineAnswer.cannot, whyNot(result.problem?.quantity)];
  const factor = found.value?.factor;
  if (factor) {
    const leaves = lineAnswer.leaves(share(factor.factor));
    if (factor.basis === 'maker') return [leaves, lineAnswer.maker, difference(factor.factor)];
    const run = lines.value.input?.run;
    const [low, high] = ends(factor);
    const length = amountOf('lineSet.ratedLength', run?.ratedLength ?? 0);
    return [leaves, lineAnswer.band(low, high, length, run?.ratedVaporTube ?? ''), difference(factor.factor)];
  }
  if (refusal.value) return [lineAnswer.refused, lineAnswer[refusal.value]];
  if (found.value) return [lineAnswer.beyond, beyond()];
  return [lineAnswer.nothing, lineAnswer.needs(needText.value)];
}

const codes: Readonly<Record<string, string>> = lineAnswer.cannotCodes;
const whyNot = (quantity = '') => codes[quantity] ?? lineAnswer.cannotCodes.other;

/** What the share comes to in the units of capacity; '' without a nameplate. */
function difference(factor: number): string {
  const nominal = entered(job.value, 'nominalCapacity');
  if (nominal === null) return '';
  const change = nominal * (1 - factor);
  if (Math.abs(change) < 0.0005 * nominal) return lineAnswer.same;
  const say = change > 0 ? lineAnswer.loses : lineAnswer.gains;
  return say(capacityText(Math.abs(change)), capacityText(nominal));
}

function beyond(): string {
  const cautions = found.value?.cautions ?? [];
  const said = (key: QuantityKey) => amountOf(key, Math.abs(entered(job.value, key) ?? 0));
  return [
    cautions.includes('beyondMakersLength') &&
      lineAnswer.beyondLength(said('lineSet.length'), said('lineSet.maximumLength')),
    cautions.includes('beyondMakersLift') && lineAnswer.beyondLift(said('lineSet.lift'), said('lineSet.maximumLift')),
  ]
    .filter(Boolean)
    .join(' ');
}
