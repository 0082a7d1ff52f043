/** The drawings of the demo's table as the page shows them first; for who builds the page. */
import { assess } from '~/calc/assess.ts';
import { bandsOf, sampled } from '~/charts/surface/contours.ts';
import { surfaceFrame } from '~/charts/surface/frame.ts';
import { ground, groundBoxes } from '~/charts/surface/ground.ts';
import { pointDrawing } from '~/charts/surface/point.ts';
import { fieldOf } from '~/charts/surface/reading.ts';
import { scaleOf } from '~/charts/surface/scale.ts';
import { sliceDrawing } from '~/charts/surface/slice.ts';
import { toTest } from '~/job/toTest.ts';
import type { Job, System } from '~/job/types.ts';
import { airOf, levelsFor, measuredOf, ownConditions, shownOf } from './shown.ts';

/** The surface of the total of a job with a table, at one width. */
export function stillSurface(job: Job, system: System, width: number) {
  const { table, own, scale, levels } = still(job, system);
  const frame = surfaceFrame({ table, system, width, around: [own] });
  const air = airOf(own.dryAirFlow, own.enteringDryBulb);
  const bands = bandsOf(frame, sampled(frame, fieldOf(table, 'total', air), 'fine'), levels);
  const taken = groundBoxes(ground(frame, bands, scale), frame.letter);
  const point = pointDrawing(frame, scale, { table, air, place: own, job: null }, taken);
  return { frame, bands, levels, scale, point };
}

/** Its two lines. */
export function stillSlices(job: Job, system: System, width: number) {
  const { of, table, own, scale, levels } = still(job, system);
  const air = airOf(own.dryAirFlow, own.enteringDryBulb);
  const measured = measuredOf(of, 'total', assess(of.test).ranges);
  return (['outdoorDryBulb', 'enteringWetBulb'] as const).map((along) =>
    sliceDrawing({ table, along, air, place: own, scale, levels, system, width, measured }),
  );
}

function still(job: Job, system: System) {
  const of = shownOf(job, toTest(job).test);
  if (!of) throw new Error('the demo has no table');
  const own = ownConditions(of);
  const scale = scaleOf('total', system);
  const levels = levelsFor(of.table, own, scale);
  if (!levels) throw new Error('the demo’s table has no figures');
  return { of, table: of.table, own, scale, levels };
}
