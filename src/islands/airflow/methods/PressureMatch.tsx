import { ChoiceField } from '../../ChoiceField.tsx';
import { QuantityField } from '../../QuantityField.tsx';
import { MethodResult } from '../MethodResult.tsx';
import { Where, WhereCaution } from '../Where.tsx';

/** A calibrated fan that makes the same pressure in the supply. */
export function PressureMatch() {
  return (
    <>
      <Where
        of="pressureMatch"
        assumed={
          <>
            <ChoiceField of="match.shownAs" />
            <ChoiceField of="match.speed" />
          </>
        }
      />
      <WhereCaution of="pressureMatch" />
      <div class="field-row">
        <QuantityField of="match.normal" />
        <QuantityField of="match.reached" />
      </div>
      <QuantityField of="match.fanFlow" />
      <MethodResult method="pressureMatch" />
    </>
  );
}
