/**
 * The section of a duct to scale, seen along the stream: its holes, the points that the probe goes to, and, once they are read,
 * how fast the air is at each. Lengths come in m and go out as the words that are given.
 */
import type { TraversePoints } from '../../calc/airflow/traversePoints.ts';
import { px } from '../scale.ts';

export interface TraverseSectionProps {
  readonly points: TraversePoints;
  /** The inside, m: both sides, or the diameter of a round duct. */
  readonly inside: { readonly width: number; readonly height: number } | { readonly diameter: number };
  /** Of each point over the mean, in the shape of the points; `null` where nothing is read. */
  readonly velocities?: readonly (readonly (number | null)[])[] | undefined;
  /** The sides, written. */
  readonly across: string;
  readonly down: string;
  readonly name: string;
}

const room = { left: 56, top: 44, width: 276, height: 220 } as const;
/** Radius of a point at the mean velocity, px; a point without a reading is a cross. */
const mean = 6;

export function TraverseSection({ points, inside, velocities, across, down, name }: TraverseSectionProps) {
  const wide = 'diameter' in inside ? inside.diameter : inside.width;
  const high = 'diameter' in inside ? inside.diameter : inside.height;
  const scale = Math.min(room.width / wide, room.height / high);
  const x = (at: number) => px(room.left + at * scale);
  const y = (at: number) => px(room.top + at * scale);
  return (
    <svg
      class="drawing"
      width="100%"
      viewBox={`0 0 344 ${px(room.top + high * scale + 12)}`}
      role="img"
      aria-label={name}
    >
      {'diameter' in inside ? (
        <circle class="outline" cx={x(wide / 2)} cy={y(wide / 2)} r={px((wide * scale) / 2)} />
      ) : (
        <rect class="outline" x={x(0)} y={y(0)} width={px(wide * scale)} height={px(high * scale)} />
      )}
      <path class="line-dimension" d={`M${x(0)} ${room.top - 22}H${x(wide)}M${room.left - 22} ${y(0)}V${y(high)}`} />
      <path
        class="line-end"
        d={[
          end(x(0), room.top - 22),
          end(x(wide), room.top - 22),
          end(room.left - 22, y(0)),
          end(room.left - 22, y(high)),
        ].join('')}
      />
      <text class="middle clear" x={x(wide / 2)} y={room.top - 17}>
        {across}
      </text>
      <text class="middle clear" x={room.left - 22} y={y(high / 2)} dy="0.35em">
        {down}
      </text>
      {points.lines.map((line, index) => {
        const last = line.points.at(-1);
        return (
          <g key={index}>
            {last && <path class="line-grid-fine" d={`M${x(line.x)} ${y(line.y)}L${x(last.x)} ${y(last.y)}`} />}
            <circle class="outline blank" cx={x(line.x)} cy={y(line.y)} r="4" />
            {line.points.map((point, at) => {
              const share = velocities?.[index]?.[at] ?? null;
              return share === null ? (
                <path
                  key={at}
                  class="line-scale"
                  d={`M${px(x(point.x) - 4)} ${y(point.y)}h8M${x(point.x)} ${px(y(point.y) - 4)}v8`}
                />
              ) : (
                <circle
                  key={at}
                  class="dot"
                  cx={x(point.x)}
                  cy={y(point.y)}
                  r={px(Math.min(12, mean * Math.sqrt(share)))}
                />
              );
            })}
          </g>
        );
      })}
    </svg>
  );
}

const end = (x: number, y: number) => `M${px(x - 4)} ${px(y + 4)}L${px(x + 4)} ${px(y - 4)}`;
