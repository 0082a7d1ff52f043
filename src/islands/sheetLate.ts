/** What a worksheet of steps does once its job is there and nobody waits for anything any more. */
import { effect } from '@preact/signals';
import type { Job } from '~/job/types.ts';
import { job, loaded, source } from './jobStore.ts';
import { keeping } from './keep.ts';
import { leadOn } from './leadOn.ts';
import { leavePlace } from './noticePlace.ts';
import { noticed, type Stale, stale } from './opening.ts';
import { sheetParts } from './sheetParts.ts';
import type { SheetSteps } from './sheetSteps.ts';
import { toField } from './travel.ts';
import { UndoKey } from './undo/UndoKey.tsx';
import { Was } from './undo/Was.tsx';
import { whenUntouched } from './untouched.ts';

/** After this long a reading is another hour's, ms. */
const hour = 3_600_000;

/** Returns what ends it. */
export function startLate<Step extends string>(sheet: SheetSteps<Step>): () => void {
  whenUntouched(() => {
    openAgain(sheet);
    sheetParts.value = { UndoKey, Was };
    noteAge(sheet);
    if (!noticed.peek()) leavePlace();
  });
  const stops = [effect(() => rememberStep(sheet)), effect(askToKeep), leadOn(sheet)];
  const back = () => document.visibilityState === 'visible' && whenUntouched(() => noteAge(sheet));
  document.addEventListener('visibilitychange', back);
  return () => {
    document.removeEventListener('visibilitychange', back);
    for (const stop of stops) stop();
  };
}

const stepKey = () => `ton-for-ton.step.${location.pathname}`;

/** Opens the step that was open when this job was left, unless somebody has begun elsewhere. */
function openAgain<Step extends string>({ steps, openStep }: SheetSteps<Step>): void {
  // A sheet begins with its first step open, or with none.
  const begun = (openStep.peek() ?? steps[0]) !== steps[0] || document.activeElement?.closest('.sheet-steps');
  if (source.peek() !== 'own' || begun) return;
  const [id, name] = kept(stepKey())?.split(' ') ?? [];
  const step = steps.find((one) => one === name);
  if (id === job.peek().id && step) openStep.value = step;
}

/** Leaves word of the job for the next time: which step is open, and what there will be to say of its age or origin. */
function rememberStep<Step extends string>(sheet: SheetSteps<Step>): void {
  const step = sheet.openStep.value;
  const { id, invented } = job.value;
  const says = invented ? 'copy' : (oldestReading(sheet, job.value)?.at ?? '');
  if (source.value === 'own' && step) put(stepKey(), `${id} ${step} ${says}`);
}

/** The older of the two readings of the air, where the sheet asks for them; none of a locked job, whose readings are to stay. */
function oldestReading<Step extends string>(
  sheet: SheetSteps<Step>,
  { entered, notes }: Job,
): Omit<Stale, 'readAgain'> | null {
  if (notes['locked.at'] !== undefined || !sheet.steps.some((step) => step === 'leaving')) return null;
  const read = (['leaving', 'entering'] as const).flatMap((side) => {
    const at = entered[`${side}.dryBulb`]?.at;
    return at === undefined ? [] : [{ side, at }];
  });
  return read.sort((a, b) => a.at.localeCompare(b.at))[0] ?? null;
}

/** Browsers may clear what a site keeps when a device runs low, unless they are asked not to. Asked once, after the first save. */
function askToKeep(): void {
  if (keeping.value !== 'kept' || kept(askedKey) !== null) return;
  put(askedKey, 'yes');
  void navigator.storage?.persist?.().catch(() => {});
}

const askedKey = 'ton-for-ton.asked';

/** Says that readings are an hour old, of the older side first, until somebody reads again or says that they hold. */
function noteAge<Step extends string>(sheet: SheetSteps<Step>): void {
  if (!loaded.peek() || source.peek() !== 'own') return;
  const oldest = oldestReading(sheet, job.peek());
  if (!oldest || Date.now() - Date.parse(oldest.at) < hour || oldest.at === stale.peek()?.at) return;
  stale.value = {
    ...oldest,
    readAgain: () => {
      stale.value = null;
      toField(sheet, `field-${oldest.side}.dryBulb`);
    },
  };
}

function kept(key: string): string | null {
  try {
    return localStorage.getItem(key);
  } catch {
    return null;
  }
}

function put(key: string, text: string): void {
  try {
    localStorage.setItem(key, text);
  } catch {
    // Then it is forgotten with the page.
  }
}
