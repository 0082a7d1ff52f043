/** Where a process lies on paper, and where its dimension lines run. */
import { clipPolygon, onPlot } from '../clip.ts';
import type { Point } from '../shapes.ts';
import type { ChartFrame } from './frame.ts';
import { type ChartProcess, coilOnChart, placeOf } from './process.ts';
import { region } from './region.ts';

/** How far a point's mark and its region reach, px from the point. */
interface Reach {
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export interface ProcessPlaces {
  readonly entering: Point;
  readonly leaving: Point;
  readonly coilEntering: Point;
  readonly coilLeaving: Point;
  readonly apparatus: Point | null;
  /** Outlines of the 95 % regions; empty without uncertainties. */
  readonly regions: readonly (readonly Point[])[];
  readonly room: { readonly entering: Reach; readonly leaving: Reach };
  /** The level of the row of dimensions under the process; `null` where it does not cool enough to have one. */
  readonly row: number | null;
  /** Whether the part that the coil let pass is long enough to be measured in that row. */
  readonly bypassed: boolean;
  /** Where the upright dimension of the water stands; `null` where there is too little of it to draw. */
  readonly column: number | null;
}

/** A dimension line shorter than this is no more than its ends. */
const shortest = 14;

export function processPlaces(frame: ChartFrame, process: ChartProcess): ProcessPlaces {
  const size = frame.letter / 14;
  const coil = coilOnChart(process);
  const [entering, leaving] = [placeOf(frame, process.entering), placeOf(frame, process.leaving)];
  const [coilEntering, coilLeaving] = [placeOf(frame, coil.entering), placeOf(frame, coil.leaving)];
  const apparatus = coil.apparatus && placeOf(frame, coil.apparatus);
  const regions = (['entering', 'leaving'] as const).map((of) => {
    const sure = process.uncertainty?.[of];
    return sure
      ? clipPolygon(
          frame,
          region(process[of], sure).map((air) => placeOf(frame, air)),
        )
      : [];
  });
  const room = {
    entering: reach(entering, regions[0]!, size),
    leaving: reach(leaving, regions[1]!, size),
  };
  const seen = onPlot(frame, entering) && onPlot(frame, leaving);
  const foot = Math.max(entering[1] + room.entering.bottom, leaving[1] + room.leaving.bottom);
  const row = Math.min(foot + 28 * size, frame.plot.bottom - 40 * size);
  const column = entering[0] + room.entering.right + 20 * size;
  const cooled = entering[0] - leaving[0] > 2 * shortest * size;
  const dried = entering[0] > leaving[0] && leaving[1] - entering[1] > shortest * size;
  return {
    entering,
    leaving,
    coilEntering,
    coilLeaving,
    apparatus,
    regions,
    room,
    row: seen && cooled && row > Math.max(entering[1], leaving[1]) + shortest * size ? row : null,
    bypassed: apparatus !== null && onPlot(frame, apparatus) && coilLeaving[0] - apparatus[0] > shortest * size,
    column: seen && dried && column < frame.plot.right - 8 * size ? column : null,
  };
}

function reach([x, y]: Point, outline: readonly Point[], size: number): Reach {
  const mark = 10 * size;
  return {
    top: Math.max(mark, ...outline.map(([, other]) => y - other)),
    right: Math.max(mark, ...outline.map(([other]) => other - x)),
    bottom: Math.max(mark, ...outline.map(([, other]) => other - y)),
  };
}
