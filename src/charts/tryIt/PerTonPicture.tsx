import { linear, px } from '../scale.ts';
import { Axes, type AxisOf, lineThrough, plot, scalesOf } from './Axes.tsx';

/** Everything in the units that are shown; shares in per cent of the total where a ton has its printed airflow. */
export interface PerTonPoint {
  readonly flow: number;
  readonly total: number;
  readonly sensible: number;
}

export interface PerTonPictureProps {
  readonly points: readonly PerTonPoint[];
  /** The one that is looked at, and the airflow of the 100 per cent. */
  readonly at: PerTonPoint;
  readonly printed: number;
  readonly width: number;
  readonly words: {
    readonly flow: string;
    readonly share: string;
    readonly cooling: string;
    readonly drying: string;
    readonly likeAir: string;
    readonly summary: string;
  };
}

/** What a coil makes over the airflow: cooling blank, drying dotted, and thin the line that would go with the air. */
export function PerTonPicture({ points, at, printed, width, words }: PerTonPictureProps) {
  const [least, most] = [points[0]?.flow ?? 0, points.at(-1)?.flow ?? 1];
  const x: AxisOf = { domain: [least, most], name: words.flow, ticks: width > 500 ? 8 : 5 };
  const y: AxisOf = { domain: [40, 120], name: words.share, ticks: 5 };
  const scales = scalesOf(x, y, width);
  const tops = points.map(({ flow, total }) => [flow, total] as const);
  const parts = points.map(({ flow, sensible }) => [flow, sensible] as const);
  const drying = `${lineThrough(tops, scales)}L${lineThrough(parts.toReversed(), scales).slice(1)}Z`;
  const wide = linear([0, 1], [least, most]);
  return (
    <svg class="drawing" width="100%" viewBox={`0 0 ${width} ${plot.height}`} role="img" aria-label={words.summary}>
      <path d={drying} fill="url(#hatch-drying)" />
      <Axes x={x} y={y} width={width} />
      <path class="line-dimension" d={lineThrough(parts, scales)} />
      <path
        class="line-scale"
        d={lineThrough(
          [least, Math.min(most, printed * 1.2)].map((flow) => [flow, (100 * flow) / printed] as const),
          scales,
        )}
      />
      <path class="line-should" d={lineThrough(tops, scales)} />
      <text class="clear" x={px(scales.x(wide(0.02)))} y={px(scales.y(47))}>
        {words.cooling}
      </text>
      <text class="clear end" x={px(scales.x(wide(0.98)))} y={px(scales.y(87))}>
        {words.drying}
      </text>
      <text class="clear end" x={px(scales.x(wide(0.86)))} y={px(scales.y(115))}>
        {words.likeAir}
      </text>
      <path class="line-dimension" d={`M${px(scales.x(at.flow))} ${plot.top}V${plot.bottom}`} />
      <circle class="dot" cx={px(scales.x(at.flow))} cy={px(scales.y(at.total))} r="6" />
      <circle class="dot" cx={px(scales.x(at.flow))} cy={px(scales.y(at.sensible))} r="4" />
    </svg>
  );
}
