import { useMemo, useRef } from 'preact/hooks';
import { Shapes } from '~/charts/Shapes.tsx';
import { placeAt } from '~/charts/surface/frame.ts';
import { ground, groundBoxes } from '~/charts/surface/ground.ts';
import { pointDrawing } from '~/charts/surface/point.ts';
import { SurfaceGround } from '~/charts/surface/Surface.tsx';
import { surfaceSay } from '~/words/en/expected.ts';
import { type Drawn, drawn } from './bands.ts';
import { Handle } from './Handle.tsx';
import { air, isTried, own, place, table, tryOut } from './model.ts';
import { spotIn } from './spot.ts';

/** The surface with the place that is read. It is tapped, dragged or moved by arrow keys. */
export function Surface() {
  const now = drawn.value;
  return now ? <Live {...now} /> : <div class="expected-room" />;
}

function Live({ frame, bands, levels, scale }: Drawn) {
  const svg = useRef<SVGSVGElement>(null);
  const taken = useMemo(() => groundBoxes(ground(frame, bands, scale), frame.letter), [frame, bands, scale]);
  const [of, at] = [table.value, place.value];
  if (!of || !at) return null;
  const read = { table: of, air: air.value, place: at, job: isTried.value ? own.value : null };
  return (
    <svg
      ref={svg}
      class="drawing expected-drawing"
      width={frame.width}
      height={frame.height}
      viewBox={`0 0 ${frame.width} ${frame.height}`}
      role="group"
      aria-label={surfaceSay.chartName}
      onPointerUp={(event) => {
        if (event.button === 0 && svg.current) tryOut(placeAt(frame, ...spotIn(svg.current, event)));
      }}
    >
      <SurfaceGround frame={frame} bands={bands} levels={levels} scale={scale} />
      <g aria-hidden="true">
        <Shapes of={pointDrawing(frame, scale, read, taken)} />
      </g>
      <Handle frame={frame} svg={svg} />
    </svg>
  );
}
