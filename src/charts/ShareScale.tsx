import { ticks } from 'd3-array';
import { RangeBar, RangeEnds } from './RangeBar.tsx';
import { linear, px } from './scale.ts';

export interface ShareScaleProps {
  /** Fractions of what the system should make. */
  readonly share: number;
  readonly line: number;
  readonly range: { readonly low: number; readonly high: number };
  readonly width: number;
  readonly words: { readonly line: string; readonly should: string; readonly summary: string };
}

const HEIGHT = 160;
const AXIS = 132;
const BAR = { top: 46, height: 40 } as const;
const DIMENSION = 106;

/** What is shown at least; a share far off widens it, so that the mark and the figures of its ends never leave the paper. */
function domainOf(share: number, { low, high }: ShareScaleProps['range']): [number, number] {
  const [least, most] = [Math.min(share, low), Math.max(share, high)];
  return [Math.min(0.75, Math.floor(least * 20 - 1) / 20), Math.max(1.1, Math.ceil(most * 20 + 1.4) / 20)];
}

/** The share on its scale: measured thick, what it should make dashed, the agreed line a chain, the range hatched. */
export function ShareScale({ share, line, range, width, words }: ShareScaleProps) {
  const domain = domainOf(share, range);
  const x = linear(domain, [8, width - 26]);
  const labelled = ticks(domain[0] * 100, domain[1] * 100, width > 500 ? 6 : 4);
  const step = (labelled[1] ?? 10) - (labelled[0] ?? 0);
  const minor = ticks(domain[0] * 100, domain[1] * 100, 10).filter(
    (t) => !labelled.includes(t) && t % (step / 2) === 0,
  );
  const lineLeft = line < 1;
  const measured = px(x(share));
  return (
    <svg class="drawing" width="100%" viewBox={`0 0 ${width} ${HEIGHT}`} role="img" aria-label={words.summary}>
      <path class="line-scale" d={`M0 ${AXIS}H${width}`} />
      {minor.map((t) => (
        <path key={t} class="line-scale" d={`M${px(x(t / 100))} ${AXIS}v5`} />
      ))}
      {labelled.map((t, index) => (
        <g key={t}>
          <path class="line-scale" d={`M${px(x(t / 100))} ${AXIS}v9`} />
          <text class="middle" x={px(x(t / 100))} y={AXIS + 25}>
            {index === labelled.length - 1 ? `${t} %` : t}
          </text>
        </g>
      ))}
      <RangeBar low={x(range.low)} high={x(range.high)} lines={[x(line), x(share), x(1)]} bar={BAR} />
      <path class="line-agreed" d={`M${px(x(line))} 22V${AXIS}`} />
      <text class={lineLeft ? 'end' : undefined} x={px(x(line)) + (lineLeft ? 5 : -5)} y="14">
        {words.line}
      </text>
      <path class="line-should" d={`M${px(x(1))} 22V${AXIS}`} />
      <text class={lineLeft ? undefined : 'end'} x={px(x(1)) + (lineLeft ? -5 : 5)} y="14">
        {words.should}
      </text>
      <path class="line-measured" d={`M${measured} ${BAR.top - 8}V${BAR.top + BAR.height + 8}`} />
      <text class="strong clear" x={measured + 7} y={BAR.top - 7}>
        {Math.round(share * 100)} %
      </text>
      <RangeEnds low={x(range.low)} high={x(range.high)} bar={BAR} range={range} y={DIMENSION} />
    </svg>
  );
}
