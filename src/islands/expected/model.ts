/** What is looked at: which table, which quantity, which place, which air. What is tried here never changes the job. */
import { computed, signal } from '@preact/signals';
import { hasSurface } from '~/charts/surface/frame.ts';
import { type Air, type Place, quantitiesIn, readTable, type SurfaceQuantity } from '~/charts/surface/reading.ts';
import { scaleOf } from '~/charts/surface/scale.ts';
import { job, loaded, system } from '../jobStore.ts';
import { type Axis, airOf, type Conditions, levelsFor, measuredOf, ownConditions, shouldOf, shownOf } from './shown.ts';
import { standIn } from './standIn.ts';

const ofJob = computed(() => (loaded.value ? shownOf(job.value) : null));
/** The open job's own table, else the invented one of the demo; `null` until one of them is there. */
export const shown = computed(() => ofJob.value ?? (loaded.value && standIn.value ? shownOf(standIn.value) : null));
/** The open job has no table. */
export const isStandIn = computed(() => ofJob.value === null);

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
/** What was measured, and what should be made, while the place is the job's own. */
export const measured = computed(() =>
  shown.value && !isTried.value ? measuredOf(shown.value, quantity.value) : null,
);
export const should = computed(() => (shown.value && !isTried.value ? shouldOf(shown.value, quantity.value) : null));
