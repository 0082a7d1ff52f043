import type { ComponentChildren } from 'preact';
import { Mark } from '~/parts/Mark.tsx';
import { stepNames } from '~/words/en/sheet.ts';
import { SheetStep } from '../SheetStep.tsx';
import { asideOf, capacitySteps, lineOfStep, type StepId } from './model.ts';

interface Props {
  readonly step: StepId;
  /** Further keys in the last line of the step. */
  readonly tools?: ComponentChildren;
  /** What such a key opens, below them. */
  readonly panel?: ComponentChildren;
  readonly children: ComponentChildren;
}

/** The frame of one step of this sheet, with the mark of its air. */
export function StepFrame({ step, tools, panel, children }: Props) {
  const mark = step === 'entering' || step === 'leaving' ? <Mark of={step} /> : undefined;
  return (
    <SheetStep
      sheet={capacitySteps}
      step={step}
      words={stepNames[step]}
      mark={mark}
      summary={lineOfStep(step)}
      aside={asideOf(step)}
      tools={tools}
      panel={panel}
    >
      {children}
    </SheetStep>
  );
}
