import { sureStep } from '~/words/en/steps.ts';
import { ChoiceField } from '../../ChoiceField.tsx';
import { LateFold } from '../../LateFold.tsx';
import { lazy } from '../../lazy.tsx';
import { QuantityField } from '../../QuantityField.tsx';
import { expectedHalf, loaded } from '../../store.ts';
import { capacitySteps } from '../model.ts';
import { Remarks } from '../Remarks.tsx';
import { StepFrame } from '../StepFrame.tsx';

const SureBody = lazy(() => import('../sure/SureBody.tsx').then((module) => module.SureBody));
const SureTools = lazy(() => import('../sure/SureBody.tsx').then((module) => module.SureTools));
const Limits = lazy(() => import('../sure/Limits.tsx').then((module) => module.Limits));

/** Step 6: whether the probes were checked against each other, and the line that was agreed on. */
export function SureStep() {
  const isNear = capacitySteps.isOpen('sure') || expectedHalf.value !== null;
  return (
    <StepFrame step="sure" tools={isNear && <SureTools />}>
      <div class="step-face" data-awaits={loaded.value ? undefined : ''}>
        <ChoiceField of="sideBySide" />
        {isNear && <SureBody />}
        <QuantityField of="line" />
        <LateFold summary={sureStep.limits}>
          <Limits />
        </LateFold>
        <Remarks about="test" />
      </div>
    </StepFrame>
  );
}
