import type { ComponentChildren } from 'preact';
import { lineSheet, lineSteps as words } from '~/words/en/lineSet.ts';
import { SheetStep } from '../SheetStep.tsx';
import { isPackaged, type LineStep, lineSteps, summaryOf } from './model.ts';

/** What a packaged unit can be asked. */
const always: readonly LineStep[] = ['lineSystem', 'lineMaker'];

/** One step of this sheet. */
export function StepOf({ step, children }: { step: LineStep; children: ComponentChildren }) {
  return (
    <SheetStep sheet={lineSteps} step={step} words={words[step]} summary={summaryOf(step)}>
      {isPackaged.value && !always.includes(step) ? <p class="step-say">{lineSheet.notNeeded}</p> : children}
    </SheetStep>
  );
}
