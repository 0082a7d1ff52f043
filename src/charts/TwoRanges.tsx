import { linear, px } from './scale.ts';

export interface NamedRange {
  readonly name: string;
  readonly low: number;
  readonly high: number;
}

export interface TwoRangesProps {
  readonly ranges: readonly NamedRange[];
  /** The line agreed on. */
  readonly line: number;
  readonly width: number;
  readonly words: { readonly line: string; readonly summary: string };
}

const ROW = 44;

/** Ranges under one another against the line: what a check would make of the one above it. */
export function TwoRanges({ ranges, line, width, words }: TwoRangesProps) {
  const height = ranges.length * ROW + 34;
  const low = Math.min(line, ...ranges.map((range) => range.low));
  const high = Math.max(line, ...ranges.map((range) => range.high));
  const x = linear([low - 0.015, high + 0.015], [34, width - 46]);
  const at = px(x(line));
  return (
    <svg class="drawing" width="100%" viewBox={`0 0 ${width} ${height}`} role="img" aria-label={words.summary}>
      {ranges.map((range, index) => {
        const [from, to] = [x(range.low), x(range.high)];
        const y = 22 + index * ROW;
        const crossed = x(line) > from && x(line) < to;
        return (
          <g key={range.name}>
            <text x={0} y={y - 5}>
              {range.name}
            </text>
            <rect x={px(from)} y={y} width={px(to - from)} height="16" fill="url(#hatch-measured)" />
            {crossed && <path class="line-knock" d={`M${at} ${y}v16`} />}
            <rect class="outline" x={px(from)} y={y} width={px(to - from)} height="16" />
            <text class="strong end" x={px(from) - 6} y={y + 13}>
              {Math.round(range.low * 100)}
            </text>
            <text class="strong" x={px(to) + 6} y={y + 13}>
              {Math.round(range.high * 100)} %
            </text>
          </g>
        );
      })}
      <path class="line-agreed" d={`M${at} 4V${height - 20}`} />
      <text class="middle clear" x={at} y={height - 4}>
        {words.line}
      </text>
    </svg>
  );
}
