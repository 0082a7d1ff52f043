import type { ComponentChildren } from 'preact';
import { useEffect } from 'preact/hooks';
import { refused } from '../jobStore.ts';
import { lazy } from '../lazy.tsx';
import { OpenAll } from '../OpenAll.tsx';
import { noticed } from '../opening.ts';
import { SheetBar } from '../SheetBar.tsx';
import { startSheet } from '../startSheet.ts';
import { Answer } from './Answer.tsx';
import { bar, found, lineSteps } from './model.ts';
import { LengthsStep } from './steps/LengthsStep.tsx';
import { MakerStep } from './steps/MakerStep.tsx';
import { RunningStep } from './steps/RunningStep.tsx';
import { SystemStep } from './steps/SystemStep.tsx';
import { TubesStep } from './steps/TubesStep.tsx';

const AskCopy = lazy(() => import('../AskCopy.tsx').then((module) => module.AskCopy));
const Notices = lazy(() => import('../Notices.tsx').then((module) => module.Notices));
const Notes = lazy(() => import('./late.ts').then((late) => late.Notes));

/** The sheet on long lines: what joins the two units, and what it takes of the capacity. */
export function LineSheet({ children }: { children?: ComponentChildren }) {
  useEffect(() => startSheet(lineSteps), []);
  return (
    <div class="sheet">
      <div class="sheet-steps">
        {noticed.value && <Notices />}
        {children}
        <SystemStep />
        <TubesStep />
        <LengthsStep />
        <MakerStep />
        <RunningStep />
        <OpenAll sheet={lineSteps} />
      </div>
      <Answer />
      {found.value && <Notes />}
      <SheetBar sheet={lineSteps} says={bar.value} />
      {refused.value && <AskCopy />}
    </div>
  );
}
