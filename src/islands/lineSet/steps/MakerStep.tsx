import { QuantityField } from '../../QuantityField.tsx';
import { StepOf } from '../StepOf.tsx';

/** Step 4: the maker's own word on long lines. */
export function MakerStep() {
  return (
    <StepOf step="lineMaker">
      <QuantityField of="lineSet.makerFactor" />
      <div class="field-row">
        <QuantityField of="lineSet.maximumLength" />
        <QuantityField of="lineSet.maximumLift" />
      </div>
      <QuantityField of="lineSet.ratedLength" />
    </StepOf>
  );
}
