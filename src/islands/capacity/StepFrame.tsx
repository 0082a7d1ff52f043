import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import type { NoteKey } from '~/job/types.ts';
import { Mark } from '~/parts/Mark.tsx';
import { Step } from '~/parts/Step.tsx';
import { sheet, stepNames } from '~/words/en/sheet.ts';
import { NoteField } from '../NoteField.tsx';
import { job } from '../store.ts';
import { asideOf, isDesk, isOpen, lineOfStep, openStep, type StepId, steps } from './model.ts';

interface Props {
  readonly step: StepId;
  /** Further keys in the last line of the step. */
  readonly tools?: ComponentChildren;
  readonly children: ComponentChildren;
}

/** The frame of one step with its number, its line and its note. */
export function StepFrame({ step, tools, children }: Props) {
  const { name, term, lead } = stepNames[step];
  const noteKey: NoteKey = `step.${step}`;
  const note = job.value.notes[noteKey] ?? '';
  const [noting, setNoting] = useState(false);
  const mark = step === 'entering' || step === 'leaving' ? <Mark of={step} /> : undefined;
  return (
    <Step
      id={`step-${step}`}
      number={steps.indexOf(step) + 1}
      name={name}
      term={term}
      mark={mark}
      summary={lineOfStep(step)}
      aside={asideOf(step)}
      open={isOpen(step)}
      fixed={isDesk.value}
      onToggle={() => {
        openStep.value = openStep.value === step ? null : step;
      }}
    >
      {lead && <p class="step-say">{lead}</p>}
      {children}
      <div class="tools">
        {tools}
        <button
          type="button"
          class="plain-button"
          aria-expanded={noting ? 'true' : 'false'}
          onClick={() => setNoting(!noting)}
        >
          {sheet.note}
        </button>
      </div>
      {(noting || note !== '') && <NoteField of={noteKey} name={sheet.noteOn(name)} long />}
    </Step>
  );
}
