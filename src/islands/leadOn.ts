/** On a phone the last answer of a step leads on, as Enter does after a figure: the hand is on the glass, and no keyboard is open. */
import { effect } from '@preact/signals';
import type { SheetSteps } from './sheetSteps.ts';
import { focus, goInto, nextInStep, stepOf } from './travel.ts';

const isOpenQuestion = (asked: Element) =>
  asked instanceof HTMLSelectElement ? asked.value === '' : asked.querySelector(':checked') === null;

/**
 * Follows fingers alone: whoever moves among answers by arrows, or hears them, goes on by hand. An answer that is changed leads
 * nowhere, nor does one below which the step goes on, unless it brought the next question itself. The step that was answered
 * stays open until somebody goes further, so that nothing folds under the finger. Returns what ends it.
 */
export function leadOn<Step extends string>(sheet: SheetSteps<Step>): () => void {
  let asked: Element | null = null;
  const press = ({ target, pointerType }: PointerEvent) => {
    const one = (target as Element).closest('.sheet-steps :is(.choices, select)');
    asked = pointerType === 'touch' && one && isOpenQuestion(one) && !nextInStep(sheet, one) ? one : null;
  };
  const go = (one: Element) => {
    const here = stepOf(sheet, one);
    const next = nextInStep(sheet, one);
    const after = here && sheet.after(here);
    if (isOpenQuestion(one) || sheet.isDesk.value || sheet.allOpen.value) return;
    if (next) focus(sheet, next);
    else if (after) {
      goInto(sheet, after);
      sheet.kept.value = here;
    }
  };
  const answer = ({ target }: Event) => {
    const one = asked;
    // The field that was left for the answer says that it has changed, too.
    if (!one?.contains(target as Node)) return;
    asked = null;
    // What the answer changes is drawn in a microtask that was put in line before this one. Some phones open their keyboard
    // only within the tap itself.
    queueMicrotask(() => go(one));
  };
  const stop = effect(() => {
    const { kept, openStep, after } = sheet;
    if (kept.value !== null && after(kept.value) !== openStep.value) kept.value = null;
  });
  document.addEventListener('pointerdown', press);
  document.addEventListener('change', answer);
  return () => {
    stop();
    document.removeEventListener('pointerdown', press);
    document.removeEventListener('change', answer);
  };
}
