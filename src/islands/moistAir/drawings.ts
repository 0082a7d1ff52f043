/** What stands on the chart besides its lines: the points with their names, and the processes between them. */

import type { MoistAir } from '~/calc/types.ts';
import { clipLine, onPlot } from '~/charts/moistAir/clip.ts';
import { type ChartFrame, xOf, yOf } from '~/charts/moistAir/frame.ts';
import { arrowStroke, markStroke } from '~/charts/moistAir/marks.ts';
import { pointNames } from '~/charts/moistAir/pointNames.ts';
import { placeOf } from '~/charts/moistAir/process.ts';
import { processDrawing } from '~/charts/moistAir/processDrawing.ts';
import { processWords } from '~/charts/moistAir/processWords.ts';
import { type Drawing, type Pen, pathOf, type Stroke, tenth, type Word } from '~/charts/moistAir/shapes.ts';
import type { Process } from '~/job/processes.ts';
import { ownProcess } from './own.ts';
import { type ChartPoint, points, processes } from './points.ts';

/** The job's own process, with its figures; nothing while one of its ends is missing. */
export function ownDrawing(frame: ChartFrame): Drawing | null {
  const process = ownProcess.value;
  if (!process) return null;
  const words = processWords(frame.system, process);
  if (process.load) return processDrawing(frame, process, words);
  // Without an airflow there are no figures, and dimensions without figures say nothing.
  const { strokes, words: said } = processDrawing(frame, process, { ...words, bypass: null });
  return { strokes: strokes.filter(({ pen }) => !dimensions.includes(pen)), words: said };
}

const dimensions: readonly Pen[] = ['line-dimension', 'line-end', 'line-scale'];

/** One process of the list: a line with its direction; of a mixing both streams on their way to the mixture. */
export function listedProcess(frame: ChartFrame, { outcome, kind }: Process): Drawing {
  if (!outcome.ok) return { strokes: [], words: [] };
  const { start, other, end } = outcome.value;
  const ways =
    kind === 'mixing' && other
      ? [
          [start, end],
          [other, end],
        ]
      : [[start, end]];
  return { strokes: ways.flatMap(([from, to]) => way(frame, from!, to!)), words: [] };
}

function way(frame: ChartFrame, from: MoistAir, to: MoistAir): Stroke[] {
  const line = clipLine(frame, placeOf(frame, from), placeOf(frame, to));
  if (!line) return [];
  return [{ pen: 'line-step', d: pathOf(line) }, ...arrowStroke(line[0], line[1], 0.6, frame.letter / 14)];
}

/** The mark of a point; return and supply have theirs in the job's own process, once that is there. */
export function markOf(frame: ChartFrame, { key, air }: ChartPoint): readonly Stroke[] {
  const at = placeOf(frame, air);
  const kind = key === 'entering' ? 'return' : key === 'leaving' ? 'supply' : 'state';
  return onPlot(frame, at) ? [markStroke(kind, at, frame.letter / 14)] : [];
}

/** The names of points: in full where there is room, else their letters. */
export function namesOf(frame: ChartFrame, of: readonly ChartPoint[]): readonly Word[] {
  const short = frame.labels === 'narrow';
  return pointNames(
    frame,
    of.map(({ code, name, air }) => ({ place: placeOf(frame, air), name: short ? code : name })),
  );
}

/** All of it in one, for a file. */
export function everything(frame: ChartFrame): Drawing {
  const own = ownDrawing(frame);
  const alone = drawnAlone(own !== null);
  const listed = processes.value.map((process) => listedProcess(frame, process));
  return {
    strokes: [
      ...listed.flatMap(({ strokes }) => strokes),
      ...(own?.strokes ?? []),
      ...alone.flatMap((point) => markOf(frame, point)),
    ],
    words: [...(own?.words ?? []), ...namesOf(frame, alone)],
  };
}

/** The points that no process draws. */
export const drawnAlone = (ownDrawn: boolean): readonly ChartPoint[] =>
  points.value.filter(({ key }) => !ownDrawn || (key !== 'entering' && key !== 'leaving'));

export const placeOn = (frame: ChartFrame, { dryBulb, humidityRatio }: Pick<MoistAir, 'dryBulb' | 'humidityRatio'>) =>
  [tenth(xOf(frame, dryBulb)), tenth(yOf(frame, humidityRatio))] as const;
