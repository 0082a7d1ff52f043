import { oblique, px } from './scale.ts';

interface Range {
  /** Px of its ends. */
  readonly low: number;
  readonly high: number;
}
interface Bar {
  readonly top: number;
  readonly height: number;
}

/** The hatched bar of a range; an upright line that crosses it clears some paper on each side. */
export function RangeBar({ low, high, lines, bar }: Range & { lines: readonly number[]; bar: Bar }) {
  const { top, height } = bar;
  const crossing = lines.filter((x) => x > low && x < high);
  return (
    <g>
      <rect x={px(low)} y={top} width={px(high - low)} height={height} fill="url(#hatch-measured)" />
      <path class="line-knock" d={crossing.map((x) => `M${px(x)} ${top}v${height}`).join('')} />
      <rect class="outline" x={px(low)} y={top} width={px(high - low)} height={height} />
    </g>
  );
}

interface Ends extends Range {
  readonly bar: Bar;
  /** What the ends stand for, as fractions. */
  readonly range: { readonly low: number; readonly high: number };
  /** Px from the top of the drawing. */
  readonly y: number;
}

/** What the figure of the low end needs to its left. */
const figureRoom = 44;

/** The dimension line under the bar, the figures of its ends outside it, in per cent. Drawn last: the figures clear what they cross. */
export function RangeEnds({ low, high, bar, range, y }: Ends) {
  const under = bar.top + bar.height + 4;
  const hasRoom = low > figureRoom;
  return (
    <g>
      <path class="line-scale" d={`M${px(low)} ${under}V${y + 8}M${px(high)} ${under}V${y + 8}`} />
      <path class="line-dimension" d={`M${px(low)} ${y}H${px(high)}`} />
      <path class="line-end" d={oblique(low, y) + oblique(high, y)} />
      <text
        class={hasRoom ? 'strong end clear' : 'strong clear'}
        x={px(low) + (hasRoom ? -12 : 8)}
        y={y + (hasRoom ? 5 : 18)}
      >
        {Math.round(range.low * 100)}
      </text>
      <text class="strong clear" x={px(high) + 12} y={y + 5}>
        {Math.round(range.high * 100)} %
      </text>
    </g>
  );
}
