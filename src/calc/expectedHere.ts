import { type Blowers, blowersOf } from './blowers.ts';
import { expectedCapacity } from './expectation.ts';
import type { ExpectationConditions } from './expectationChain.ts';
import { genericRating } from './genericRating.ts';
import { lineSet } from './lineSet.ts';
import type { LineSet } from './lineSetTypes.ts';
import type { MeasuredFlow } from './measuredFlow.ts';
import { attempt, lacking, orNull, waitingFor } from './outcome.ts';
import { ratingTable } from './ratingTable.ts';
import { given } from './readings.ts';
import type { Basis, Expectation, Installation, MoistAir, Outcome, RatingTable, Test, Trace } from './types.ts';
import { fahrenheitDegree } from './units.ts';

/** A table as a test gives it, and where it is read. */
export interface RatingHere {
  readonly table: RatingTable;
  readonly conditions: ExpectationConditions;
  readonly installation: Installation & { readonly pressure: number };
  readonly blowers: Blowers;
  /** What joins the two units; `null` where nothing is known of it. */
  readonly lines: LineSet | null;
}

type Rating = NonNullable<Test['rating']>;

/** How near a single printed row must be to stand for the reading, K: 0.5 °F outdoors, 0.2 °F wet bulb. Common practice, no source. */
const nearRow = { outdoorDryBulb: 0.5 * fahrenheitDegree, enteringWetBulb: 0.2 * fahrenheitDegree } as const;
const rounding = 1e-9;

/**
 * The rating of a test, ready to be read. A table whose basis nobody knows is read in the middle of net and gross: as a net
 * table with half of its blower's heat inside. Waits for the airflow only where the table or an unknown blower needs it.
 */
export function ratingHere(
  test: Test,
  entering: Outcome<MoistAir>,
  flow: Outcome<MeasuredFlow>,
  t?: Trace,
): Outcome<RatingHere> {
  const { rating, outdoorDryBulb } = test;
  const lack = lacking(
    entering,
    given(outdoorDryBulb) ? { ok: true, value: outdoorDryBulb } : waitingFor('outdoorDryBulb'),
    rated(rating),
    needsFlow(test) ? flow : { ok: true, value: null },
  );
  if (lack || !entering.ok || !given(outdoorDryBulb) || !rating) return lack ?? waitingFor('rating');
  const conditions: ExpectationConditions = {
    outdoorDryBulb,
    enteringWetBulb: entering.value.wetBulb,
    enteringDryBulb: entering.value.dryBulb,
    beyond: rating.beyond === 'extend' ? 'extend' : 'refuse',
    dryAirFlow: orNull(flow)?.dryAirFlow,
    nominal: test.nominalCapacity ?? undefined,
    certified: rating.certified ?? undefined,
  };
  const blowers = attempt(() => blowersOf(test, rating, conditions.dryAirFlow, t), fieldOf);
  if (!blowers.ok) return blowers;
  const { inside } = blowers.value;
  const table = attempt(
    () => tableOfRating(rating, inside),
    (quantity) => `rating.${quantity}`,
  );
  const lines = linesHere(test, t);
  if (!lines.ok) return lines;
  const installation = {
    blowerPower: blowers.value.here,
    pressure: entering.value.pressure,
    lineSet: lines.value?.factor ?? null,
  };
  return table.ok
    ? { ok: true, value: { table: table.value, conditions, installation, blowers: blowers.value, lines: lines.value } }
    : table;
}

/** Whether there is enough to make a table of. */
function rated(rating: Test['rating']): Outcome<unknown> {
  if (!rating) return waitingFor('rating');
  if (rating.from === 'generic') {
    const lacks = [
      ...(given(rating.certified) ? [] : ['rating.certified']),
      ...(given(rating.generic) ? [] : ['rating.generic']),
    ];
    return lacks.length === 0 ? { ok: true, value: rating } : waitingFor(...lacks);
  }
  return rating.rows.length > 0 ? { ok: true, value: rating } : waitingFor('rating');
}

/**
 * The maker's table, or published curves through the certified capacity, which is net unless somebody says gross; `inside` is the
 * blower power inside the rating, W. Throws what `ratingTable` and `genericRating` do.
 */
export function tableOfRating(
  { from, rows, certified, generic, basis, multipliers }: Rating,
  inside: number,
): RatingTable {
  const printed: Basis = basis === 'gross' ? basis : 'net';
  if (from === 'generic' && certified !== null && generic !== null) {
    const { unit, stage, dryAirFlow } = generic;
    const dryAir = { dryAirFlow: dryAirFlow ?? undefined };
    return genericRating({ total: certified, basis: printed, blowerPower: inside, unit, stage, ...dryAir });
  }
  const blowerPower = printed === basis ? inside : inside / 2;
  return ratingTable(rows, { basis: printed, blowerPower, multipliers });
}

function linesHere({ lineSet: input }: Test, t?: Trace): Outcome<LineSet | null> {
  return attempt(
    () => (given(input) ? lineSet(input, t) : null),
    (quantity) => `lineSet.${quantity}`,
  );
}

/** What the system should have here and now. A figure that is not typed yet is waited for, not a fault. */
export function expectedHere(here: Outcome<RatingHere>, t?: Trace): Outcome<Expectation> {
  if (!here.ok) return here;
  const { table, conditions, installation } = here.value;
  if (tooFewRows(table, conditions)) return waitingFor('rating');
  const expected = attempt(() => expectedCapacity(table, conditions, installation, t), fieldOf);
  return !expected.ok && expected.problem?.code === 'hole' ? waitingFor('rating') : expected;
}

/** A table of one row on an axis is no use away from that row. */
function tooFewRows({ axes }: RatingTable, conditions: ExpectationConditions): boolean {
  return (['outdoorDryBulb', 'enteringWetBulb'] as const).some(
    (axis) =>
      axes[axis].length === 1 && Math.abs(conditions[axis] - (axes[axis][0] as number)) > nearRow[axis] + rounding,
  );
}

/** Published curves need the airflow, so does a table with airflows, and so does a blower that is taken by it and does not cancel. */
function needsFlow({ rating, blower }: Test): boolean {
  if (!rating) return false;
  if (rating.from === 'generic' || given(rating.rows[0]?.dryAirFlow)) return true;
  const here = given(blower.power);
  const inside = given(rating.blowerPower);
  if (rating.basis === 'gross') return !here;
  const cancel = rating.basis === 'net' && !here && !inside && !given(rating.blowerKind) && !given(blower.kind);
  return !cancel && !(here && inside);
}

/** The field of the test that a quantity of the calculation was entered in; an axis keeps its name. */
function fieldOf(quantity: string): string {
  if (quantity === 'nominal') return 'nominalCapacity';
  return quantity === 'blowerPower' ? 'blower.power' : quantity;
}
