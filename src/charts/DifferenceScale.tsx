import { ticks } from 'd3-array';
import { linear, oblique, px } from './scale.ts';

export interface DifferenceScaleProps {
  /** One difference a reading, their mean, and what is common either way, all in the unit shown. */
  readonly differences: readonly number[];
  readonly mean: number;
  readonly common: number;
  readonly unit: string;
  readonly width: number;
  readonly words: { readonly common: string; readonly summary: string };
}

const AXIS = 84;

/** Differences on a scale around nothing: a dot for each reading, their mean thick, what is common as a dimension line. */
export function DifferenceScale({ differences, mean, common, unit, width, words }: DifferenceScaleProps) {
  const reach = Math.max(common * 1.5, ...[...differences, mean].map((one) => Math.abs(one) * 1.15));
  const x = linear([-reach, reach], [10, width - 10]);
  const labelled = ticks(-reach, reach, width > 500 ? 8 : 5).filter((tick) => Math.abs(tick) < 0.92 * reach);
  return (
    <svg class="drawing" width="100%" viewBox={`0 0 ${width} 112`} role="img" aria-label={words.summary}>
      <path class="line-scale" d={`M0 ${AXIS}H${width}M${px(x(0))} 26V${AXIS}`} />
      {labelled.map((tick) => (
        <g key={tick}>
          <path class="line-scale" d={`M${px(x(tick))} ${AXIS}v8`} />
          <text class="middle" x={px(x(tick))} y={AXIS + 24}>
            {tick > 0 ? '+' : ''}
            {String(tick).replace('-', '−')}
            {tick === 0 ? ` ${unit}` : ''}
          </text>
        </g>
      ))}
      <path class="line-dimension" d={`M${px(x(-common))} 20H${px(x(common))}`} />
      <path class="line-end" d={oblique(x(-common), 20) + oblique(x(common), 20)} />
      <text class="middle clear" x={px(x(0))} y="14">
        {words.common}
      </text>
      {differences.map((one, index) => (
        <circle key={index} class="dot" cx={px(x(one))} cy={AXIS - 16 - (index % 3) * 11} r="4" />
      ))}
      <path class="line-measured" d={`M${px(x(mean))} 34V${AXIS}`} />
    </svg>
  );
}
