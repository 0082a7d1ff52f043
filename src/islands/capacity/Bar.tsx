import { useEffect } from 'preact/hooks';
import { AnswerBar } from '~/parts/AnswerBar.tsx';
import { demoWords, sheet } from '~/words/en/sheet.ts';
import { source } from '../store.ts';
import { bar, openStep } from './model.ts';
import { keepInView, toAnswer, toField, toNextField } from './travel.ts';

let last: Element | null = null;

/** The bar at the foot of a phone: the answer so far, and the key that leads to the next field. */
export function Bar() {
  const { big, after, sentence, small, field } = bar.value;
  useEffect(followFocus, []);
  const prefix = source.value === 'demo' ? `${demoWords.inBar} · ` : '';
  return (
    <AnswerBar
      big={
        <>
          {big}
          {after && <span> {after}</span>}
        </>
      }
      sentence={sentence}
      small={`${prefix}${small}`}
      next={openStep.value === 'sure' ? sheet.toAnswer : sheet.next}
      onAnswer={() => (field ? toField(field) : toAnswer())}
      onNext={() => toNextField(last)}
    />
  );
}

/** Remembers where the finger last was, since the key takes the focus; keeps what is typed in view; lets Enter lead on. */
function followFocus(): () => void {
  const follow = (event: FocusEvent) => {
    const field = event.target as Element;
    if (!field.matches('.sheet-steps input, .sheet-steps select, .sheet-steps textarea')) return;
    last = field;
    keepInView(field);
  };
  const resize = () => document.activeElement && last === document.activeElement && keepInView(last);
  // On paper one goes on to the next line: Enter never sends anything.
  const enter = (event: KeyboardEvent) => {
    const field = event.target;
    if (event.key !== 'Enter' || !(field instanceof HTMLInputElement) || field !== last || field.type !== 'text')
      return;
    event.preventDefault();
    toNextField(field);
  };
  document.addEventListener('keydown', enter);
  document.addEventListener('focusin', follow);
  visualViewport?.addEventListener('resize', resize);
  return () => {
    document.removeEventListener('keydown', enter);
    document.removeEventListener('focusin', follow);
    visualViewport?.removeEventListener('resize', resize);
  };
}
