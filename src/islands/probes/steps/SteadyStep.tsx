import { lazy } from '../../lazy.tsx';
import { probeSheetSteps } from '../model.ts';
import { StepOf } from '../StepOf.tsx';

const Steady = lazy(() => import('../steady/Steady.tsx').then((module) => module.Steady));

/** Step 4: waiting until steady. What it takes is fetched when somebody comes near it. */
export function SteadyStep() {
  return <StepOf step="probesSteady">{probeSheetSteps.isOpen('probesSteady') && <Steady />}</StepOf>;
}
