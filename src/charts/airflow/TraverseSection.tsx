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

const room = { left: 56, top: 58, width: 256, height: 220 } as const;
/** How far outside the walls their dimensions stand, and how near two numbers may come. */
const outside = 30;
const nearest = 15;
/** Radius of a point at the mean velocity, px; a point without a reading is a cross. */
const mean = 6;

export function TraverseSection({ points, inside, velocities, across, down, name }: TraverseSectionProps) {
  const wide = 'diameter' in inside ? inside.diameter : inside.width;
  const high = 'diameter' in inside ? inside.diameter : inside.height;
  const scale = Math.min(room.width / wide, room.height / high);
  const x = (at: number) => px(room.left + at * scale);
  const y = (at: number) => px(room.top + at * scale);
  const depths = points.lines[0]?.points.map((point) => point.y) ?? [];
  const apart = Math.min(...depths.slice(1).map((depth, index) => (depth - (depths[index] ?? 0)) * scale));
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
      <path
        class="line-dimension"
        d={`M${x(0)} ${room.top - outside}H${x(wide)}M${room.left - outside} ${y(0)}V${y(high)}`}
      />
      <path
        class="line-end"
        d={[
          end(x(0), room.top - outside),
          end(x(wide), room.top - outside),
          end(room.left - outside, y(0)),
          end(room.left - outside, y(high)),
        ].join('')}
      />
      <text class="middle clear" x={x(wide / 2)} y={room.top - outside + 5}>
        {across}
      </text>
      <text class="middle clear" x={room.left - outside} y={y(high / 2)} dy="0.35em">
        {down}
      </text>
      {!('diameter' in inside) && apart >= nearest && (
        <g>
          {depths.map((depth, index) => (
            <text key={index} class="quiet" x={px(x(wide) + 10)} y={y(depth)} dy="0.35em">
              {index + 1}
            </text>
          ))}
        </g>
      )}
      {points.lines.map((line, index) => {
        const last = line.points.at(-1);
        return (
          <g key={index}>
            {last && <path class="line-grid-fine" d={`M${x(line.x)} ${y(line.y)}L${x(last.x)} ${y(last.y)}`} />}
            <circle class="outline blank" cx={x(line.x)} cy={y(line.y)} r="4" />
            <HoleNumber x={x(line.x)} y={y(line.y)} angle={line.angle} number={index + 1} />
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

/** The number of a hole, outside the wall. */
function HoleNumber({ x, y, angle, number }: { x: number; y: number; angle: number; number: number }) {
  const turned = (angle * Math.PI) / 180;
  return (
    <text class="middle quiet" x={px(x + 14 * Math.sin(turned))} y={px(y - 14 * Math.cos(turned))} dy="0.35em">
      {number}
    </text>
  );
}

const end = (x: number, y: number) => `M${px(x - 4)} ${px(y + 4)}L${px(x + 4)} ${px(y - 4)}`;
