import { isFound } from '~/job/measuredTest.ts';
import { Echo } from '~/parts/Echo.tsx';
import { href } from '~/parts/href.ts';
import { foundAirflow as words } from '~/words/en/foundAirflow.ts';
import { joined, ofKind } from '../show.ts';
import { edit, interpreted, job } from '../store.ts';

/** That the airflow is the one found on its own sheet, the way there, and the way back to the figure typed here. */
export function FoundAirflow() {
  const { volumeFlow } = interpreted.value.test.airflow;
  const found = isFound(job.value);
  const flow = volumeFlow === null ? null : joined(ofKind('volumeFlow', volumeFlow));
  return (
    <Echo>
      {found ? (flow ? words.from(flow) : words.notYet) : words.lead}{' '}
      <a href={href('/worksheets/airflow/')}>{words.way}</a>
      {found && (
        <>
          {' · '}
          <button
            type="button"
            class="plain-button"
            onClick={() => edit({ slot: 'chosen', key: 'airflow.from', to: 'typed' })}
          >
            {words.typed}
          </button>
        </>
      )}
    </Echo>
  );
}
