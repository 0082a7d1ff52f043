import { probeWords as words } from '~/words/en/probes.ts';
import { ChoiceField } from '../../ChoiceField.tsx';
import { StepOf } from '../StepOf.tsx';

/** Step 3: which probe is right, and what they were held against. */
export function SharedStep() {
  return (
    <StepOf step="probesShared">
      <ChoiceField of="probes.reference" />
      <ChoiceField of="probes.humidityStandard" />
      <p class="hint">{words.salt}</p>
      <ChoiceField of="probes.iceBath" />
      <p class="hint">{words.iceBath}</p>
      <p class="hint">{words.agreed}</p>
    </StepOf>
  );
}
