import type { ComponentChildren, RefObject } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { type AirPoint, airUnder, type ChartFrame } from '~/charts/moistAir/frame.ts';
import { followWidth } from '../followWidth.ts';
import { beginDrawing, width } from './view.ts';

/** The first drawing begins with the first width. */
function set(wide: number): void {
  if (width.peek() === 0) beginDrawing(wide);
  else width.value = wide;
}

interface Props {
  readonly frame: ChartFrame | null;
  readonly name: string;
  readonly svg: RefObject<SVGSVGElement>;
  /** A place that was tapped, or that a mouse is over; `over` says which. */
  readonly onPlace?: ((air: AirPoint, over: boolean) => void) | undefined;
  readonly children?: ComponentChildren;
}

/** The sheet under a chart: it is drawn for the width that it has, once that is known, and says where it is touched. */
export function Paper({ frame, name, svg, onPlace, children }: Props) {
  const box = useRef<HTMLDivElement>(null);
  useEffect(
    () => (box.current ? followWidth(box.current, { now: () => width.peek(), set, fillsSheet: true }) : undefined),
    [],
  );
  const tell = (event: PointerEvent, over: boolean) => {
    if (!frame || !svg.current || !onPlace || event.buttons > (over ? 0 : 1)) return;
    const air = airUnder(frame, ...placeIn(svg.current, frame, event));
    if (air) onPlace(air, over);
  };
  return (
    <div class="air-paper" ref={box}>
      {frame && (
        <svg
          ref={svg}
          class="drawing air-drawing"
          width={frame.width}
          height={frame.height}
          viewBox={`0 0 ${frame.width} ${frame.height}`}
          role="group"
          aria-label={name}
          onPointerMove={(event) => event.pointerType === 'mouse' && tell(event, true)}
          onPointerUp={(event) => tell(event, false)}
        >
          {children}
        </svg>
      )}
    </div>
  );
}

/** The place of a pointer in the drawing. */
export function placeIn(svg: SVGSVGElement, frame: ChartFrame, event: PointerEvent): [x: number, y: number] {
  const { left, top, width: wide } = svg.getBoundingClientRect();
  const scale = frame.width / wide;
  return [(event.clientX - left) * scale, (event.clientY - top) * scale];
}
