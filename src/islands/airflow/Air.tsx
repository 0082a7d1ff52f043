import { airHere } from '~/job/airflow/air.ts';
import { Echo } from '~/parts/Echo.tsx';
import { airWords } from '~/words/en/airflowAir.ts';
import { job } from '../jobStore.ts';
import { QuantityField } from '../QuantityField.tsx';

/** The air that the flow was measured in: height and pressure here, temperature and humidity from the capacity sheet. */
export function Air() {
  const assumed = airHere(job.value, 'entering').assumed;
  return (
    <details class="fold">
      <summary>{airWords.fold}</summary>
      <div class="field-row">
        <QuantityField of="altitude" signed />
        <QuantityField of="barometer" />
      </div>
      <div class="field-row">
        <QuantityField of="entering.dryBulb" name={airWords.returnTemperature} />
        <QuantityField of="entering.relativeHumidity" name={airWords.returnHumidity} />
      </div>
      {assumed && <Echo>{airWords.assumed}</Echo>}
    </details>
  );
}
