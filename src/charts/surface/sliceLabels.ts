import { sliceWords } from '../../words/en/expectedChart.ts';
import type { Box } from '../box.ts';
import { block, placing } from '../placing.ts';
import type { Point, Word } from '../shapes.ts';
import { amountText } from './scale.ts';
import type { SliceFrame, SliceOptions } from './sliceFrame.ts';

/** The figure read and the one measured, each in words beside its mark. */
export function labelsOf(
  frame: SliceFrame,
  { scale, measured }: SliceOptions,
  [x, y]: Point,
  here: number,
  taken: readonly Box[],
): readonly Word[] {
  // Words stay off what is not in the table, where there is room for them.
  const within = { ...frame, plot: { ...frame.plot, left: frame.from, right: frame.to } };
  const place = placing(within, [...taken, { x, y, width: 16, height: 16, angle: 0 }]);
  const around = (px: number, py: number, text: string, strong: boolean) =>
    [22, 40, 60].flatMap((off) =>
      (
        [
          [14, -off, 'start'],
          [14, off, 'start'],
          [-14, -off, 'end'],
          [-14, off, 'end'],
        ] as const
      ).map(([dx, dy, anchor]) =>
        block(
          within,
          [px + dx, Math.min(frame.plot.bottom - 10, Math.max(frame.plot.top + 10, py + dy))],
          [text],
          anchor,
          strong,
        ),
      ),
    );
  const table = place(around(x, y, amountText(scale, here), true));
  if (!measured) return plain(table);
  return plain([
    ...table,
    ...place(around(x + 6, frame.y(measured.value), sliceWords.measured(amountText(scale, measured.value)), false)),
  ]);
}

/** Their paper is drawn before the marks, so that it hides none of them. */
const plain = (words: readonly Word[]) => words.map((one) => ({ ...one, clear: false }));
