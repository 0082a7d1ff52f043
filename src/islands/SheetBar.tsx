import { effect } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { useEffect } from 'preact/hooks';
import { AnswerBar } from '~/parts/AnswerBar.tsx';
import { jobLine } from '~/words/en/jobLine.ts';
import { sheet as words } from '~/words/en/sheet.ts';
import { typing } from './fields.ts';
import { source } from './jobStore.ts';
import type { SheetSteps } from './sheetSteps.ts';
import { keepInView, toAnswer, toField, toNextField } from './travel.ts';

/** What the bar says. */
export interface BarWords {
  readonly mark?: ComponentChildren;
  readonly big: string;
  /** A smaller word behind the big figure. */
  readonly after?: string;
  readonly sentence: boolean;
  readonly small: string;
  /** The field to go to when the bar is tapped; else the answer. */
  readonly field?: string;
}

let last: Element | null = null;

/** The bar at the foot of a phone: the answer so far, and the key that leads to the next field. */
export function SheetBar<Step extends string>({ sheet, says }: { sheet: SheetSteps<Step>; says: BarWords }) {
  const { mark, big, after, sentence, small, field } = says;
  useEffect(() => followFocus(sheet), []);
  const from = source.value === 'demo' ? jobLine.demo : source.value === 'linked' ? jobLine.visitor : '';
  const prefix = from && `${from} · `;
  return (
    <AnswerBar
      mark={mark}
      big={
        <>
          {big}
          {after && <span> {after}</span>}
        </>
      }
      sentence={sentence}
      small={`${prefix}${small}`}
      next={sheet.openStep.value === sheet.steps.at(-1) ? words.toAnswer : words.next}
      onAnswer={() => (field ? toField(sheet, field) : toAnswer())}
      onNext={() => toNextField(sheet, last)}
    />
  );
}

/** Remembers where the finger last was, since the key takes the focus; keeps what is typed in view; lets Enter lead on. */
function followFocus<Step extends string>(sheet: SheetSteps<Step>): () => void {
  let pressed = false;
  const press = (event: PointerEvent) => {
    pressed = event.type === 'pointerdown';
  };
  const follow = (event: FocusEvent) => {
    const field = event.target as Element;
    if (!field.matches('.sheet-steps :is(input, select, textarea)')) return;
    last = field;
    // A page that moves between a finger's coming down and its going up would lose the press.
    if (!pressed) keepInView(sheet, field);
    else if (field.matches('[type="text"], textarea'))
      addEventListener('click', () => keepInView(sheet, field), { once: true });
  };
  const again = () => {
    if (last && last === document.activeElement) keepInView(sheet, last);
  };
  // On paper one goes on to the next line: Enter never sends anything.
  const enter = (event: KeyboardEvent) => {
    const field = event.target;
    if (event.key !== 'Enter' || !(field instanceof HTMLInputElement) || field !== last || field.type !== 'text')
      return;
    event.preventDefault();
    toNextField(sheet, field);
  };
  const stopSaying = effect(() => {
    // Something may be said now of what was typed, and it must not stand below the bar.
    if (typing.value === null) requestAnimationFrame(() => requestAnimationFrame(again));
  });
  const heard = [
    ['pointerdown', press],
    ['pointerup', press],
    ['pointercancel', press],
    ['focusin', follow],
    ['keydown', enter],
  ] as const;
  for (const [type, hear] of heard) document.addEventListener(type, hear as EventListener);
  visualViewport?.addEventListener('resize', again);
  return () => {
    stopSaying();
    for (const [type, hear] of heard) document.removeEventListener(type, hear as EventListener);
    visualViewport?.removeEventListener('resize', again);
  };
}
