import { useState } from 'preact/hooks';
import { airflowMethods } from '~/job/choices.ts';
import { isFound } from '~/job/measuredTest.ts';
import { Echo } from '~/parts/Echo.tsx';
import { href } from '~/parts/href.ts';
import { Select } from '~/parts/Select.tsx';
import { choiceWords } from '~/words/en/choices.ts';
import { echoes } from '~/words/en/echoes.ts';
import { airflowStep } from '~/words/en/steps.ts';
import { ChoiceField } from '../../ChoiceField.tsx';
import { lazy } from '../../lazy.tsx';
import { QuantityField } from '../../QuantityField.tsx';
import { perCapacity, percent } from '../../show.ts';
import { assessment, edit, interpreted, job } from '../../store.ts';
import { Remarks } from '../Remarks.tsx';
import { StepFrame } from '../StepFrame.tsx';

const FoundAirflow = lazy(() => import('../FoundAirflow.tsx').then((module) => module.FoundAirflow));

/** Step 3: how much air, how it was found, and at which height. */
export function AirflowStep() {
  const { ask, options } = choiceWords['airflow.method'];
  const method = job.value.chosen['airflow.method'];
  const [changing, setChanging] = useState(false);
  const choose = (value: string, select: HTMLSelectElement) => {
    const done = edit(
      { slot: 'chosen', key: 'airflow.method', to: value },
      { slot: 'chosen', key: 'airflow.place', to: undefined },
      { slot: 'chosen', key: 'airflow.kind', to: undefined },
    );
    if (!done) select.value = method ?? '';
  };
  return (
    <StepFrame step="airflow">
      <div class="field-row">
        <QuantityField of="airflow.volumeFlow" />
        <QuantityField of="altitude" signed />
      </div>
      {isFound(job.value) ? (
        <FoundAirflow />
      ) : (
        <>
          <Select
            id="choice-airflow.method"
            ask={ask}
            options={options}
            value={method}
            open={airflowStep.choose}
            onChoose={choose}
          />
          <Taken changing={changing} onChange={() => setChanging(!changing)} />
          {changing && (
            <>
              <ChoiceField of="airflow.place" />
              <ChoiceField of="airflow.kind" />
            </>
          )}
          <Echo>
            {airflowStep.find} <a href={href('/worksheets/airflow/')}>{airflowStep.findWay}</a>
          </Echo>
        </>
      )}
      <Remarks about="airflow" />
      <details class="fold">
        <summary>{airflowStep.blower}</summary>
        <QuantityField of="barometer" />
        <ChoiceField of="blower.place" assumed={interpreted.value.test.blower.place} />
      </details>
    </StepFrame>
  );
}

/** What the way of finding it says of the place and the kind, as a sentence that can be changed. */
function Taken({ changing, onChange }: { changing: boolean; onChange: () => void }) {
  const { place, kind, limit } = interpreted.value.test.airflow;
  const perTon = assessment.value.checks.find(({ code }) => code === 'airflowPerCapacity')?.value;
  return (
    <Echo>
      {typeof perTon === 'number' && `${echoes.perTon(perCapacity(perTon))} `}
      {echoes.flowTaken(
        echoes.flowKinds[kind],
        echoes.flowPlaces[place],
        percent(limit ?? airflowMethods.unsure.limit),
      )}{' '}
      <button type="button" class="plain-button" aria-expanded={changing ? 'true' : 'false'} onClick={onChange}>
        {airflowStep.change}
      </button>
    </Echo>
  );
}
