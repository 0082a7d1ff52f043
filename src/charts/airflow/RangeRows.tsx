/** Ranges under one another on one scale: what several ways find, or what is usual, each as a dimension line with its name. */
import { ticks } from 'd3-array';
import { linear, oblique, px } from '../scale.ts';

export interface RangeRow {
  readonly name: string;
  readonly low: number;
  readonly high: number;
  /** The figure inside the range, where it has one. */
  readonly at?: number | undefined;
  /** It does not count: its dot is open. */
  readonly open?: boolean;
}

export interface RangeRowsProps {
  /** All numbers in the unit that is shown. */
  readonly rows: readonly RangeRow[];
  /** What was measured, a thick line through all rows. */
  readonly line: number;
  /** Its range, hatched. */
  readonly band: readonly [number, number];
  readonly unit: string;
  readonly width: number;
  readonly summary: string;
}

const rowHeight = 44;
const top = 8;

export function RangeRows({ rows, line, band, unit, width, summary }: RangeRowsProps) {
  const bottom = top + rows.length * rowHeight + 6;
  const all = [line, ...band, ...rows.flatMap(({ low, high }) => [low, high])];
  const x = linear([Math.min(...all), Math.max(...all)], [10, width - 26]);
  const labelled = ticks(Math.min(...all), Math.max(...all), width > 500 ? 7 : 4);
  const [low, high] = [px(x(band[0])), px(x(band[1]))];
  const at = px(x(line));
  return (
    <svg class="drawing" width="100%" viewBox={`0 0 ${width} ${bottom + 30}`} role="img" aria-label={summary}>
      <rect x={low} y={top} width={px(high - low)} height={bottom - top} fill="url(#hatch-measured)" />
      <path class="line-knock" d={`M${at} ${top}V${bottom}`} />
      <rect class="outline" x={low} y={top} width={px(high - low)} height={bottom - top} />
      <path class="line-measured" d={`M${at} ${top}V${bottom}`} />
      <path class="line-scale" d={`M0 ${bottom}H${width}`} />
      {labelled.map((tick, index) => {
        const last = index === labelled.length - 1;
        const end = last && x(tick) > width - 60;
        const first = x(tick) < 18;
        return (
          <g key={tick}>
            <path class="line-scale" d={`M${px(x(tick))} ${bottom}v7`} />
            <text
              class={end ? 'end' : first ? undefined : 'middle'}
              x={end ? width : first ? 0 : px(x(tick))}
              y={bottom + 23}
            >
              {tick.toLocaleString('en')}
              {last && `\u00a0${unit}`}
            </text>
          </g>
        );
      })}
      {rows.map((row, index) => {
        const y = top + index * rowHeight + 32;
        const middle = (x(row.low) + x(row.high)) / 2;
        const anchor = middle < width * 0.35 ? '' : middle > width * 0.65 ? 'end' : 'middle';
        const from = anchor === '' ? x(row.low) : anchor === 'end' ? x(row.high) : middle;
        return (
          <g key={row.name}>
            <text class={`clear ${anchor}`} x={px(from)} y={y - 12}>
              {row.name}
            </text>
            <path class="line-dimension" d={`M${px(x(row.low))} ${y}H${px(x(row.high))}`} />
            <path class="line-end" d={oblique(x(row.low), y) + oblique(x(row.high), y)} />
            {row.at !== undefined && (
              <circle class={row.open ? 'aim' : 'dot'} cx={px(x(row.at))} cy={y} r={row.open ? 5 : 6} />
            )}
          </g>
        );
      })}
    </svg>
  );
}
