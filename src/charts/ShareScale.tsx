import { ticks } from 'd3-array';
import { linear, oblique, px } from './scale.ts';

export interface ShareScaleProps {
  /** Fractions of what the system should make. */
  readonly share: number;
  readonly line: number;
  readonly range?: { readonly low: number; readonly high: number } | undefined;
  readonly width: number;
  readonly words: { readonly line: string; readonly should: string; readonly summary: string };
}

const HEIGHT = 128;
const AXIS = 100;

/** What is shown at least; a share far off widens it, so that the mark never leaves the paper. */
function domainOf(share: number, range: ShareScaleProps['range']): [number, number] {
  const low = Math.min(share, range?.low ?? share);
  const high = Math.max(share, range?.high ?? share);
  return [Math.min(0.75, Math.floor(low * 10 - 0.5) / 10), Math.max(1.1, Math.ceil(high * 10 + 0.5) / 10)];
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
      {range && <RangeBar low={x(range.low)} high={x(range.high)} clear={[x(line), x(share), x(1)]} />}
      <path class="line-agreed" d={`M${px(x(line))} 22V${AXIS}`} />
      <text class={lineLeft ? 'end' : undefined} x={px(x(line)) + (lineLeft ? 5 : -5)} y="14">
        {words.line}
      </text>
      <path class="line-should" d={`M${px(x(1))} 22V${AXIS}`} />
      <text class={lineLeft ? undefined : 'end'} x={px(x(1)) + (lineLeft ? -5 : 5)} y="14">
        {words.should}
      </text>
      <path class="line-measured" d={`M${measured} 44V${AXIS - 6}`} />
      <text class="strong clear" x={measured + 8} y="56">
        {Math.round(share * 100)} %
      </text>
    </svg>
  );
}

/** The hatched bar of a range; a line that crosses it clears some paper on each side. */
function RangeBar({ low, high, clear }: { low: number; high: number; clear: readonly number[] }) {
  const width = px(high - low);
  const inside = clear.filter((x) => x > low && x < high);
  return (
    <g>
      <rect x={px(low)} y="50" width={width} height="30" fill="url(#hatch-measured)" />
      <path class="line-knock" d={inside.map((x) => `M${px(x)} 50v30`).join('')} />
      <rect class="outline" x={px(low)} y="50" width={width} height="30" />
      <path class="line-dimension" d={`M${px(low)} 90H${px(high)}`} />
      <path class="line-end" d={oblique(low, 90) + oblique(high, 90)} />
    </g>
  );
}
