import type { ComponentChildren } from 'preact';
import { probeSteps as words } from '~/words/en/probes.ts';
import { SheetStep } from '../SheetStep.tsx';
import { lineOf, type ProbeStep, probeSheetSteps } from './model.ts';

/** One step of this sheet. */
export function StepOf({ step, children }: { step: ProbeStep; children: ComponentChildren }) {
  return (
    <SheetStep sheet={probeSheetSteps} step={step} words={words[step]} summary={lineOf(step)}>
      {children}
    </SheetStep>
  );
}
