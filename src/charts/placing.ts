/**
 * Placing words on a chart without their touching: each label brings a short list of places and wordings, the first that
 * touches nothing already there is taken, and a label without one is left off. Nothing is searched for.
 */
import { type Box, boxOf, inside, textWidth, touch } from './box.ts';
import { type Anchor, type Paper, type Point, type Word, word } from './shapes.ts';

/** Lines of text that belong together. */
export type Block = readonly Word[];

/** A pixel of a chart with the usual type. */
export const unit = (frame: Paper): number => frame.letter / 14;
export const leading = (frame: Paper): number => 17 * unit(frame);

export const widest = (frame: Paper, texts: readonly string[]): number =>
  Math.max(...texts.map((text) => textWidth(text, frame.letter)));

/** Lines of text under one another, the first at (x, y), moved sideways until they stand on the plot. */
export function block(frame: Paper, [x, y]: Point, texts: readonly string[], anchor: Anchor, strong = false): Block {
  const width = widest(frame, texts);
  const start = x - (anchor === 'start' ? 0 : anchor === 'middle' ? width / 2 : width);
  const moved = Math.min(Math.max(start, frame.plot.left + 2), frame.plot.right - 2 - width) - start;
  return texts.map((text, i) =>
    word(text, x + moved, y + i * leading(frame), {
      anchor,
      clear: true,
      weight: strong && i === 0 ? 'strong' : 'plain',
    }),
  );
}

/** Takes the first block of a list that is free, and remembers it. */
export function placing(frame: Paper, taken: readonly Box[]): (blocks: readonly Block[]) => Block {
  const boxes = [...taken];
  const free = (words: Block) =>
    words.every((one) => {
      const box = boxOf(one, frame.letter);
      return inside(box, frame.width, frame.height) && !boxes.some((other) => touch(box, other, 2));
    });
  return (blocks) => {
    const found = blocks.find(free) ?? [];
    boxes.push(...found.map((one) => boxOf(one, frame.letter)));
    return found;
  };
}
