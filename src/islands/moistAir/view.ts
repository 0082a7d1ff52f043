/** How the chart is looked at: its size, its view, its lines, what is under the hand and under the cross-hair. */
import { computed, signal } from '@preact/signals';
import type { Box } from '~/charts/box.ts';
import { allFamilies, chartLines, type Family, firstFamilies } from '~/charts/moistAir/families.ts';
import { type AirPoint, type ChartFrame, chartFrame, type View } from '~/charts/moistAir/frame.ts';
import { pointsOf } from '~/charts/moistAir/process.ts';
import type { PointKey, ProcessKey } from '~/job/processes.ts';
import { system } from '../jobStore.ts';
import { ownBoxes, pointBoxes } from './drawings.ts';
import { ownProcess } from './own.ts';
import { points, pressure } from './points.ts';

/** Px that the drawing has; nothing is drawn before they are known. */
export const width = signal(0);
/** Whether the lines are drawn yet: at first saturation alone, so that a finger that is already there is heard between. */
const inked = signal(false);
export const view = signal<View>('whole');
const firstDrawn: readonly Family[] = ['saturation'];
export const usualFamilies = firstFamilies;
export const families = signal<readonly Family[]>(usualFamilies);
/** For a projector: text one and a half times as large. */
export const large = signal(false);
/** The seed of the question that is asked in class; `null` outside of it. */
export const inClass = signal<number | null>(null);
/** The point under the hand, while it moves. */
export const holding = signal<PointKey | null>(null);
/** The point that was taken or focused last: its figures stand beside the chart. */
export const looked = signal<PointKey | null>(null);
/** What the cross-hair reads; `null` while it is put away. */
export const cross = signal<AirPoint | null>(null);
/** The step that is open in the column of points and processes. */
export const openStep = signal<PointKey | ProcessKey | 'job' | null>(null);

/** The first drawing, in two tasks of their own: measuring, drawing and writing all the lines at once would hold up a phone. */
export function beginDrawing(wide: number): void {
  setTimeout(() => {
    width.value = wide;
    setTimeout(() => {
      inked.value = true;
    });
  });
}

export function toggleFamily(family: Family): void {
  const on = families.value;
  families.value = on.includes(family) ? on.filter((one) => one !== family) : [...on, family];
}

export const isFamily = (text: string): text is Family => (allFamilies as readonly string[]).includes(text);

type Asked = Parameters<typeof chartFrame>[0];
interface Sheet {
  readonly asked: Asked;
  readonly of: string;
  readonly frame: ChartFrame;
  /** Where the words of points and process stood when the lines were written on: they are kept clear. */
  readonly taken: readonly Box[];
}
let last: Sheet | null = null;

/**
 * The paper stays where it is while points move on it, so that nothing slips under the hand. It is made anew for another
 * size, view, pressure or system, when the job's own process comes or goes, and when a point lies outside it.
 */
const paper = computed((): Sheet | null => {
  const own = ownProcess.value;
  const around: readonly AirPoint[] = [...points.value.map(({ air }) => air), ...(own ? pointsOf(own) : [])];
  const asked: Asked = {
    system: system.value,
    pressure: pressure.value,
    width: width.value,
    view: view.value,
    letter: large.value ? 21 : 14,
  };
  // A close-up is made around its points: for other points it is another one.
  const of = [own !== null, ...(asked.view === 'process' ? points.value.map(({ key }) => key) : [])].join();
  if (asked.width === 0) return null;
  const held = holding.value !== null;
  if (last && (held || (last.of === of && isSame(last.asked, asked) && around.every(within(last.frame))))) return last;
  const frame = chartFrame({ ...asked, around });
  last = { asked, of, frame, taken: [...ownBoxes(frame), ...pointBoxes(frame)] };
  return last;
});

const within =
  ({ dryBulb, humidityRatio }: ChartFrame) =>
  (air: AirPoint) =>
    air.dryBulb >= dryBulb[0] &&
    air.dryBulb <= dryBulb[1] &&
    air.humidityRatio >= humidityRatio[0] &&
    air.humidityRatio <= humidityRatio[1];

const isSame = (one: Asked, other: Asked) =>
  (Object.keys(other) as (keyof Asked)[]).every((key) => one[key] === other[key]);

export const frame = computed(() => paper.value?.frame ?? null);
export const lines = computed(() =>
  paper.value ? chartLines(paper.value.frame, inked.value ? families.value : firstDrawn, paper.value.taken) : [],
);
