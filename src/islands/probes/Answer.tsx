import { probeTodo, probeAnswer as words } from '~/words/en/probes.ts';
import { lazy } from '../lazy.tsx';
import { apartIn, first, todo } from './model.ts';

const Results = lazy(() => import('./late.ts').then((late) => late.Results));

/** What the probes differ by: one sentence for anyone, one for the technician, then what stands behind it. */
export function Answer() {
  const [sentence, plain] = sentences();
  return (
    <div class="sheet-answer" id="answer" tabIndex={-1}>
      <section class="answer" aria-labelledby="answer-head">
        <h2 class="answer-sentence" id="answer-head">
          {sentence}
        </h2>
        <p class="answer-plain" role="status">
          {plain}
        </p>
        {first.value && (
          <p class="answer-note">{todo.value.length === 0 ? probeTodo.done : probeTodo.still(todo.value.join(', '))}</p>
        )}
      </section>
      {first.value && <Results />}
    </div>
  );
}

function sentences(): readonly [string, string] {
  const found = first.value;
  if (!found) return [words.nothing, words.nothingLead];
  const { dryBulb, humidity } = found.difference;
  const said = apartIn({ dryBulb: -Math.abs(dryBulb), humidity: humidity === null ? null : -Math.abs(humidity) });
  const alike = dryBulb === 0 && (humidity ?? 0) === 0;
  const differ =
    said.humidity === null ? words.differDry(said.temperature) : words.differ(said.temperature, said.humidity);
  return [alike ? words.alike : differ, found.isCommon ? words.common : words.uncommon];
}
