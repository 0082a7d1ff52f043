import type { MoistAir } from '../../calc/types.ts';
import { clipPolygon } from '../clip.ts';
import { Strokes } from '../Shapes.tsx';
import type { ChartFrame } from './frame.ts';
import { placeOf } from './process.ts';
import { regionStrokes } from './processDrawing.ts';
import { type ReadingUncertainty, region } from './region.ts';

export interface RegionProps {
  readonly frame: ChartFrame;
  readonly air: MoistAir;
  readonly uncertainty: ReadingUncertainty;
}

/** Where the state lies with 95 % probability: hatched, with an outline. */
export function Region({ frame, air, uncertainty }: RegionProps) {
  const outline = region(air, uncertainty).map((point) => placeOf(frame, point));
  return <Strokes of={regionStrokes(clipPolygon(frame, outline))} />;
}
