import { ticks } from 'd3-array';
import { textWidth } from './box.ts';
import { linear, oblique, px } from './scale.ts';

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
    readonly measuredAmount: string;
    readonly shouldAmount: string;
    readonly summary: string;
  };
}

const BAR = { top: 62, height: 34 } as const;
const DIMENSION = 112;
const SHOULD = 152;
const AXIS = 172;
const HEIGHT = 202;
const LETTER = 14;

/** From zero, in per cent of what the system should make: measured thick, ending in its hatched range; what it should make dashed; the line a chain. */
export function ReportBar({ share, line, range, width, words }: ReportBarProps) {
  const most = Math.max(1.1, Math.ceil(Math.max(share, range.high, line) * 20 + 1.4) / 20);
  const low = Math.max(0, range.low);
  const x = linear([0, most], [1, width - 26]);
  const labels = ticks(0, most * 100, width > 500 ? 6 : 4).filter((t) => t <= most * 100);
  const step = (labels[1] ?? 20) / 2;
  const minor = ticks(0, most * 100, 24).filter((t) => t % step === 0 && !labels.includes(t));
  const crossing = [line, share, 1].filter((at) => at > low && at < range.high);
  const besideBar = textWidth(`${words.measured}: ${words.measuredAmount}`, LETTER) + 20 < x(low);
  return (
    <svg class="drawing" width="100%" viewBox={`0 0 ${width} ${HEIGHT}`} role="img" aria-label={words.summary}>
      <path class="line-scale" d={`M0 ${AXIS}H${width}M1 ${BAR.top - 8}V${AXIS}`} />
      {minor.map((t) => (
        <path key={t} class="line-scale" d={`M${px(x(t / 100))} ${AXIS}v5`} />
      ))}
      {labels.map((t, index) => (
        <g key={t}>
          <path class="line-scale" d={`M${px(x(t / 100))} ${AXIS}v9`} />
          <text class={index === 0 ? undefined : 'middle'} x={px(x(t / 100))} y={AXIS + 25}>
            {index === 0 ? '0 %' : t}
          </text>
        </g>
      ))}
      <rect
        x={px(x(low))}
        y={BAR.top}
        width={px(x(range.high) - x(low))}
        height={BAR.height}
        fill="url(#hatch-measured)"
      />
      <path class="line-knock" d={crossing.map((at) => `M${px(x(at))} ${BAR.top}v${BAR.height}`).join('')} />
      <rect class="outline" x={px(x(low))} y={BAR.top} width={px(x(range.high) - x(low))} height={BAR.height} />
      <path class="line-agreed" d={`M${px(x(line))} 20V${AXIS}`} />
      <path class="line-should" d={`M${px(x(1))} 38V${AXIS}`} />
      <path
        class="line-measured"
        d={`M1 ${BAR.top + BAR.height / 2}H${px(x(low))}M${px(x(share))} ${BAR.top - 8}v${BAR.height + 16}`}
      />
      <Amount
        x={besideBar ? 10 : px(x(range.high)) + 12}
        y={besideBar ? BAR.top + 8 : BAR.top + 22}
        name={words.measured}
        amount={words.measuredAmount}
      />
      <TopLabels line={x(line)} should={x(1)} width={width} words={words} />
      <text class="strong middle clear" x={px(x(share))} y={BAR.top - 13}>
        {Math.round(share * 100)} %
      </text>
      <Ends low={x(low)} high={x(range.high)} figures={range} />
      <path class="line-should" d={`M1 ${SHOULD}H${px(x(1))}`} />
      <Amount x={10} y={SHOULD - 9} name={words.should} amount={words.shouldAmount} />
    </svg>
  );
}

/** A name and its amount. The paper around them is drawn first: around the amount alone it would cover the name. */
function Amount({ x, y, name, amount }: { x: number; y: number; name: string; amount: string }) {
  return (
    <>
      {['clear', ''].map((kind) => (
        <text key={kind} class={kind || undefined} x={x} y={y} aria-hidden={kind ? 'true' : undefined}>
          {name}: <tspan class={kind ? undefined : 'strong'}>{amount}</tspan>
        </text>
      ))}
    </>
  );
}

/** The names of both upright lines, each in a row of its own, on the side where there is room. */
function TopLabels({
  line,
  should,
  width,
  words,
}: {
  line: number;
  should: number;
  width: number;
  words: ReportBarProps['words'];
}) {
  const short = words.should.split(',')[0] ?? words.should;
  const fits = (at: number, text: string) => at + 5 + textWidth(text, LETTER) < width;
  return (
    <>
      {[
        { at: line, y: 14, text: words.line },
        { at: should, y: 32, text: short },
      ].map(({ at, y, text }) => (
        <text key={y} class={fits(at, text) ? 'clear' : 'end clear'} x={px(at) + (fits(at, text) ? -5 : 5)} y={y}>
          {text}
        </text>
      ))}
    </>
  );
}

/** The dimension line under the bar, the figures of its ends outside it. */
function Ends({ low, high, figures }: { low: number; high: number; figures: ReportBarProps['range'] }) {
  const from = BAR.top + BAR.height + 4;
  return (
    <g>
      <path class="line-scale" d={`M${px(low)} ${from}V${DIMENSION + 8}M${px(high)} ${from}V${DIMENSION + 8}`} />
      <path class="line-dimension" d={`M${px(low)} ${DIMENSION}H${px(high)}`} />
      <path class="line-end" d={oblique(low, DIMENSION) + oblique(high, DIMENSION)} />
      <text
        class={low > 44 ? 'strong end clear' : 'strong clear'}
        x={low > 44 ? px(low) - 12 : px(low) + 12}
        y={low > 44 ? DIMENSION + 5 : DIMENSION + 18}
      >
        {Math.round(figures.low * 100)}
      </text>
      <text class="strong clear" x={px(high) + 12} y={DIMENSION + 5}>
        {Math.round(figures.high * 100)} %
      </text>
    </g>
  );
}
