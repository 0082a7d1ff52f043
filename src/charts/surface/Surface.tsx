import { useMemo } from 'preact/hooks';
import { Shapes, Strokes } from '../Shapes.tsx';
import type { Bands } from './contours.ts';
import type { SurfaceFrame } from './frame.ts';
import { bandStrokes, ground } from './ground.ts';
import type { Levels, SurfaceScale } from './scale.ts';

export interface SurfaceGroundProps {
  readonly frame: SurfaceFrame;
  readonly bands: Bands;
  readonly levels: Levels;
  readonly scale: SurfaceScale;
}

/** The still layer of a surface: the same props give the very same nodes, so that a moved point touches nothing of it. */
export function SurfaceGround({ frame, bands, levels, scale }: SurfaceGroundProps) {
  return useMemo(
    () => (
      <g aria-hidden="true">
        <Strokes of={bandStrokes(frame, bands, levels)} />
        <Shapes of={ground(frame, bands, scale)} />
      </g>
    ),
    [frame, bands, levels, scale],
  );
}
