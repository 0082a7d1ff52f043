/** Moving a point: where it goes, what that makes of the job, and the hand that does it. */
import { batch } from '@preact/signals';
import type { RefObject } from 'preact';
import { type AirPoint, airAt, type ChartFrame, xOf, yOf } from '~/charts/moistAir/frame.ts';
import type { PointKey } from '~/job/processes.ts';
import { moveJobAir, moveState } from '~/job/stateEdits.ts';
import { isStateKey } from '~/job/states.ts';
import type { Edit } from '~/job/types.ts';
import { takeHold } from '../hold.ts';
import { edit, job, system, takeBack, tryOut } from '../jobStore.ts';
import { states } from './points.ts';
import { cross, holding, looked, openStep } from './view.ts';

/** The edits that put a point to a place, in the measure in which it is given and to the digits that are shown. */
export function editsTo(key: PointKey, spot: AirPoint): readonly Edit[] {
  if (key === 'entering' || key === 'leaving') return moveJobAir(job.value, key, spot, system.value);
  const measure = states.value.find((state) => state.key === key)?.measure;
  return measure && isStateKey(key) ? moveState(job.value, key, measure, spot, system.value) : [];
}

interface Grip {
  readonly pointer: number;
  readonly key: PointKey;
  readonly frame: ChartFrame;
  /** The drawing on the screen, as it lay when the hand came down: it is not asked again, so that nothing is laid out twice. */
  readonly box: DOMRect;
  readonly from: readonly [x: number, y: number];
  readonly offset: readonly [x: number, y: number];
  moved: boolean;
  to: AirPoint;
}

let grip: Grip | null = null;
/** A finger that only taps trembles by less. */
const tremble = 3;

/** Takes hold of a point. */
export function take(
  event: PointerEvent,
  key: PointKey,
  air: AirPoint,
  frame: ChartFrame,
  svg: RefObject<SVGSVGElement>,
) {
  if (event.button !== 0 || !svg.current || grip) return;
  takeHold(event);
  // From now on the figures beside the chart are those of this point.
  cross.value = null;
  looked.value = key;
  const box = svg.current.getBoundingClientRect();
  const scale = frame.width / box.width;
  const at = [(event.clientX - box.left) * scale, (event.clientY - box.top) * scale] as const;
  const offset = [xOf(frame, air.dryBulb) - at[0], yOf(frame, air.humidityRatio) - at[1]] as const;
  grip = {
    pointer: event.pointerId,
    key,
    frame,
    box,
    from: [event.clientX, event.clientY],
    offset,
    moved: false,
    to: air,
  };
}

/** Follows the hand. The job is shown as it would be, and not changed yet. */
export function follow(event: PointerEvent): void {
  if (!grip || event.pointerId !== grip.pointer) return;
  const { box, frame, from, offset, key } = grip;
  if (!grip.moved && Math.hypot(event.clientX - from[0], event.clientY - from[1]) < tremble) return;
  const scale = frame.width / box.width;
  const spot = airAt(
    frame,
    (event.clientX - box.left) * scale + offset[0],
    (event.clientY - box.top) * scale + offset[1],
  );
  grip.moved = true;
  grip.to = spot;
  batch(() => {
    holding.value = key;
    if (!put(key, spot, tryOut)) letGo();
  });
}

/** The hand comes up: what it did becomes one edit. A tap opens the fields of the point. */
export function drop(event: PointerEvent): void {
  if (!grip || event.pointerId !== grip.pointer) return;
  const { moved, to, key } = grip;
  letGo();
  if (moved) put(key, to, edit);
  else openStep.value = key;
}

/** Puts a point to a place of the job as it is without the hand: another page may have changed it meanwhile. */
function put(key: PointKey, to: AirPoint, how: (...edits: Edit[]) => boolean): boolean {
  return batch(() => {
    takeBack();
    return how(...editsTo(key, to));
  });
}

/** Puts the point back to where it was taken. True when there was a hand on it. */
export function giveUp(): boolean {
  const held = grip !== null;
  takeBack();
  letGo();
  return held;
}

function letGo(): void {
  grip = null;
  holding.value = null;
}
