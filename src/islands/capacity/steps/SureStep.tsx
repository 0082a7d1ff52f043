import { sureStep } from '~/words/en/steps.ts';
import { ChoiceField } from '../../ChoiceField.tsx';
import { LateFold } from '../../LateFold.tsx';
import { lazy } from '../../lazy.tsx';
import { QuantityField } from '../../QuantityField.tsx';
import { job } from '../../store.ts';
import { Remarks } from '../Remarks.tsx';
import { StepFrame } from '../StepFrame.tsx';

const ProbeLimits = lazy(() => import('../ProbeLimits.tsx').then((module) => module.ProbeLimits));

/** Step 6: whether the probes were checked against each other, and the line that was agreed on. */
export function SureStep() {
  const checked = job.value.chosen.sideBySide === 'yes';
  return (
    <StepFrame step="sure">
      <ChoiceField of="sideBySide" />
      {checked ? (
        <>
          <div class="field-row">
            <QuantityField of="sideBySide.dryBulb" signed />
            <QuantityField of="sideBySide.humidity" signed />
          </div>
          <p class="hint">{sureStep.difference}</p>
        </>
      ) : (
        <p class="hint">{sureStep.how}</p>
      )}
      <QuantityField of="line" />
      <LateFold summary={sureStep.limits}>
        <ProbeLimits />
      </LateFold>
      <p class="label">{sureStep.none}</p>
      <Remarks about="test" />
    </StepFrame>
  );
}
