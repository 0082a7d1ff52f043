import { Caution } from '~/parts/Caution.tsx';
import { outdoorsStep } from '~/words/en/steps.ts';
import { ChoiceField } from '../../ChoiceField.tsx';
import { QuantityField } from '../../QuantityField.tsx';
import { job } from '../../store.ts';
import { Remarks } from '../Remarks.tsx';
import { StepFrame } from '../StepFrame.tsx';

/** Step 4: the air that the outdoor unit breathes, and whether the machine runs as its table says. */
export function OutdoorsStep() {
  const held = job.value.chosen.fullSpeed;
  return (
    <StepFrame step="outdoors">
      <Caution of="moving-parts">{outdoorsStep.caution}</Caution>
      <QuantityField of="outdoorDryBulb" signed />
      <ChoiceField of="fullSpeed" />
      {held === 'highStage' || held === 'held' ? <ChoiceField of="stage.heldBy" /> : null}
      <p class="hint">{outdoorsStep.held}</p>
      <Remarks about="outdoors" />
    </StepFrame>
  );
}
