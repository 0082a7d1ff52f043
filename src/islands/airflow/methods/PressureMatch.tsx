import { ChoiceField } from '../../ChoiceField.tsx';
import { QuantityField } from '../../QuantityField.tsx';
import { Assumed } from '../Assumed.tsx';
import { MethodResult } from '../MethodResult.tsx';
import { Where } from '../Where.tsx';

/** A calibrated fan that makes the same pressure in the supply. */
export function PressureMatch() {
  return (
    <>
      <Where of="pressureMatch" />
      <div class="field-row">
        <QuantityField of="match.normal" />
        <QuantityField of="match.reached" />
      </div>
      <QuantityField of="match.fanFlow" />
      <Assumed>
        <ChoiceField of="match.shownAs" />
        <ChoiceField of="match.speed" />
      </Assumed>
      <MethodResult method="pressureMatch" />
    </>
  );
}
