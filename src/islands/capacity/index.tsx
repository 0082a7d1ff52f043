import type { ComponentChildren } from 'preact';
import { useEffect } from 'preact/hooks';
import { sheet } from '~/words/en/sheet.ts';
import { LateFold } from '../LateFold.tsx';
import { lazy } from '../lazy.tsx';
import { OpenAll } from '../OpenAll.tsx';
import { noticed } from '../opening.ts';
import { SheetBar } from '../SheetBar.tsx';
import { startSheet } from '../startSheet.ts';
import { assessment, refused } from '../store.ts';
import { Answer } from './Answer.tsx';
import { bar, capacitySteps, isDesk } from './model.ts';
import { AirflowStep } from './steps/AirflowStep.tsx';
import { AirStep } from './steps/AirStep.tsx';
import { OutdoorsStep } from './steps/OutdoorsStep.tsx';
import { RatingStep } from './steps/RatingStep.tsx';
import { SureStep } from './steps/SureStep.tsx';

const AskCopy = lazy(() => import('../AskCopy.tsx').then((module) => module.AskCopy));
const Notices = lazy(() => import('../Notices.tsx').then((module) => module.Notices));
const Identity = lazy(() => import('./Identity.tsx').then((module) => module.Identity));
const Visit = lazy(() => import('./Visit.tsx').then((module) => module.Visit));
const Margin = lazy(() => import('./late.ts').then((late) => late.Margin));
const CapacityBlock = lazy(() => import('./late.ts').then((late) => late.CapacityBlock));

/** The capacity sheet: six steps, the answer, what stands behind it, and the bar that is always in view. */
export function CapacitySheet({ children }: { children?: ComponentChildren }) {
  useEffect(() => startSheet(capacitySteps), []);
  const measured = assessment.value.measured.ok;
  return (
    <div class="sheet">
      <div class="sheet-steps">
        {noticed.value && <Notices />}
        {children}
        <LateFold summary={sheet.identity} kind="sheet-identity">
          <Identity />
        </LateFold>
        <LateFold summary={sheet.visit}>
          <Visit />
        </LateFold>
        <AirStep side="entering" />
        <AirStep side="leaving" />
        <AirflowStep />
        <OutdoorsStep />
        <RatingStep />
        <SureStep />
        <OpenAll sheet={capacitySteps} />
      </div>
      <Answer />
      {measured && <Margin />}
      {measured && !isDesk.value && <CapacityBlock />}
      <SheetBar sheet={capacitySteps} says={bar.value} />
      {refused.value && <AskCopy />}
    </div>
  );
}
