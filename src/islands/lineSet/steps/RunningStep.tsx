import { Caution } from '~/parts/Caution.tsx';
import { lineSheet } from '~/words/en/lineSet.ts';
import { QuantityField } from '../../QuantityField.tsx';
import { StepOf } from '../StepOf.tsx';

/** Step 5: what the gauges say, where somebody may read them. */
export function RunningStep() {
  return (
    <StepOf step="lineRunning">
      <Caution of="refrigerants">{lineSheet.licensed}</Caution>
      <QuantityField of="lineSet.evaporating" signed />
      <div class="field-row">
        <QuantityField of="lineSet.superheat" />
        <QuantityField of="lineSet.subcooling" />
      </div>
      <QuantityField of="lineSet.liquidTemperature" />
    </StepOf>
  );
}
