/** What is drawn of a job, as pure functions of it: its table, where it stands on it, the bands, and what it is held against. */
import { standardPressureAtSeaLevel } from '~/calc/constants.ts';
import { type ExpectationConditions, tableRange } from '~/calc/expectationChain.ts';
import { expectedHere, ratingHere, tableOfRating } from '~/calc/expectedHere.ts';
import { type Measured as Measurement, measure } from '~/calc/measured.ts';
import { attempt, orNull } from '~/calc/outcome.ts';
import { corrected } from '~/calc/sideBySide.ts';
import type { Expectation, Installation, Ranges, RatingRow, RatingTable, Test } from '~/calc/types.ts';
import { type Air, fieldOf, type Place, type SurfaceQuantity } from '~/charts/surface/reading.ts';
import { type Levels, levelsOf, type SurfaceScale } from '~/charts/surface/scale.ts';
import type { Measured } from '~/charts/surface/sliceFrame.ts';
import { quantityOf } from '~/job/quantities.ts';
import { sheetRowsOf } from '~/job/ratingSheet.ts';
import { typedRows } from '~/job/ratingTyped.ts';
import type { Job } from '~/job/types.ts';
import { usesSheet } from '~/job/usesSheet.ts';

export type Axis = 'outdoorDryBulb' | 'enteringWetBulb' | 'dryAirFlow' | 'enteringDryBulb';
export type Conditions = Place & Air;

export interface Shown {
  readonly job: Job;
  readonly test: Test;
  readonly table: RatingTable;
  /** Figures in the table, totals and others. */
  readonly figures: number;
  readonly measured: Measurement;
  readonly expected: Expectation | null;
  /** Where and how the job stands on the table; `null` while readings are missing. */
  readonly here: { readonly conditions: ExpectationConditions; readonly installation: Installation } | null;
}

/** A job, and the test that it describes, with its table; `null` where it has none that can be put together. */
export function shownOf(job: Job, test: Test): Shown | null {
  const read = corrected(test);
  const measured = measure(read);
  const rating = ratingHere(read, measured.entering, measured.flow);
  const here = orNull(rating);
  const rows = usesSheet(job) ? sheetRowsOf(job) : typedRows(job);
  const table = wholeTable(rows, test.rating, here?.table ?? null);
  if (!table) return null;
  const columns = [table.total, table.sensible ?? [], table.power ?? []];
  const figures = columns.flat().filter((figure) => figure !== null).length;
  return { job, test, table, figures, measured, expected: orNull(expectedHere(rating)), here };
}

/**
 * Every figure that is known, not only those around the readings; what cannot be put together is left to the readings. `around`
 * is the table that they are read in, `null` while some are missing.
 */
function wholeTable(
  rows: readonly RatingRow[],
  rating: Test['rating'],
  around: RatingTable | null,
): RatingTable | null {
  if (!rating || (around && (rating.from === 'generic' || rows.length <= rating.rows.length))) return around;
  if (rating.from === 'generic' && (rating.certified === null || rating.generic === null)) return null;
  const basis = around?.basis ?? rating.basis;
  const whole = attempt(() =>
    tableOfRating({ ...rating, rows, basis }, around?.blowerPower ?? rating.blowerPower ?? 0),
  );
  return whole.ok ? whole.value : around;
}

/** The job's own place and air; without readings the middle of the table, and the air that it is for. */
export function ownConditions({ table, here }: Pick<Shown, 'table' | 'here'>): Conditions {
  const { axes } = table;
  const flow = here?.conditions.dryAirFlow;
  const pressure = here?.installation.pressure ?? standardPressureAtSeaLevel;
  // A table is read at the measured volume as if at sea level.
  const dryAirFlow = flow === undefined ? axes.dryAirFlow[0] : (flow * standardPressureAtSeaLevel) / pressure;
  const enteringDryBulb = here?.conditions.enteringDryBulb ?? axes.enteringDryBulb[0];
  return {
    outdoorDryBulb: here?.conditions.outdoorDryBulb ?? middle(axes.outdoorDryBulb),
    enteringWetBulb: here?.conditions.enteringWetBulb ?? middle(axes.enteringWetBulb),
    ...airOf(dryAirFlow, enteringDryBulb),
  };
}

const middle = (rows: readonly number[]) => ((rows[0] ?? 0) + (rows.at(-1) ?? 0)) / 2;

export const airOf = (dryAirFlow?: number | null, enteringDryBulb?: number | null): Air => ({
  ...(typeof dryAirFlow === 'number' ? { dryAirFlow } : {}),
  ...(typeof enteringDryBulb === 'number' ? { enteringDryBulb } : {}),
});

/** What a slider may reach, SI; `null` where the table does not go by it. */
export function rangeOf(table: RatingTable, axis: Axis): readonly [number, number] | null {
  if (axis === 'enteringDryBulb') return table.sensible ? quantityOf('rating.enteringDryBulb').usual : null;
  const covered = tableRange(table, axis);
  const [stated] = table.axes[axis];
  return covered ?? (stated === undefined ? null : [stated, stated]);
}

/** Bands for all that the sliders of the air may reach, so that a shade keeps its meaning while they move. */
export function levelsFor(table: RatingTable, own: Conditions, scale: SurfaceScale): Levels | null {
  const ends = (axis: 'dryAirFlow' | 'enteringDryBulb') =>
    own[axis] === undefined ? [undefined] : (rangeOf(table, axis) ?? [own[axis]]);
  const figures = ends('dryAirFlow').flatMap((dryAirFlow) =>
    ends('enteringDryBulb').flatMap((enteringDryBulb) => {
      const field = fieldOf(table, scale.quantity, airOf(dryAirFlow, enteringDryBulb));
      return table.axes.outdoorDryBulb.flatMap((outdoorDryBulb) =>
        table.axes.enteringWetBulb.map((enteringWetBulb) => field({ outdoorDryBulb, enteringWetBulb })),
      );
    }),
  );
  const known = figures.filter((figure) => !Number.isNaN(figure));
  return known.length === 0 ? null : levelsOf(scale, [Math.min(...known), Math.max(...known)]);
}

/** What was measured of a quantity, net of the blower, with its range where that is known; `null` where it was not measured. */
export function measuredOf({ measured }: Shown, quantity: SurfaceQuantity, ranges: Ranges | null): Measured | null {
  const load = orNull(measured.load);
  if (!load) return null;
  if (quantity === 'ratio') {
    const [value, range] = [load.sensibleHeatRatio, rangeIn(ranges, 'sensibleHeatRatio', 0)];
    return { value: Math.min(1, value), range: range && [range[0], Math.min(1, range[1])] };
  }
  const heat = load.basis === 'net' ? 0 : orNull(measured.blower);
  if (heat === null || (quantity !== 'total' && quantity !== 'sensible')) return null;
  return { value: load[quantity] - heat, range: rangeIn(ranges, quantity, heat) };
}

function rangeIn(ranges: Ranges | null, of: 'total' | 'sensible' | 'sensibleHeatRatio', heat: number) {
  const interval = ranges?.[of]?.interval;
  return interval ? ([interval.low - heat, interval.high - heat] as const) : null;
}

/** What this system should make of a quantity, after every step. */
export function shouldOf({ expected }: Shown, quantity: SurfaceQuantity): number | null {
  if (!expected) return null;
  const { total, sensible } = expected;
  if (quantity === 'total') return total;
  if (quantity === 'sensible') return sensible;
  return quantity === 'ratio' && sensible !== null ? Math.min(1, sensible / total) : null;
}
