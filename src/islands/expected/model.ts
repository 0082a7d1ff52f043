/** What is looked at: which table, which quantity, which place, which air. What is tried here never changes the job. */
import { computed, effect, signal } from '@preact/signals';
import { hasSurface } from '~/charts/surface/frame.ts';
import {
  type Air,
  estimateAt,
  type Place,
  quantitiesIn,
  readTable,
  type SurfaceQuantity,
} from '~/charts/surface/reading.ts';
import { scaleOf } from '~/charts/surface/scale.ts';
import { usesSheet } from '~/job/usesSheet.ts';
import { expectedHalf, interpreted, job, loaded, system } from '../store.ts';
import { type Axis, airOf, type Conditions, levelsFor, measuredOf, ownConditions, shouldOf, shownOf } from './shown.ts';
import { fetchStandIn, standIn } from './standIn.ts';

/** A whole table is there, and what reads it is still on its way. */
const isComing = computed(
  () => expectedHalf.value === null || (usesSheet(job.value) && interpreted.value.test.rating === null),
);
const ofJob = computed(() => (loaded.value ? shownOf(job.value, interpreted.value.test) : null));
const ofStandIn = computed(() =>
  loaded.value && standIn.value && expectedHalf.value
    ? shownOf(standIn.value, expectedHalf.value.toTest(standIn.value).test)
    : null,
);
/** The open job's own table, else the invented one of the demo; `null` until one of them is there. */
export const shown = computed(() => ofJob.value ?? (isComing.value ? null : ofStandIn.value));
/** The open job has no table. */
export const isStandIn = computed(() => ofJob.value === null);

/** Fetches the invented table where the job's own turns out to be none. Returns what ends that. */
export const followLack = (): (() => void) =>
  effect(() => {
    if (loaded.value && !isComing.value && ofJob.value === null) fetchStandIn();
  });

export const wanted = signal<SurfaceQuantity>('total');
/** What was tried instead of the job's own, SI. */
const tried = signal<Partial<Record<Axis, number>>>({});
export const isTried = computed(() => Object.keys(tried.value).length > 0);

/** Whether another value was tried for one of these. */
export const hasTried = (...axes: readonly Axis[]): boolean => axes.some((axis) => Object.hasOwn(tried.value, axis));

export function tryOut(change: Partial<Record<Axis, number>>): void {
  tried.value = { ...tried.value, ...change };
}
export function backToJob(): void {
  tried.value = {};
}

export const own = computed(() => (shown.value ? ownConditions(shown.value) : null));
export const conditions = computed((): Conditions | null => own.value && { ...own.value, ...tried.value });

/** Without the place: a moved point leaves the surface as it is. */
const flow = computed(() => conditions.value?.dryAirFlow);
const dryBulb = computed(() => conditions.value?.enteringDryBulb);
export const air = computed((): Air => airOf(flow.value, dryBulb.value));
export const place = computed((): Place | null => {
  const at = conditions.value;
  return at && { outdoorDryBulb: at.outdoorDryBulb, enteringWetBulb: at.enteringWetBulb };
});

export const table = computed(() => shown.value?.table ?? null);
export const isSurface = computed(() => table.value !== null && hasSurface(table.value));
export const offered = computed(() => (table.value ? quantitiesIn(table.value, air.value) : []));
export const quantity = computed(
  (): SurfaceQuantity => (offered.value.includes(wanted.value) ? wanted.value : 'total'),
);
export const scale = computed(() => scaleOf(quantity.value, system.value));
export const levels = computed(() =>
  table.value && own.value ? levelsFor(table.value, own.value, scale.value) : null,
);

export const reading = computed(() =>
  table.value && place.value ? readTable(table.value, place.value, air.value) : null,
);
/** How far published curves may be out at the place; `null` where a maker's table is read. */
export const estimate = computed(() =>
  table.value?.from === 'generic' && place.value ? estimateAt(table.value, place.value, air.value) : null,
);
/** How sure what was measured is: it hangs on the job alone, and on nothing that is tried. */
const ranges = computed(() => (shown.value && expectedHalf.value?.assess(shown.value.test).ranges) ?? null);
/** What was measured of a quantity, wherever the place is now. */
export const measuredHere = (of: SurfaceQuantity) => shown.value && measuredOf(shown.value, of, ranges.value);
/** What was measured, and what should be made, while the place is the job's own. */
export const measured = computed(() => (isTried.value ? null : measuredHere(quantity.value)));
export const should = computed(() => (shown.value && !isTried.value ? shouldOf(shown.value, quantity.value) : null));
