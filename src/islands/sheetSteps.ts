/** Which steps of a worksheet are open: on a phone one at a time, or all on request; on a desk all are. */
import { type ReadonlySignal, type Signal, signal } from '@preact/signals';

export interface SheetSteps<Step extends string> {
  /** In the order in which they stand. */
  readonly steps: readonly Step[];
  readonly openStep: Signal<Step | null>;
  /** The one before it, where an answer led on from there: it stays open until somebody goes further. */
  readonly kept: Signal<Step | null>;
  readonly allOpen: Signal<boolean>;
  readonly isDesk: Signal<boolean>;
  /** Whether all stand open, so that their heads are headings and not keys. */
  readonly fixed: ReadonlySignal<boolean>;
  readonly isOpen: (step: Step) => boolean;
  /** The step that the last field of this one leads to; none: the answer. */
  readonly after: (step: Step) => Step | undefined;
}

/** The steps of one worksheet, the first of them open. */
export function sheetSteps<Step extends string>(steps: readonly [Step, ...Step[]]): SheetSteps<Step> {
  const openStep = signal<Step | null>(steps[0]);
  const kept = signal<Step | null>(null);
  const allOpen = signal(false);
  const isDesk = signal(false);
  const isOpen = (step: Step) => isDesk.value || allOpen.value || openStep.value === step || kept.value === step;
  const after = (step: Step) => steps[steps.indexOf(step) + 1];
  return { steps, openStep, kept, allOpen, isDesk, fixed: isDesk, isOpen, after };
}
