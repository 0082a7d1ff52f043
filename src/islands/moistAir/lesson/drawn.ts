/** What is drawn of a question: what is given, the guess, once it is shown the answer with the way that leads there, and the lines around them. */
import { computed } from '@preact/signals';
import type { MoistAir } from '~/calc/types.ts';
import { type Box, boxBetween, boxOf } from '~/charts/box.ts';
import { clipLine, onPlot } from '~/charts/clip.ts';
import { chartLines, type Family } from '~/charts/moistAir/families.ts';
import type { ChartFrame } from '~/charts/moistAir/frame.ts';
import { arrowStroke, type MarkKind, markStroke } from '~/charts/moistAir/marks.ts';
import { pointNames } from '~/charts/moistAir/pointNames.ts';
import { placeOf } from '~/charts/moistAir/process.ts';
import { type Drawing, type Pen, type Point, pathOf, type Stroke } from '~/charts/shapes.ts';
import { lesson } from '~/words/en/moistAirLesson.ts';
import { predict } from '~/words/en/predict.ts';
import { families } from '../view.ts';
import { answerAir, frame, guess, question, shown } from './model.ts';
import type { Question } from './questions.ts';

interface Drawn extends Drawing {
  /** Where nothing may be written along a line. */
  readonly taken: readonly Box[];
}

interface Placed {
  readonly air: MoistAir;
  readonly name: string;
  readonly mark: MarkKind;
}

export const drawn = computed((): Drawn => {
  const paper = frame.value;
  if (!paper) return { strokes: [], words: [], taken: [] };
  const of = question.value;
  const size = paper.letter / 14;
  const placed = pointsOf(of)
    .map((one) => ({ ...one, place: placeOf(paper, one.air) }))
    .filter(({ place }) => onPlot(paper, place));
  const ways = shown.value ? waysOf(paper, of) : [];
  const along = ways.map(([from, to]) => boxBetween(from, to, 4 * size));
  const words = pointNames(paper, placed, along, true);
  const marks = placed.map(({ place: [x, y] }) => ({ x, y, width: 12 * size, height: 12 * size, angle: 0 }));
  const pen: Pen = of.kind === 'wetBulb' ? 'line-beyond' : 'line-step';
  return {
    strokes: [
      ...ways.flatMap((way): Stroke[] => [{ pen, d: pathOf(way) }, ...arrowStroke(way[0], way[1], 0.6, size)]),
      ...placed.map(({ mark, place }) => markStroke(mark, place, size)),
    ],
    words,
    taken: [...along, ...marks, ...words.map((word) => boxOf(word, paper.letter))],
  };
});

/** The lines that would give an answer away are off until it is shown. */
const hidden: Readonly<Record<Question['kind'], readonly Family[]>> = {
  wetBulb: ['wetBulb', 'enthalpy'],
  heating: ['relativeHumidity'],
  mixing: [],
  lessAir: [],
};

export const lines = computed(() => {
  const [withheld, ...others] = hidden[question.value.kind];
  const on = families.value.filter((family) => family !== withheld && !others.includes(family));
  // With the answer come the lines that lead to it.
  const all = shown.value && withheld ? [...on, withheld] : on;
  return frame.value ? chartLines(frame.value, all, drawn.value.taken) : [];
});

function pointsOf(of: Question): Placed[] {
  const given = of.given.map(
    (air, index): Placed => ({ air, name: lesson.givenNames[of.kind][index] ?? '', mark: markFor(of, index) }),
  );
  if (!shown.value) return given;
  const answer: Placed = { air: answerAir(of), name: lesson.resultNames[of.kind], mark: 'state' };
  const said: Placed[] = guess.value ? [{ air: guess.value, name: predict.guessName, mark: 'coil' }] : [];
  return [...given, answer, ...said];
}

function markFor({ kind, given }: Question, index: number): MarkKind {
  if (kind === 'wetBulb' || kind === 'heating' || (kind === 'mixing' && index === 0)) return 'state';
  return kind === 'lessAir' && index === given.length - 1 ? 'supply' : 'return';
}

/** How the answer comes about. */
function waysOf(paper: ChartFrame, of: Question): (readonly [Point, Point])[] {
  const to = answerAir(of);
  const starts = of.kind === 'lessAir' ? of.given.slice(0, 1) : of.given;
  return starts.flatMap((from) => {
    const line = clipLine(paper, placeOf(paper, from), placeOf(paper, to));
    return line ? [line] : [];
  });
}
