import { standardVolumeFlow } from '~/calc/dryAirFlow.ts';
import { findAirflow } from '~/job/airflow/find.ts';
import { entered } from '~/job/entered.ts';
import { Echo } from '~/parts/Echo.tsx';
import { href } from '~/parts/href.ts';
import { foundAirflow as words } from '~/words/en/foundAirflow.ts';
import { inUnitOf, joined, ofKind } from '../show.ts';
import { edit, job } from '../store.ts';

const flowText = (volumeFlow: number) => joined(ofKind('volumeFlow', volumeFlow));

/** That the airflow is the one found on its own sheet: where from, what kind of air, how sure; and the way back to the figure typed here. */
export function FoundAirflow() {
  const typed = entered(job.value, 'airflow.volumeFlow');
  return (
    <Echo>
      <FoundSaid /> {typed !== null && `${words.kept(flowText(typed))} `}
      <a href={href('/worksheets/airflow/')}>{words.way}</a>
      {' · '}
      <button
        type="button"
        class="plain-button"
        onClick={() => edit({ slot: 'chosen', key: 'airflow.from', to: 'typed' })}
      >
        {words.typed}
      </button>
    </Echo>
  );
}

/** The sentence alone. */
export function FoundSaid() {
  const found = findAirflow(job.value);
  return <>{found.ok ? saidOf(found.value) : words.notYet}</>;
}

function saidOf(found: Extract<ReturnType<typeof findAirflow>, { ok: true }>['value']): string {
  const by = words.by['method' in found ? found.method : 'together'];
  const standard = flowText(standardVolumeFlow(found.dryAirFlow));
  const sure = words.sure(joined(inUnitOf(found.u, 'percent', 1)));
  const moving = found.at === 'standard' ? '' : words.moving(flowText(found.volumeFlow));
  return [words.from(standard, by), moving, sure].filter(Boolean).join(' ');
}
