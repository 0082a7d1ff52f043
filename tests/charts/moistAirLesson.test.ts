/** The words of a question at the chart: none is lost, and none lies on another or on the way to the answer. */
import { beforeEach, expect, test } from 'vitest';
import { boxOf, touch } from '../../src/charts/box.ts';
import { labelBox } from '../../src/charts/moistAir/lineLabels.ts';
import { drawn, lines } from '../../src/islands/moistAir/lesson/drawn.ts';
import { airOfFigure, ask, frame, guess, question, shown } from '../../src/islands/moistAir/lesson/model.ts';
import { large, width } from '../../src/islands/moistAir/view.ts';
import { lesson } from '../../src/words/en/moistAirLesson.ts';
import { predict } from '../../src/words/en/predict.ts';

const widths = [288, 358, 788, 960] as const;
const cases = widths.flatMap((px) => [1, 2, 3, 4, 5, 6, 7, 8].map((seed) => [seed, px] as const));

beforeEach(() => {
  large.value = false;
});

test.each(cases)('question %i at %i px writes every name, and nothing on anything else', (seed, px) => {
  width.value = px;
  ask(seed);
  for (const state of [false, true]) {
    shown.value = state;
    const { letter } = frame.value!;
    const { kind } = question.value;
    const names = drawn.value.words.map(({ text }) => text);
    expect(names).toEqual([...lesson.givenNames[kind], ...(state ? [lesson.resultNames[kind]] : [])]);
    const boxes = drawn.value.words.map((word) => boxOf(word, letter));
    const labels = lines.value.flatMap((line) => line.labels.map((label) => labelBox(label, letter)));
    for (const label of labels) expect(drawn.value.taken.some((box) => touch(box, label))).toBe(false);
    for (const [i, box] of boxes.entries()) expect(boxes.slice(i + 1).some((other) => touch(box, other))).toBe(false);
  }
});

test.each([
  [1, 960, 15.56],
  [1, 358, 15.56],
  [3, 960, 0.25],
  [3, 358, 0.25],
] as const)('question %i at %i px writes the guess beside the answer', (seed, px, figure) => {
  width.value = px;
  ask(seed);
  guess.value = airOfFigure(question.value, figure);
  expect(drawn.value.words.map(({ text }) => text)).not.toContain(predict.guessName);
  shown.value = true;
  expect(drawn.value.words.map(({ text }) => text)).toContain(predict.guessName);
});
