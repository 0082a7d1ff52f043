/** Where the words of a process stand: the table beside the chart has every figure that finds no place here. */

import { type Box, boxBetween } from '../box.ts';
import { type Block, block, leading, placing, unit, widest } from '../placing.ts';
import type { Point, Word } from '../shapes.ts';
import { axisBoxes } from './axes.ts';
import type { ChartFrame } from './frame.ts';
import type { ProcessPlaces } from './processPlaces.ts';
import type { Labelled, ProcessWords } from './processWords.ts';

export function processLabels(
  frame: ChartFrame,
  places: ProcessPlaces,
  words: ProcessWords,
  taken: readonly Box[],
): Word[] {
  const place = placing(frame, [...axisBoxes(frame), ...linesOfProcess(places), ...taken]);
  return [
    ...place(returnLabel(frame, places, words.entering)),
    ...place(supplyLabel(frame, places, words.leaving)),
    ...place(places.apparatus && words.coil ? coilLabel(frame, places.apparatus, words.coil) : []),
    ...place(words.sensible ? sensibleLabel(frame, places, words.sensible) : []),
    ...place(words.latent ? latentLabel(frame, places, words.latent) : []),
    ...place(words.bypass ? bypassLabel(frame, places, words.bypass) : []),
    ...place(words.blower ? blowerLabel(frame, places, words.blower) : []),
  ];
}

/** The lines that no word may lie on: the process itself and its dimensions. */
export function linesOfProcess({ entering, leaving, apparatus, bypassed, row, column }: ProcessPlaces): Box[] {
  const boxes = [boxBetween(entering, leaving, 4)];
  const from = apparatus && bypassed ? apparatus[0] : leaving[0];
  if (row !== null) boxes.push(boxBetween([from, row], [entering[0], row], 5));
  if (column !== null) boxes.push(boxBetween([column, entering[1]], [column, leaving[1]], 5));
  return boxes;
}

/** The lines of a text so that the last of them stands at y. */
function blockUpTo(frame: ChartFrame, [x, y]: Point, texts: readonly string[], anchor: 'start' | 'end'): Block {
  return block(frame, [x, y - (texts.length - 1) * leading(frame)], texts, anchor, true);
}

function returnLabel(
  frame: ChartFrame,
  { entering: [x, y], room }: ProcessPlaces,
  { name, amount }: Labelled,
): Block[] {
  const above = y - room.entering.top - 9 * unit(frame);
  const right = x + 10 * unit(frame);
  return [
    blockUpTo(frame, [right, above], [name, amount], 'start'),
    blockUpTo(frame, [right, above], [name], 'start'),
    block(frame, [right, y + 18 * unit(frame)], [name], 'start', true),
    // Other points may stand to its right.
    blockUpTo(frame, [x - 10 * unit(frame), above], [name], 'end'),
  ];
}

/** Above the line, so high that the line passes under it; below it where the line is steep or the place is taken. */
function supplyLabel(
  frame: ChartFrame,
  { entering, leaving, room }: ProcessPlaces,
  { name, amount }: Labelled,
): Block[] {
  const [x, y] = leaving;
  const slope = Math.max(0, (y - entering[1]) / Math.max(1, entering[0] - x));
  const above = (texts: readonly string[]) => {
    const rise = slope * widest(frame, texts);
    const top = y - Math.max(room.leaving.top + 9 * unit(frame), 16 * unit(frame) + rise);
    return rise < 40 * unit(frame) ? [blockUpTo(frame, [x, top], texts, 'start')] : [];
  };
  const right = x + 10 * unit(frame);
  const under = y + room.leaving.bottom + 9 * unit(frame);
  return [
    ...above([name, amount]),
    ...above([name]),
    block(frame, [right, under], [name, amount], 'start', true),
    block(frame, [right, under], [name], 'start', true),
    block(frame, [x - 10 * unit(frame), y - 14 * unit(frame)], [name], 'end', true),
  ];
}

/** Outside saturation, where nothing else is. */
function coilLabel(frame: ChartFrame, [x, y]: Point, { name, amount, term }: Labelled): Block[] {
  const at: Point = [x - 12 * unit(frame), y - 14 * unit(frame)];
  const long = [`${name}, ${amount}`, term ?? ''];
  const room = x - frame.plot.left - 14 * unit(frame);
  const short = blockUpTo(frame, at, [name, amount], 'end');
  return [...(term && widest(frame, long) < room ? [blockUpTo(frame, at, long, 'end')] : []), short];
}

/** Under the row of dimensions: in its middle if it fits there, else from its left end on. */
function sensibleLabel(frame: ChartFrame, { entering, leaving, row }: ProcessPlaces, words: Labelled): Block[] {
  if (row === null) return [];
  const y = row + 15 * unit(frame);
  const room = entering[0] - leaving[0] - 12 * unit(frame);
  const fitting = wordings(frame, words).filter((texts) => widest(frame, texts) < room);
  const [short] = wordings(frame, words)
    .filter((texts) => texts.length > 1)
    .reverse();
  return [
    ...fitting.map((texts) => block(frame, [(entering[0] + leaving[0]) / 2, y], texts, 'middle')),
    ...(short ? [block(frame, [leaving[0] + 6 * unit(frame), y], short, 'start')] : []),
  ];
}

/** Beside the upright dimension, or under it where there is no room. */
function latentLabel(frame: ChartFrame, { entering, leaving, column }: ProcessPlaces, words: Labelled): Block[] {
  if (column === null) return [];
  const right = column + 12 * unit(frame);
  const middle = (entering[1] + leaving[1]) / 2;
  const beside = wordings(frame, words)
    .filter((texts) => widest(frame, texts) < frame.plot.right - right - 2)
    .map((texts) => block(frame, [right, middle - ((texts.length - 1) * leading(frame)) / 2], texts, 'start'));
  const under = wordings(frame, words).map((texts) =>
    block(frame, [frame.plot.right, leaving[1] + 13 * unit(frame)], texts, 'end'),
  );
  return [...beside.filter((texts) => texts.length > 1), ...under.filter((texts) => texts.length === 1), ...beside];
}

/** Under the part of the row that the coil let pass. */
function bypassLabel(frame: ChartFrame, { coilLeaving, bypassed, row }: ProcessPlaces, words: Labelled): Block[] {
  if (row === null || !bypassed) return [];
  const at: Point = [coilLeaving[0] - 6 * unit(frame), row + 15 * unit(frame)];
  return wordings(frame, words)
    .filter((texts) => texts.length > 1)
    .map((texts) => block(frame, at, texts, 'end'));
}

function blowerLabel(
  frame: ChartFrame,
  { leaving, coilLeaving, room }: ProcessPlaces,
  { name, amount }: Labelled,
): Block[] {
  if (leaving[0] - coilLeaving[0] < 5) return [];
  const at: Point = [leaving[0] + room.leaving.right + 4 * unit(frame), leaving[1] + 14 * unit(frame)];
  return [block(frame, at, [`${name} ${amount}`], 'start')];
}

/** One line, two lines, the same with the short name (the only one on a narrow chart), and the amount alone. */
function wordings({ labels }: ChartFrame, { name, short, amount }: Labelled): string[][] {
  const names = short ? (labels === 'narrow' ? [short] : [name, short]) : [name];
  return [...names.flatMap((text) => [[`${text} ${amount}`], [text, amount]]), [amount]];
}
