import { Shapes } from '../Shapes.tsx';
import type { ChartFrame } from './frame.ts';
import type { ChartProcess } from './process.ts';
import { processDrawing } from './processDrawing.ts';
import { type ProcessWords, processWords } from './processWords.ts';

export interface ProcessProps extends ChartProcess {
  readonly frame: ChartFrame;
  /** Words in the place of the chart's own, or `null` for none at all. */
  readonly words?: Partial<ProcessWords> | null | undefined;
}

/** The process from return to supply, with the coil's own line, its dimensions and its words. */
export function Process({ frame, words, ...process }: ProcessProps) {
  const drawing = processDrawing(frame, process, { ...processWords(frame.system, process), ...words });
  return (
    <g aria-hidden="true">
      <Shapes of={words === null ? { ...drawing, words: [] } : drawing} />
    </g>
  );
}
