import type { RefObject } from 'preact';
import { useRef } from 'preact/hooks';
import type { ChartFrame } from '~/charts/moistAir/frame.ts';
import { keepStill } from '../hold.ts';
import { edit } from '../jobStore.ts';
import { placeOn } from './drawings.ts';
import { measureOf, stride } from './keys.ts';
import { drop, editsTo, follow, giveUp, take } from './move.ts';
import type { ChartPoint } from './points.ts';
import { degrees, slider, spokenAir } from './said.ts';
import { cross, looked } from './view.ts';

interface Props {
  readonly point: ChartPoint;
  readonly frame: ChartFrame;
  readonly svg: RefObject<SVGSVGElement>;
}

/** Where a hand takes hold of a point: a shortcut to its two fields, by pointer, touch and arrow keys. */
export function Handle({ point, frame, svg }: Props) {
  const { key, name, air } = point;
  const [x, y] = placeOn(frame, air);
  const before = useRef(air);
  const press = (event: KeyboardEvent) => {
    if (event.key === 'Escape') {
      if (!giveUp() && air !== before.current) edit(...editsTo(key, before.current));
      return;
    }
    const to = stride(event, air, measureOf(key), frame);
    if (!to) return;
    cross.value = null;
    event.preventDefault();
    edit(...editsTo(key, to));
  };
  return (
    <g
      class="air-handle"
      data-handle={key}
      role="slider"
      tabindex={0}
      aria-valuenow={degrees(air.dryBulb)}
      {...slider(name, spokenAir(air, measureOf(key)), frame)}
      transform={`translate(${x} ${y})`}
      onTouchStart={keepStill}
      onPointerDown={(event) => take(event, key, air, frame, svg)}
      onPointerMove={follow}
      onPointerUp={(event) => {
        event.stopPropagation();
        drop(event);
      }}
      onPointerCancel={giveUp}
      onFocus={() => {
        before.current = air;
        looked.value = key;
      }}
      onKeyDown={press}
    >
      <circle class="air-ring" r="13" />
      <circle class="air-grip" r="22" />
    </g>
  );
}
