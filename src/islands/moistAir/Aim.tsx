import type { RefObject } from 'preact';
import type { MoistAir } from '~/calc/types.ts';
import { type AirPoint, airAt, type ChartFrame } from '~/charts/moistAir/frame.ts';
import { holds, keepStill, takeHold } from '../hold.ts';
import { placeOn } from './drawings.ts';
import { stride } from './keys.ts';
import { placeIn } from './Paper.tsx';
import { degrees, slider } from './said.ts';

interface Props {
  readonly frame: ChartFrame;
  readonly svg: RefObject<SVGSVGElement>;
  readonly air: MoistAir;
  readonly name: string;
  /** How its place is spoken. */
  readonly said: string;
  /** Not on the chart yet: it can be reached by keyboard all the same. */
  readonly away: boolean;
  readonly onMove: (air: AirPoint) => void;
  readonly onEscape?: (() => void) | undefined;
}

/** A ring with two thin lines to the scales, moved by hand and by arrow keys: a place on the chart that belongs to no job. */
export function Aim({ frame, svg, air, name, said, away, onMove, onEscape }: Props) {
  const [x, y] = placeOn(frame, air);
  const { right, bottom } = frame.plot;
  const press = (event: KeyboardEvent) => {
    if (event.key === 'Escape') onEscape?.();
    const to = stride(event, air, 'relativeHumidity', frame);
    if (!to) return;
    event.preventDefault();
    onMove(to);
  };
  return (
    <g
      class="air-cross"
      data-away={away ? '' : undefined}
      role="slider"
      tabindex={0}
      aria-valuenow={degrees(air.dryBulb)}
      {...slider(name, said, frame)}
      onTouchStart={keepStill}
      onPointerDown={takeHold}
      onPointerMove={(event) => {
        if (svg.current && holds(event)) onMove(airAt(frame, ...placeIn(svg.current, frame, event)));
      }}
      onKeyDown={press}
    >
      <path class="line-scale air-hair" d={`M${x} ${bottom}V${y}H${right}`} />
      <circle class="air-aim" cx={x} cy={y} r="7" />
      <circle class="air-ring" cx={x} cy={y} r="13" />
      <circle class="air-grip" cx={x} cy={y} r="22" />
    </g>
  );
}
