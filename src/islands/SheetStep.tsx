import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import type { NoteKey } from '~/job/types.ts';
import { Step } from '~/parts/Step.tsx';
import { sheet as words } from '~/words/en/sheet.ts';
import { job } from './jobStore.ts';
import { NoteField } from './NoteField.tsx';
import type { SheetSteps } from './sheetSteps.ts';

/** A step has a note under its own name. */
type StepName = NoteKey extends infer Key ? (Key extends `step.${infer Step}` ? Step : never) : never;

interface Props<Id extends string> {
  readonly sheet: SheetSteps<Id>;
  readonly step: Id;
  readonly words: { readonly name: string; readonly term: string; readonly lead: string };
  readonly mark?: ComponentChildren;
  /** What its closed line shows, and what stands at the head of the open one. */
  readonly summary: string;
  readonly aside?: string | undefined;
  /** Further keys in the last line of the step. */
  readonly tools?: ComponentChildren;
  /** What such a key opens, below them. */
  readonly panel?: ComponentChildren;
  readonly children: ComponentChildren;
}

/** The frame of one step of a worksheet, with its number, its line and its note. */
export function SheetStep<Id extends StepName>(props: Props<Id>) {
  const { sheet, step, mark, summary, aside, tools, panel, children } = props;
  const { name, term, lead } = props.words;
  const noteKey = `step.${step}` as NoteKey;
  const note = job.value.notes[noteKey] ?? '';
  const [noting, setNoting] = useState(false);
  return (
    <Step
      id={`step-${step}`}
      number={sheet.steps.indexOf(step) + 1}
      name={name}
      term={term}
      mark={mark}
      summary={summary}
      aside={aside}
      open={sheet.isOpen(step)}
      fixed={sheet.fixed.value}
      onToggle={() => {
        sheet.openStep.value = sheet.openStep.value === step || sheet.kept.value === step ? null : step;
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
          {words.note}
        </button>
      </div>
      {panel}
      {(noting || note !== '') && <NoteField of={noteKey} name={words.noteOn(name)} long />}
    </Step>
  );
}
