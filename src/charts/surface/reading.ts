/** What a rating table says at a place: its own figures, brought to an airflow and an entering dry bulb, with its own blower. */
import { bandAt } from '../../calc/bandAt.ts';
import { blowerInside } from '../../calc/blowerHeat.ts';
import { expectedCapacity, expectedTotal } from '../../calc/expectation.ts';
import { nearestDryBulb } from '../../calc/nearestDryBulb.ts';
import { locate, rated } from '../../calc/rated.ts';
import type { Rated, RatingConditions, RatingTable } from '../../calc/types.ts';

export const surfaceQuantities = ['total', 'sensible', 'ratio', 'power', 'efficiency'] as const;
/** Capacities and power in W; `ratio` is sensible over total, `efficiency` total over power. */
export type SurfaceQuantity = (typeof surfaceQuantities)[number];

/** A place on the surface, °C. */
export interface Place {
  readonly outdoorDryBulb: number;
  readonly enteringWetBulb: number;
}

/** What holds for a whole surface: kg/s of dry air (standard air of the blower’s volume) and °C; left out where not known. */
export interface Air {
  readonly dryAirFlow?: number;
  readonly enteringDryBulb?: number;
}

/** A place of a table that is read. */
export interface Read {
  readonly table: RatingTable;
  readonly air: Air;
  readonly place: Place;
  /** The job’s own place, where another one is read; `null` where it is this one. */
  readonly job: Place | null;
}

export type TableReading = Readonly<Record<SurfaceQuantity, number | null>> & Pick<Rated, 'cell' | 'outside'>;

/** Every figure that a table gives at a place, also beyond its ends; `null` where it has a hole or cannot be read. */
export function readTable(whole: RatingTable, place: Place, air: Air): TableReading | null {
  const table = nearestDryBulb(whole, air.enteringDryBulb);
  const conditions = { ...place, ...air };
  try {
    const { power, cell } = rated(table, conditions, { beyond: 'extend' });
    const { total, sensible, outside } = expectedCapacity(table, { ...conditions, beyond: 'extend' }, ownBlower(table));
    const ratio = sensible === null ? null : Math.min(1, sensible / total);
    return { total, sensible, ratio, power, efficiency: power === null ? null : total / power, cell, outside };
  } catch {
    return null;
  }
}

/** One figure of a table as a function of the place, for a surface; `NaN` where there is none. */
export function fieldOf(whole: RatingTable, quantity: SurfaceQuantity, air: Air): (place: Place) => number {
  const table = nearestDryBulb(whole, air.enteringDryBulb);
  const own = ownBlower(table);
  if (quantity === 'total') {
    return (place) => orNaN(() => expectedTotal(table, { ...place, ...air, beyond: 'extend' }, own));
  }
  if (quantity === 'power') {
    return (place) => orNaN(() => rated(table, conditionsAt(place, air), { beyond: 'extend' }).power ?? Number.NaN);
  }
  if (quantity === 'efficiency') return (place) => readTable(table, place, air)?.efficiency ?? Number.NaN;
  return (place) =>
    orNaN(() => {
      const { total, sensible } = expectedCapacity(table, { ...place, ...air, beyond: 'extend' }, own);
      if (sensible === null) return Number.NaN;
      return quantity === 'sensible' ? sensible : Math.min(1, sensible / total);
    });
}

/** How far published curves may be out at a place: a relative half-width of the total, 0 for a maker's table. */
export function estimateAt(whole: RatingTable, place: Place, air: Air): number {
  if (!whole.band) return 0;
  const table = nearestDryBulb(whole, air.enteringDryBulb);
  const band = orNaN(() => bandAt(table, locate(table, conditionsAt(place, air))));
  return Number.isNaN(band) ? 0 : band;
}

/** The quantities that a table has figures for somewhere, at some air. */
export function quantitiesIn(table: RatingTable, air: Air): readonly SurfaceQuantity[] {
  const { outdoorDryBulb, enteringWetBulb } = table.axes;
  const readings = enteringWetBulb.flatMap((wet) =>
    outdoorDryBulb.map((dry) => readTable(table, { outdoorDryBulb: dry, enteringWetBulb: wet }, air)),
  );
  return surfaceQuantities.filter((quantity) => readings.some((one) => one !== null && one[quantity] !== null));
}

const ownBlower = (table: RatingTable) => ({ blowerPower: blowerInside(table) });

const conditionsAt = (place: Place, air: Air): RatingConditions => ({ ...place, ...air });

function orNaN(work: () => number): number {
  try {
    return work();
  } catch {
    return Number.NaN;
  }
}
