import { oblique, px } from './scale.ts';
import { steadyAxis as AXIS, type SteadyPoint, steadyFrame, steadyTop as TOP } from './steadyFrame.ts';

export interface SteadyPlotProps {
  readonly points: readonly SteadyPoint[];
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

/** The capacity over the time: measured thick in its last window, its trend there as a difference, a leader to the moment since which it is steady. */
export function SteadyPlot({ points, window, since, trend, at, width, words }: SteadyPlotProps) {
  const { from, shown, x, y, path, valueAt, times, levels } = steadyFrame({ points, window, width });
  // Steady since before the picture begins: marked at its edge.
  const mark = since === null ? null : Math.max(from, since);
  const half = (trend ?? 0) / 2;
  const ends = [
    [x(window), y(-half)],
    [x(0), y(half)],
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
      <path class="line-measured" d={path(shown)} />
      {trend !== null && (
        <g>
          <path class="line-dimension" d={`M${ends.map(([one, other]) => `${px(one)} ${px(other)}`).join('L')}`} />
          <path class="line-end" d={ends.map(([one, other]) => oblique(one, other)).join('')} />
        </g>
      )}
      {mark !== null && (
        <g>
          <path class="line-scale" d={`M${px(x(mark))} ${TOP - 8}V${px(y(valueAt(mark)))}`} />
          <circle class="dot" cx={px(x(mark))} cy={px(y(valueAt(mark)))} r="4" />
          <text class={x(mark) > width / 2 ? 'end clear' : 'clear'} x={px(x(mark))} y="16">
            {words.since}
          </text>
        </g>
      )}
      {at !== null && <path class="line-scale" d={`M${px(x(at))} ${TOP}V${AXIS}`} />}
    </svg>
  );
}
