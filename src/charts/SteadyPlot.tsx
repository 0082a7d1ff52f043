import { ticks } from 'd3-array';
import { linear, oblique, px } from './scale.ts';

export interface SteadyPlotProps {
  /** Minutes before the last reading (negative), and the capacity relative to its mean over the last window, less one. */
  readonly points: readonly { readonly minutes: number; readonly value: number }[];
  /** Minutes: where the last window begins, and since when it is steady. */
  readonly window: number;
  readonly since: number | null;
  /** The trend over the window, its change relative. */
  readonly trend: number | null;
  /** The moment that is looked at. */
  readonly at: number | null;
  readonly width: number;
  readonly words: { readonly since: string; readonly axis: string; readonly summary: string };
}

const TOP = 30;
const AXIS = 190;

/** The value of the point nearest to a moment. */
function valueAt(points: SteadyPlotProps['points'], minutes: number): number {
  const nearest = points.reduce((best, one) =>
    Math.abs(one.minutes - minutes) < Math.abs(best.minutes - minutes) ? one : best,
  );
  return nearest.value;
}

/** Three times what the last window needs: of the way there only the end matters, and what lies beyond runs along the edge. */
const reachOf = (points: SteadyPlotProps['points']) =>
  Math.min(0.6, Math.max(0.04, ...points.map(({ value }) => 3 * Math.abs(value))));

/** The capacity over the time: measured thick in its last window, its trend there as a difference, a leader to the moment since which it is steady. */
export function SteadyPlot({ points, window, since, trend, at, width, words }: SteadyPlotProps) {
  const from = Math.min(-1, points[0]?.minutes ?? -1);
  const reach = reachOf(points.filter(({ minutes }) => minutes >= window));
  const x = linear([from, 0], [54, width - 14]);
  const y = linear([-reach, reach], [AXIS, TOP]);
  const clamped = (value: number) => Math.max(-reach, Math.min(reach, value));
  const path = (some: SteadyPlotProps['points']) =>
    some.length === 0
      ? ''
      : `M${some.map(({ minutes, value }) => `${px(x(minutes))} ${px(y(clamped(value)))}`).join('L')}`;
  const times = ticks(from, 0, width > 500 ? 8 : 5);
  const levels = ticks(-reach, reach, 4);
  // Steady since before the picture begins: marked at its edge.
  const mark = since === null ? null : Math.max(from, since);
  const half = (trend ?? 0) / 2;
  const ends = [
    [x(window), y(clamped(-half))],
    [x(0), y(clamped(half))],
  ] as const;
  return (
    <svg class="drawing" width="100%" viewBox={`0 0 ${width} ${AXIS + 46}`} role="img" aria-label={words.summary}>
      <rect x={px(x(window))} y={TOP} width={px(x(0) - x(window))} height={AXIS - TOP} class="outline" />
      {levels.map((level) => (
        <g key={level}>
          <path class="line-grid-fine" d={`M54 ${px(y(level))}H${width - 14}`} />
          <text class="end" x="48" y={px(y(level) + 5)}>
            {level > 0 ? '+' : ''}
            {String(Math.round(level * 100)).replace('-', '−')} %
          </text>
        </g>
      ))}
      <path class="line-scale" d={`M54 ${AXIS}H${width - 14}`} />
      {times.map((time) => (
        <g key={time}>
          <path class="line-scale" d={`M${px(x(time))} ${AXIS}v8`} />
          <text class="middle" x={px(x(time))} y={AXIS + 24}>
            {String(time).replace('-', '−')}
          </text>
        </g>
      ))}
      <text class="middle" x={(54 + width - 14) / 2} y={AXIS + 43}>
        {words.axis}
      </text>
      <path class="line-dimension" d={path(points)} />
      <path class="line-measured" d={path(points.filter(({ minutes }) => minutes >= window))} />
      {trend !== null && (
        <g>
          <path class="line-dimension" d={`M${ends.map(([one, other]) => `${px(one)} ${px(other)}`).join('L')}`} />
          <path class="line-end" d={ends.map(([one, other]) => oblique(one, other)).join('')} />
        </g>
      )}
      {mark !== null && (
        <g>
          <path class="line-scale" d={`M${px(x(mark))} ${TOP - 8}V${px(y(clamped(valueAt(points, mark))))}`} />
          <circle class="dot" cx={px(x(mark))} cy={px(y(clamped(valueAt(points, mark))))} r="4" />
          <text class={x(mark) > width / 2 ? 'end clear' : 'clear'} x={px(x(mark))} y="16">
            {words.since}
          </text>
        </g>
      )}
      {at !== null && <path class="line-scale" d={`M${px(x(at))} ${TOP}V${AXIS}`} />}
    </svg>
  );
}
