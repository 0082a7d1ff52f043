import { ChoiceField } from '../../ChoiceField.tsx';
import { QuantityField } from '../../QuantityField.tsx';
import { ChoiceSelect } from '../ChoiceSelect.tsx';
import { MethodResult } from '../MethodResult.tsx';
import { Where } from '../Where.tsx';

/** The control's own figure. */
export function Readout() {
  return (
    <>
      <Where of="readout" assumed={<ChoiceField of="readout.speed" />} />
      <QuantityField of="readout.volumeFlow" />
      <ChoiceField of="readout.shows" />
      <div class="field-row">
        <ChoiceSelect of="airflow.place" />
        <ChoiceSelect of="airflow.kind" />
      </div>
      <MethodResult method="readout" />
    </>
  );
}
