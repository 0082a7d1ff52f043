/** What a worksheet of steps does once it stands. */
import { takeEarly } from './early.ts';
import { follow, open } from './opening.ts';
import type { SheetSteps } from './sheetSteps.ts';

/** Runs once after hydration; `opened` once the job is there. Returns what is to be undone when the page goes. */
export function startSheet<Step extends string>(sheet: SheetSteps<Step>, opened?: () => void): () => void {
  const { isDesk, openStep, steps } = sheet;
  let end = () => {};
  const wide = matchMedia('(min-width: 68.75em)');
  // Paper is narrower than the screen that it is printed from: what is printed stays as it was seen.
  const width = () => {
    if (!matchMedia('print').matches) isDesk.value = wide.matches;
  };
  takeEarly();
  // The page may have opened the step in which the job was left.
  openStep.value = steps.find((step) => document.querySelector(`#step-${step}[data-open]`)) ?? null;
  width();
  wide.addEventListener('change', width);
  const unfollow = follow();
  void open(new URLSearchParams(location.search))
    .then(opened)
    .then(() => import('./sheetLate.ts'))
    .then(({ startLate }) => {
      end = startLate(sheet);
    });
  return () => {
    end();
    wide.removeEventListener('change', width);
    unfollow();
  };
}
