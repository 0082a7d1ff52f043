/** A process on the chart: the air's way, the coil's own way on to saturation, and how far it was, as dimensions. */
import { type Box, boxAround, boxOf } from '../box.ts';
import { clipLine, onPlot } from '../clip.ts';
import { type Drawing, type Pen, type Point, pathOf, type Stroke, tenth } from '../shapes.ts';
import type { ChartFrame } from './frame.ts';
import { arrowStroke, dimension, markStroke } from './marks.ts';
import type { ChartProcess } from './process.ts';
import { linesOfProcess, processLabels } from './processLabels.ts';
import { type ProcessPlaces, processPlaces } from './processPlaces.ts';
import type { ProcessWords } from './processWords.ts';

/** The whole process with its words, none of which stand where something is `taken`. */
export function processDrawing(
  frame: ChartFrame,
  process: ChartProcess,
  words: ProcessWords,
  taken: readonly Box[] = [],
): Drawing {
  const places = processPlaces(frame, process);
  return {
    strokes: [...places.regions.flatMap(regionStrokes), ...legs(frame, places), ...way(frame, places)],
    words: processLabels(frame, places, words, taken),
  };
}

/** The room that a process takes, for `chartLines` to write elsewhere. */
export function processBoxes(
  frame: ChartFrame,
  process: ChartProcess,
  words: ProcessWords,
  taken: readonly Box[] = [],
): Box[] {
  const places = processPlaces(frame, process);
  return [
    ...linesOfProcess(places),
    ...places.regions.filter((outline) => outline.length > 0).map(boxAround),
    ...processLabels(frame, places, words, taken).map((one) => boxOf(one, frame.letter)),
  ];
}

/** A hatched area with its outline drawn last. */
function regionStrokes(outline: readonly Point[]): Stroke[] {
  if (outline.length < 3) return [];
  const d = pathOf(outline, true);
  return [
    { pen: 'region', d },
    { pen: 'outline', d },
  ];
}

/** From return to supply; the blower's heat is a step of its own, before or after the coil's. */
function way(frame: ChartFrame, places: ProcessPlaces): Stroke[] {
  const { entering, leaving, coilEntering, coilLeaving, apparatus } = places;
  const size = frame.letter / 14;
  const marks = [
    ...(apparatus ? ([['coil', apparatus]] as const) : []),
    ['return', entering] as const,
    ['supply', leaving] as const,
  ];
  return [
    ...(apparatus ? segment(frame, 'line-beyond', coilLeaving, apparatus) : []),
    ...segment(frame, 'line-step', entering, coilEntering),
    ...segment(frame, 'line-step', coilLeaving, leaving),
    ...segment(frame, 'line-measured', coilEntering, coilLeaving),
    ...arrow(frame, coilEntering, coilLeaving),
    ...marks.filter(([, place]) => onPlot(frame, place)).map(([kind, place]) => markStroke(kind, place, size)),
  ];
}

function arrow(frame: ChartFrame, from: Point, to: Point): Stroke[] {
  const line = clipLine(frame, from, to);
  return line ? arrowStroke(line[0], line[1], 0.6, frame.letter / 14) : [];
}

function segment(frame: ChartFrame, pen: Pen, from: Point, to: Point): Stroke[] {
  const line = from[0] === to[0] && from[1] === to[1] ? null : clipLine(frame, from, to);
  return line ? [{ pen, d: pathOf(line) }] : [];
}

/**
 * One row of dimensions under the process, what the coil let pass (the dashed part of its line) and what was cooled, and the
 * water taken out upright beside it. Thin lines carry the points to their dimensions.
 */
function legs(frame: ChartFrame, places: ProcessPlaces): Stroke[] {
  const { entering, leaving, coilLeaving, apparatus, row, column, bypassed } = places;
  const size = frame.letter / 14;
  const strokes: Stroke[] = [];
  if (row !== null) {
    const down = ([x, y]: Point) => `M${tenth(x)} ${tenth(y + 10 * size)}V${tenth(row + 6 * size)}`;
    const stepped = coilLeaving[0] !== leaving[0];
    const measured = apparatus && bypassed ? [apparatus, ...(stepped ? [coilLeaving] : [])] : [];
    strokes.push({ pen: 'line-scale', d: [leaving, entering, ...measured].map(down).join('') });
    strokes.push(...dimension([leaving[0], row], [entering[0], row], size));
    if (apparatus && bypassed) strokes.push(...dimension([apparatus[0], row], [coilLeaving[0], row], size));
  }
  if (column !== null) {
    const out = ([x, y]: Point) => `M${tenth(x + 10 * size)} ${tenth(y)}H${tenth(column + 6 * size)}`;
    strokes.push({ pen: 'line-scale', d: out(entering) + out(leaving) });
    strokes.push(...dimension([column, entering[1]], [column, leaving[1]], size));
  }
  return strokes;
}
