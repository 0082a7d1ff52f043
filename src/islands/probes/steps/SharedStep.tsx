import { probeWords as words } from '~/words/en/probes.ts';
import { ChoiceField } from '../../ChoiceField.tsx';
import { job } from '../../jobStore.ts';
import { lazy } from '../../lazy.tsx';
import { StepOf } from '../StepOf.tsx';

const StandardCells = lazy(() => import('../standards/StandardCells.tsx').then((module) => module.StandardCells));

/** Step 3: which probe is right, what they were held against, and what they showed of that. */
export function SharedStep() {
  const { 'probes.humidityStandard': humidity = 'none', 'probes.iceBath': iceBath = 'no' } = job.value.chosen;
  return (
    <StepOf step="probesShared">
      <ChoiceField of="probes.reference" />
      <ChoiceField of="probes.humidityStandard" />
      <p class="hint">{words.salt}</p>
      <ChoiceField of="probes.iceBath" />
      <p class="hint">{words.iceBath}</p>
      {(humidity !== 'none' || iceBath === 'yes') && <StandardCells />}
    </StepOf>
  );
}
