import type { JSX } from 'preact';
import type { Box } from '../box.ts';
import { onPlot } from '../clip.ts';
import { Strokes, Words } from '../Shapes.tsx';
import { tenth } from '../shapes.ts';
import type { AirPoint, ChartFrame } from './frame.ts';
import { type MarkKind, markStroke } from './marks.ts';
import { pointNames } from './pointNames.ts';
import { placeOf } from './process.ts';

export interface ChartPoint {
  readonly id: string;
  readonly air: AirPoint;
  /** `null`: only something to take hold of, because a process has drawn the mark. */
  readonly mark: MarkKind | null;
  /** Written beside the mark. */
  readonly name?: string | undefined;
}

export interface PointsProps {
  readonly frame: ChartFrame;
  readonly points: readonly ChartPoint[];
  /** Where no name may stand: what a process takes (`processBoxes`). */
  readonly taken?: readonly Box[] | undefined;
  readonly onDown?: ((id: string, event: PointerEvent) => void) | undefined;
  readonly onKeyDown?: ((id: string, event: KeyboardEvent) => void) | undefined;
  /** What else the handle of a point needs. With a place in the order of focus it needs a role and a name as well. */
  readonly attributesOf?: ((id: string) => JSX.SVGAttributes<SVGCircleElement>) | undefined;
}

/** A finger needs 44 px. */
const touchRadius = 22;

/** The points that can be moved: what is seen, and over it a circle to take hold of. Where they go, the page says. */
export function Points({ frame, points, taken, onDown, onKeyDown, attributesOf }: PointsProps) {
  const seen = points
    .map((point) => ({ ...point, place: placeOf(frame, point.air) }))
    .filter(({ place }) => onPlot(frame, place));
  const size = frame.letter / 14;
  const handling = (id: string) => ({
    onPointerDown: (event: PointerEvent) => onDown?.(id, event),
    ...(onKeyDown && { onKeyDown: (event: KeyboardEvent) => onKeyDown(id, event) }),
    ...attributesOf?.(id),
  });
  return (
    <>
      <g aria-hidden="true">
        <Strokes of={seen.flatMap(({ mark, place }) => (mark ? [markStroke(mark, place, size)] : []))} />
        <Words of={pointNames(frame, seen, taken)} />
      </g>
      {onDown &&
        seen.map(({ id, place: [x, y] }) => (
          <circle key={id} class="handle" cx={tenth(x)} cy={tenth(y)} r={touchRadius * size} {...handling(id)} />
        ))}
    </>
  );
}
