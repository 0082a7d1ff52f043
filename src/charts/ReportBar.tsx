import { ticks } from 'd3-array';
import { textWidth } from './box.ts';
import { RangeBar, RangeEnds } from './RangeBar.tsx';
import { linear, px } from './scale.ts';

export interface ReportBarProps {
  /** Fractions of what the system should make. */
  readonly share: number;
  readonly line: number;
  readonly range: { readonly low: number; readonly high: number };
  readonly width: number;
  readonly words: {
    readonly line: string;
    readonly should: string;
    readonly measured: string;
    readonly shouldBe: string;
    readonly measuredAmount: string;
    readonly shouldAmount: string;
    readonly summary: string;
  };
}

/** Heights below the names of the two upright lines, which share one row where there is room for both. */
const BAR = { top: 40, height: 32 } as const;
const DIMENSION = 88;
const SHOULD = 124;
const AXIS = 140;
const HEIGHT = 168;
const ROW = 17;
const LETTER = 14;

/** From zero, in per cent of what the system should make: measured thick, ending in its hatched range; what it should make dashed; the line a chain. */
export function ReportBar({ share, line, range, width, words }: ReportBarProps) {
  const most = Math.max(1.1, Math.ceil(Math.max(share, range.high, line) * 20 + 1.4) / 20);
  const low = Math.max(0, range.low);
  const x = linear([0, most], [1, width - 26]);
  const names = namesOf(x(line), x(1), width, words);
  const down = (Math.max(...names.map(({ row }) => row)) + 1) * ROW;
  return (
    <svg
      class="drawing"
      width="100%"
      viewBox={`0 0 ${width} ${HEIGHT + down - ROW}`}
      role="img"
      aria-label={words.summary}
    >
      <g transform={`translate(0 ${down - ROW})`}>
        <Axis most={most} x={x} width={width} />
        <RangeBar low={x(low)} high={x(range.high)} lines={[x(line), x(share), x(1)]} bar={BAR} />
      </g>
      {names.map(({ at, row, pen }) => (
        <path key={pen} class={pen} d={`M${px(at)} ${row * ROW + 20}V${AXIS + down - ROW}`} />
      ))}
      {names.map(({ at, row, text, end }) => (
        <text key={text} class={end ? 'end clear' : 'clear'} x={px(at) + (end ? 5 : -5)} y={row * ROW + 14}>
          {text}
        </text>
      ))}
      <g transform={`translate(0 ${down - ROW})`}>
        <path
          class="line-measured"
          d={`M1 ${BAR.top + BAR.height / 2}H${px(x(low))}M${px(x(share))} ${BAR.top - 6}v${BAR.height + 12}`}
        />
        <Amount
          {...(textWidth(`${words.measured}: ${words.measuredAmount}`, LETTER) + 20 < x(low)
            ? { x: 10, y: BAR.top + 8 }
            : { x: px(x(range.high)) + 12, y: BAR.top + 21 })}
          name={words.measured}
          amount={words.measuredAmount}
        />
        <text class="strong middle clear" x={px(x(share))} y={BAR.top - 10}>
          {Math.round(share * 100)} %
        </text>
        <RangeEnds low={x(low)} high={x(range.high)} bar={BAR} range={range} y={DIMENSION} />
        <path class="line-should" d={`M1 ${SHOULD}H${px(x(1))}`} />
        <Amount x={10} y={SHOULD - 8} name={words.shouldBe} amount={words.shouldAmount} />
      </g>
    </svg>
  );
}

/** The names of the upright lines: away from one another in one row where that leaves both on the paper, else in two rows. */
function namesOf(line: number, should: number, width: number, words: ReportBarProps['words']) {
  const lines = [
    { at: line, text: words.line, pen: 'line-agreed' },
    { at: should, text: words.should, pen: 'line-should' },
  ].sort((a, b) => a.at - b.at);
  const fits = (at: number, text: string) => at + 5 + textWidth(text, LETTER) < width;
  const [left, right] = lines as [(typeof lines)[number], (typeof lines)[number]];
  const inOne = fits(right.at, right.text) && left.at - 5 > textWidth(left.text, LETTER);
  if (inOne)
    return [
      { ...left, row: 0, end: true },
      { ...right, row: 0, end: false },
    ];
  return [left, right].map((one, row) => ({ ...one, row, end: !fits(one.at, one.text) }));
}

function Axis({ most, x, width }: { most: number; x: (share: number) => number; width: number }) {
  const labels = ticks(0, most * 100, width > 500 ? 6 : 4).filter((t) => t <= most * 100);
  const step = (labels[1] ?? 20) / 2;
  const minor = ticks(0, most * 100, 24).filter((t) => t % step === 0 && !labels.includes(t));
  return (
    <g>
      <path class="line-scale" d={`M0 ${AXIS}H${width}M1 ${BAR.top - 6}V${AXIS}`} />
      <path class="line-scale" d={minor.map((t) => `M${px(x(t / 100))} ${AXIS}v5`).join('')} />
      <path class="line-scale" d={labels.map((t) => `M${px(x(t / 100))} ${AXIS}v9`).join('')} />
      {labels.map((t, index) => (
        <text key={t} class={index === 0 ? undefined : 'middle'} x={px(x(t / 100))} y={AXIS + 25}>
          {index === 0 ? '0 %' : t}
        </text>
      ))}
    </g>
  );
}

/** A name and its amount, drawn twice: the paper around the amount covers the end of the name, and the second drawing puts it back. */
function Amount({ x, y, name, amount }: { x: number; y: number; name: string; amount: string }) {
  return (
    <>
      {['clear', ''].map((kind) => (
        <text key={kind} class={kind || undefined} x={x} y={y}>
          {name}: <tspan class="strong">{amount}</tspan>
        </text>
      ))}
    </>
  );
}
