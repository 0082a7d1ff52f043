import { ChoiceField } from '../../ChoiceField.tsx';
import { QuantityField } from '../../QuantityField.tsx';
import { Assumed } from '../Assumed.tsx';
import { MethodResult } from '../MethodResult.tsx';
import { Where } from '../Where.tsx';

/** The control's own figure. */
export function Readout() {
  return (
    <>
      <Where of="readout" />
      <QuantityField of="readout.volumeFlow" />
      <ChoiceField of="readout.shows" />
      <ChoiceField of="airflow.place" open />
      <ChoiceField of="airflow.kind" open />
      <Assumed>
        <ChoiceField of="readout.speed" />
      </Assumed>
      <MethodResult method="readout" />
    </>
  );
}
