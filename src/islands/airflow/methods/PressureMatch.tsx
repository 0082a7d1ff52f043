import { ChoiceField } from '../../ChoiceField.tsx';
import { QuantityField } from '../../QuantityField.tsx';
import { MethodResult } from '../MethodResult.tsx';
import { Where } from '../Where.tsx';

/** A calibrated fan that makes the same pressure in the supply. */
export function PressureMatch() {
  return (
    <>
      <Where of="pressureMatch" />
      <div class="field-row">
        <QuantityField of="match.normal" signed />
        <QuantityField of="match.reached" signed />
      </div>
      <QuantityField of="match.fanFlow" />
      <ChoiceField of="match.shownAs" />
      <MethodResult method="pressureMatch" />
    </>
  );
}
