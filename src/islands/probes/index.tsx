import type { ComponentChildren } from 'preact';
import { useEffect } from 'preact/hooks';
import { refused } from '../jobStore.ts';
import { lazy } from '../lazy.tsx';
import { OpenAll } from '../OpenAll.tsx';
import { noticed } from '../opening.ts';
import { SheetBar } from '../SheetBar.tsx';
import { startSheet } from '../startSheet.ts';
import { Answer } from './Answer.tsx';
import { bar, first, probeSheetSteps } from './model.ts';
import { EndStep, ReturnStep, SupplyStep } from './steps/AirSteps.tsx';
import { PointsStep } from './steps/PointsStep.tsx';
import { SharedStep } from './steps/SharedStep.tsx';
import { SteadyStep } from './steps/SteadyStep.tsx';

const AskCopy = lazy(() => import('../AskCopy.tsx').then((module) => module.AskCopy));
const Notices = lazy(() => import('../Notices.tsx').then((module) => module.Notices));
const Notes = lazy(() => import('./late.ts').then((late) => late.Notes));

/** The probe sheet: both probes in one air, what they differ by, and what that is worth. */
export function ProbeSheet({ children }: { children?: ComponentChildren }) {
  useEffect(() => startSheet(probeSheetSteps), []);
  return (
    <div class="sheet">
      <div class="sheet-steps">
        {noticed.value && <Notices />}
        {children}
        <ReturnStep />
        <SupplyStep />
        <SharedStep />
        <SteadyStep />
        <PointsStep />
        <EndStep />
        <OpenAll sheet={probeSheetSteps} />
      </div>
      <Answer />
      {first.value && <Notes />}
      <SheetBar sheet={probeSheetSteps} says={bar.value} />
      {refused.value && <AskCopy />}
    </div>
  );
}
