/** What the tests of the surface share: invented tables, the surfaces that are looked at, and a reading of the paper. */
import { type RatingTable, ratingTable } from '../../src/calc/index.ts';
import { fromFahrenheit } from '../../src/calc/units.ts';
import type { Point } from '../../src/charts/shapes.ts';
import { bandsOf, sampled } from '../../src/charts/surface/contours.ts';
import { type SurfaceFrame, surfaceFrame } from '../../src/charts/surface/frame.ts';
import { type Air, fieldOf, type Place, type SurfaceQuantity } from '../../src/charts/surface/reading.ts';
import { levelsOf, scaleOf } from '../../src/charts/surface/scale.ts';
import { demoJob } from '../../src/job/demo.ts';
import { typedRows } from '../../src/job/ratingTyped.ts';
import type { Job, System } from '../../src/job/types.ts';

export const widths = [320, 390, 820, 1440] as const;
export const systems = ['ip', 'si'] as const;

/** The demo with both of its airflow blocks. */
export const bothBlocks: Job = { ...demoJob, chosen: { ...demoJob.chosen, 'rating.blocks': 'two' } };
/** The invented table of the demo, whole. */
export const demoTable = ratingTable(typedRows(bothBlocks), { basis: 'net', blowerPower: 300 });

/** Two columns, two rows, one airflow: the figures around one test. */
export const smallTable = ratingTable(
  [85, 95].flatMap((outdoors) =>
    [62, 67].map((wetBulb) => ({
      outdoorDryBulb: fromFahrenheit(outdoors),
      enteringWetBulb: fromFahrenheit(wetBulb),
      dryAirFlow: 0.6,
      total: 9000 + 120 * (wetBulb - 62) - 55 * (outdoors - 85),
    })),
  ),
  { basis: 'net', blowerPower: 0 },
);

export const at = (outdoors: number, wetBulb: number): Place => ({
  outdoorDryBulb: fromFahrenheit(outdoors),
  enteringWetBulb: fromFahrenheit(wetBulb),
});

/** The airflow of the demo’s first block, and the dry bulb that its sensible figures are for. */
export const listed: Air = { dryAirFlow: demoTable.axes.dryAirFlow.at(-1)!, enteringDryBulb: fromFahrenheit(80) };
/** Between its blocks, with drier and cooler air. */
export const between: Air = { dryAirFlow: 0.62, enteringDryBulb: fromFahrenheit(75) };

export interface Asked {
  readonly table?: RatingTable;
  readonly quantity?: SurfaceQuantity;
  readonly system?: System;
  readonly width?: number;
  readonly air?: Air;
  readonly place?: Place;
}

/** A whole surface. */
export function surface(asked: Asked = {}) {
  const {
    table = demoTable,
    quantity = 'total',
    system = 'ip',
    width = 820,
    air = listed,
    place = at(91, 62.6),
  } = asked;
  const frame = surfaceFrame({ table, system, width: Math.min(width, 840), around: [place] });
  const scale = scaleOf(quantity, system);
  const field = fieldOf(table, quantity, air);
  const { outdoorDryBulb, enteringWetBulb } = table.axes;
  const figures = outdoorDryBulb
    .flatMap((dry) => enteringWetBulb.map((wet) => field({ outdoorDryBulb: dry, enteringWetBulb: wet })))
    .filter((figure) => !Number.isNaN(figure));
  const levels = levelsOf(scale, [Math.min(...figures), Math.max(...figures)]);
  return {
    table,
    air,
    place,
    frame,
    scale,
    field,
    levels,
    bands: bandsOf(frame, sampled(frame, field, 'fine'), levels),
  };
}

/** The place under a spot, from the plain data of a frame. */
export function placeUnder({ plot, outdoor, wetBulb }: SurfaceFrame, [x, y]: Point): Place {
  return {
    outdoorDryBulb: outdoor[0] + ((x - plot.left) * (outdoor[1] - outdoor[0])) / (plot.right - plot.left),
    enteringWetBulb: wetBulb[0] + ((plot.bottom - y) * (wetBulb[1] - wetBulb[0])) / (plot.bottom - plot.top),
  };
}
