/** The steps as they stand, and as they would stand with something else in them. What is tried never changes the job. */
import { batch, computed, signal } from '@preact/signals';
import { standardPressure } from '~/calc/atmosphere.ts';
import { blowerInside } from '~/calc/blowerHeat.ts';
import { standardPressureAtSeaLevel } from '~/calc/constants.ts';
import { expectedCapacity } from '~/calc/expectation.ts';
import type { ExpectationConditions } from '~/calc/expectationChain.ts';
import { leaveOut } from '~/calc/leaveOut.ts';
import { nearestDryBulb } from '~/calc/nearestDryBulb.ts';
import { attempt, orNull } from '~/calc/outcome.ts';
import type { DerateCause, Expectation, Installation, RatingTable, Step, Trace } from '~/calc/types.ts';
import { backToJob, conditions, isTried, measuredHere, own, shown } from '../model.ts';
import type { Conditions, Shown } from '../shown.ts';

/** What a step is worked out with, SI; `null` where nothing is given. */
export interface Inputs {
  readonly certified: number | null;
  readonly indoorMatch: number | null;
  readonly blowerInside: number;
  /** A factor on the gross capacity. */
  readonly lineSet: number | null;
  readonly pressure: number;
  readonly blowerHere: number;
}
export type Input = keyof Inputs;

const tried = signal<Partial<Inputs>>({});
export const out = signal<ReadonlySet<DerateCause>>(new Set());
export const isMoved = computed(() => isTried.value || out.value.size > 0 || Object.keys(tried.value).length > 0);
export const hasTried = (input: Input): boolean => Object.hasOwn(tried.value, input);

export function tryStep(change: Partial<Inputs>): void {
  tried.value = { ...tried.value, ...change };
}

export function putIn(cause: DerateCause, counts: boolean): void {
  const next = new Set(out.value);
  if (counts) next.delete(cause);
  else next.add(cause);
  out.value = next;
}

export function putBack(): void {
  batch(() => {
    tried.value = {};
    out.value = new Set();
    backToJob();
  });
}

function inputsOf({ table, here }: Shown): Inputs {
  return {
    certified: here?.conditions.certified ?? null,
    indoorMatch: table.multipliers.indoorMatch,
    blowerInside: blowerInside(table),
    lineSet: table.multipliers.lineLength ?? here?.installation.lineSet?.factor ?? null,
    pressure: here?.installation.pressure ?? standardPressureAtSeaLevel,
    blowerHere: here?.installation.blowerPower ?? blowerInside(table),
  };
}

const ownInputs = computed(() => (shown.value ? inputsOf(shown.value) : null));
export const inputs = computed((): Inputs | null => ownInputs.value && { ...ownInputs.value, ...tried.value });

export const nominal = computed(() => shown.value?.here?.conditions.nominal ?? null);

/** The chain with everything that is tried in it; nothing is left out yet. */
function chain(of: Shown, at: Conditions, put: Inputs, t?: Trace): Expectation | null {
  const { dryAirFlow, ...place } = at;
  // The airflow that is tried is the volume as if at sea level; what it holds here depends on the pressure.
  const flow = dryAirFlow === undefined ? {} : { dryAirFlow: (dryAirFlow * put.pressure) / standardPressureAtSeaLevel };
  const given: ExpectationConditions = {
    ...place,
    ...flow,
    beyond: 'extend',
    ...(nominal.value === null ? {} : { nominal: nominal.value }),
    ...(put.certified === null ? {} : { certified: put.certified }),
  };
  return orNull(attempt(() => expectedCapacity(tableWith(of.table, at, put), given, installationOf(of, put), t)));
}

function tableWith(whole: RatingTable, at: Conditions, put: Inputs): RatingTable {
  const table = nearestDryBulb(whole, at.enteringDryBulb);
  const multipliers = { ...table.multipliers, indoorMatch: put.indoorMatch };
  const own = table.multipliers.lineLength;
  return {
    ...table,
    blowerPower: table.basis === 'net' ? put.blowerInside : table.blowerPower,
    multipliers: { ...multipliers, lineLength: own === null ? null : put.lineSet },
  };
}

function installationOf({ table, here }: Shown, put: Inputs): Installation {
  const kept = here?.installation.lineSet ?? null;
  const ours = table.multipliers.lineLength === null && put.lineSet !== null;
  const lineSet =
    kept && put.lineSet === kept.factor
      ? kept
      : ours
        ? {
            factor: put.lineSet as number,
            low: put.lineSet as number,
            high: put.lineSet as number,
            source: 'commonPractice' as const,
          }
        : null;
  return { blowerPower: put.blowerHere, pressure: put.pressure, lineSet };
}

const untouched = computed(() =>
  shown.value && own.value && ownInputs.value ? chain(shown.value, own.value, ownInputs.value) : null,
);
const moved = computed(() =>
  shown.value && conditions.value && inputs.value ? chain(shown.value, conditions.value, inputs.value) : null,
);

export const derates = computed(() => (moved.value ? leaveOut(moved.value.derates, out.value) : []));
export const total = computed(() => derates.value.at(-1)?.after ?? null);
export const ownTotal = computed(() => untouched.value?.total ?? null);
export const isOutside = computed(() => (moved.value?.outside.length ?? 0) > 0);
export const measured = computed(() => measuredHere('total'));

/** Which steps of working belong to which step of the ledger. */
const ids: Readonly<Record<DerateCause, RegExp>> = {
  certified: /^$/,
  temperatures: /^rated\./,
  indoorMatch: /^expectation\.indoorMatch$/,
  airflow: /^expectation\.(airflow|flowRatio|seaLevelFlow)$/,
  blowerInside: /^expectation\.gross$/,
  lineSet: /^expectation\.lineSet$/,
  altitude: /^expectation\.altitude$/,
  blowerHere: /^expectation\.net$/,
};

/** The working of one step. */
export function workingOf(cause: DerateCause): readonly Step[] {
  const steps: Step[] = [];
  if (shown.value && conditions.value && inputs.value)
    chain(shown.value, conditions.value, inputs.value, (step) => steps.push(step));
  return steps.filter(({ id }) => ids[cause].test(id));
}

/** The height of a pressure above the sea, m: the inverse of `standardPressure`, by halving. */
export function heightOf(pressure: number): number {
  let [low, high] = [-500, 5000];
  for (let i = 0; i < 40; i++) {
    const middle = (low + high) / 2;
    if (standardPressure(middle) > pressure) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
