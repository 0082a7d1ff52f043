import { useMemo } from 'preact/hooks';
import { Shapes } from '../Shapes.tsx';
import type { ChartLine } from './families.ts';
import type { ChartFrame } from './frame.ts';
import { ground } from './ground.ts';

/** The still layer of a chart: the same frame and lines give the very same nodes, so that nothing here is touched again. */
export function MoistAirGround({ frame, lines }: { frame: ChartFrame; lines: readonly ChartLine[] }) {
  return useMemo(
    () => (
      <g aria-hidden="true">
        <Shapes of={ground(frame, lines)} />
      </g>
    ),
    [frame, lines],
  );
}
