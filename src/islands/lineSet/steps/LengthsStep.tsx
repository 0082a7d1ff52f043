import { QuantityField } from '../../QuantityField.tsx';
import { StepOf } from '../StepOf.tsx';

/** Step 3: how long, with what in it, and how far up or down. */
export function LengthsStep() {
  return (
    <StepOf step="lineLengths">
      <QuantityField of="lineSet.length" />
      <QuantityField of="lineSet.lift" signed />
      <QuantityField of="lineSet.fittings" />
    </StepOf>
  );
}
