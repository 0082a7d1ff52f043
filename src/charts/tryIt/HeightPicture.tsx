import { oblique, px } from '../scale.ts';
import { Axes, type AxisOf, lineThrough, plot, scalesOf } from './Axes.tsx';

export interface HeightPictureProps {
  /** Height and factor there, in the units that are shown, from sea level up. */
  readonly points: readonly (readonly [height: number, factor: number])[];
  readonly at: readonly [height: number, factor: number];
  /** What habit takes everywhere. */
  readonly habit: number;
  readonly width: number;
  readonly words: {
    readonly height: string;
    readonly factor: string;
    readonly habit: string;
    readonly here: string;
    readonly off: string;
    readonly summary: string;
  };
}

/** The air that each unit of airflow carries: a curve that falls, the level line of habit, and how far they are apart here. */
export function HeightPicture({ points, at: [height, factor], habit, width, words }: HeightPictureProps) {
  const [most, highest] = [points.at(-1)?.[0] ?? 1, Math.ceil(habit * 2 + 0.2) / 2];
  const x: AxisOf = { domain: [0, most], name: words.height, ticks: width > 500 ? 6 : 4 };
  const y: AxisOf = { domain: [highest - 2.5, highest], name: words.factor, ticks: 5 };
  const scales = scalesOf(x, y, width);
  const [here, low, high] = [scales.x(height), scales.y(factor), scales.y(habit)];
  const isLeft = here > (width + plot.left) / 2;
  const side = { class: isLeft ? 'clear end' : 'clear', x: px(here + (isLeft ? -10 : 10)) };
  // The curve falls to the right, so that there is room on the left below it, but for the axis.
  const below =
    here - plot.left > 60 ? { class: 'clear end', x: px(here - 8) } : { class: 'clear', x: px(here + 10), dy: '14' };
  return (
    <svg class="drawing" width="100%" viewBox={`0 0 ${width} ${plot.height}`} role="img" aria-label={words.summary}>
      <Axes x={x} y={y} width={width} />
      <path
        class="line-dimension"
        d={lineThrough(
          [0, most].map((end) => [end, habit] as const),
          scales,
        )}
      />
      <path class="line-saturation" d={lineThrough(points, scales)} />
      <text class="end" x={scales.right} y={px(high - 6)}>
        {words.habit}
      </text>
      <path class="line-dimension" d={`M${px(here)} ${px(low)}V${px(high)}`} />
      <path class="line-end" d={oblique(here, low) + oblique(here, high)} />
      <circle class="dot" cx={px(here)} cy={px(low)} r="6" />
      <text {...side} class={`strong ${side.class}`} y={px((low + high) / 2 + 5)}>
        {low - high > 16 ? words.off : ''}
      </text>
      <text {...below} y={px(low + 20)}>
        {words.here}
      </text>
    </svg>
  );
}
