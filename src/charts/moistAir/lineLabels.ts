import type { ChartLine } from './families.ts';
import type { ChartFrame } from './frame.ts';

/** The lines with what is written along them. */
export function labelled(_frame: ChartFrame, lines: readonly ChartLine[]): readonly ChartLine[] {
  return lines;
}
