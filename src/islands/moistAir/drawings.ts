/** What stands on the chart besides its lines: the points with their names, and the processes between them. */

import type { MoistAir } from '~/calc/types.ts';
import { type Box, boxOf } from '~/charts/box.ts';
import { clipLine, onPlot } from '~/charts/clip.ts';
import { type ChartFrame, xOf, yOf } from '~/charts/moistAir/frame.ts';
import { arrowStroke, markStroke } from '~/charts/moistAir/marks.ts';
import { pointNames } from '~/charts/moistAir/pointNames.ts';
import { type ChartProcess, placeOf } from '~/charts/moistAir/process.ts';
import { processBoxes, processDrawing } from '~/charts/moistAir/processDrawing.ts';
import { type Labelled, type ProcessWords, processWords } from '~/charts/moistAir/processWords.ts';
import { type Drawing, type Pen, pathOf, type Stroke, tenth, type Word } from '~/charts/shapes.ts';
import type { Process } from '~/job/processes.ts';
import { ownProcess } from './own.ts';
import { type ChartPoint, points, processes } from './points.ts';

/**
 * What is written at the job's own process: its figures, as long as it has the chart to itself; among other points the names
 * alone, and on a narrow chart their letters. What is left off stands in the table and in the steps.
 */
function ownWords(frame: ChartFrame, process: ChartProcess): ProcessWords {
  const words = processWords(frame.system, process);
  const none = { sensible: null, latent: null, bypass: null };
  if (isCrowded(frame)) {
    return {
      ...none,
      entering: { name: 'R', amount: '' },
      leaving: { name: 'S', amount: '' },
      coil: null,
      blower: null,
    };
  }
  const named = isAlone() ? words : { ...words, entering: bare(words.entering), leaving: bare(words.leaving) };
  // Without an airflow there are no figures, and dimensions without figures say nothing.
  return process.load ? named : { ...named, bypass: null };
}

const isAlone = () => points.value.length <= 2;
const isCrowded = ({ labels }: ChartFrame) => labels === 'narrow' && !isAlone();
const bare = ({ name }: Labelled): Labelled => ({ name, amount: '' });

/** The job's own process; nothing while one of its ends is missing. */
export function ownDrawing(frame: ChartFrame): Drawing | null {
  const process = ownProcess.value;
  if (!process) return null;
  const { strokes, words } = processDrawing(frame, process, ownWords(frame, process), othersBoxes(frame));
  const measured = process.load && !isCrowded(frame);
  return { strokes: measured ? strokes : strokes.filter(({ pen }) => !dimensions.includes(pen)), words };
}

/** The marks of the points that are not the job's own: no word may lie on them. */
function othersBoxes(frame: ChartFrame): Box[] {
  const size = (12 * frame.letter) / 14;
  return drawnAlone(true).map(({ air }) => {
    const [x, y] = placeOf(frame, air);
    return { x, y, width: size, height: size, angle: 0 };
  });
}

const dimensions: readonly Pen[] = ['line-dimension', 'line-end', 'line-scale'];

/** Where the words of the job's own process stand: other words keep clear of them. */
export function ownBoxes(frame: ChartFrame): Box[] {
  const process = ownProcess.value;
  return process ? processBoxes(frame, process, ownWords(frame, process), othersBoxes(frame)) : [];
}

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
    ownBoxes(frame),
  );
}

/** Where points and their names stand, for the lines' own words to keep clear of. */
export function pointBoxes(frame: ChartFrame): Box[] {
  const alone = drawnAlone(ownProcess.value !== null);
  return [...othersBoxes(frame), ...namesOf(frame, alone).map((word) => boxOf(word, frame.letter))];
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
