import { ticks } from 'd3-array';
import { linear, oblique, px } from '../scale.ts';

export interface LossScaleProps {
  /** What is left of the capacity, and the ends of its band: fractions. */
  readonly factor: number;
  readonly low: number;
  readonly high: number;
  readonly width: number;
  readonly words: { readonly rated: string; readonly summary: string };
}

const height = 116;
const axis = 88;

/** What is left of the capacity, on a scale that ends a little above the rating: expected, so dashed, its band hatched. */
export function LossScale({ factor, low, high, width, words }: LossScaleProps) {
  const from = Math.min(0.95, Math.floor(low * 100 - 1) / 100);
  const to = Math.max(1.005, high + 0.005);
  const x = linear([from, to], [8, width - 26]);
  const labelled = ticks(from * 100, 100, width > 500 ? 6 : 4);
  const at = px(x(factor));
  const crossed = [factor, 1].map(x).filter((place) => place > x(low) && place < x(high));
  const wide = px(x(high) - x(low));
  const left = x(factor) > width / 2;
  return (
    <svg class="drawing" width="100%" viewBox={`0 0 ${width} ${height}`} role="img" aria-label={words.summary}>
      <path class="line-scale" d={`M0 ${axis}H${width}`} />
      {labelled.map((tick, index) => (
        <g key={tick}>
          <path class="line-scale" d={`M${px(x(tick / 100))} ${axis}v9`} />
          <text class="middle" x={px(x(tick / 100))} y={axis + 25}>
            {index === labelled.length - 1 ? `${tick} %` : tick}
          </text>
        </g>
      ))}
      {wide > 2 && (
        <g>
          <rect x={px(x(low))} y="38" width={wide} height="30" fill="url(#hatch-expected)" />
          <path class="line-knock" d={crossed.map((place) => `M${px(place)} 38v30`).join('')} />
          <rect class="outline" x={px(x(low))} y="38" width={wide} height="30" />
          <path class="line-dimension" d={`M${px(x(low))} 78H${px(x(high))}`} />
          <path class="line-end" d={oblique(x(low), 78) + oblique(x(high), 78)} />
        </g>
      )}
      <path class="line-scale" d={`M${px(x(1))} 22V${axis}`} />
      <text class="end" x={width} y="14">
        {words.rated}
      </text>
      <path class="line-should" d={`M${at} 26V${axis}`} />
      <text class={left ? 'strong clear end' : 'strong clear'} x={at + (left ? -8 : 8)} y="32">
        {(factor * 100).toFixed(1)} %
      </text>
    </svg>
  );
}
