import { linear, oblique, px } from '../scale.ts';

/** Shares of the true total. */
export interface Work {
  readonly total: number;
  readonly sensible: number;
}

export interface MisreadPictureProps {
  readonly real: Work;
  readonly read: Work;
  readonly width: number;
  readonly words: {
    readonly real: string;
    readonly read: string;
    readonly cooling: string;
    readonly drying: string;
    /** By how much the one is off, or '' for nothing. */
    readonly off: string;
    readonly axis: string;
    readonly summary: string;
  };
}

const rows = { real: 24, read: 86 } as const;
const bar = 28;
const axis = 152;
const most = 1.4;
const ticks = [0, 0.2, 0.4, 0.6, 0.8, 1, 1.2, 1.4] as const;

/** What is true over what is read: cooling blank, drying dotted, their difference a dimension line. */
export function MisreadPicture({ real, read, width, words }: MisreadPictureProps) {
  const x = linear([0, most], [1, width - 34]);
  const ends = [x(1), x(read.total)] as const;
  const isFar = Math.abs(read.total - 1) > 0.004;
  return (
    <svg class="drawing" width="100%" viewBox={`0 0 ${width} 196`} role="img" aria-label={words.summary}>
      {ticks.map((tick, i) => (
        <g key={tick}>
          <path class="line-grid-fine" d={`M${px(x(tick))} 20V${axis}`} />
          {(width > 500 || i % 2 === 1 || i === 0) && (
            <text class={i === 0 ? undefined : 'middle'} x={px(x(tick))} y={axis + 17}>
              {Math.round(tick * 100)}
            </text>
          )}
        </g>
      ))}
      <path class="line-scale" d={`M0 ${axis}H${px(x(most))}`} />
      <text class="end" x={width} y={axis + 39}>
        {words.axis}
      </text>
      <Bar work={real} y={rows.real} x={x} name={words.real} cooling={words.cooling} drying={words.drying} />
      <Bar work={read} y={rows.read} x={x} name={words.read} />
      <path class="line-scale" d={`M${px(x(1))} ${rows.real + bar}V${rows.read + bar + 24}`} />
      {isFar && (
        <>
          <path class="line-scale" d={`M${px(ends[1])} ${rows.read + bar}v24`} />
          <path class="line-dimension" d={`M${px(ends[0])} ${rows.read + bar + 18}H${px(ends[1])}`} />
          <path class="line-end" d={ends.map((end) => oblique(end, rows.read + bar + 18)).join('')} />
          <text class="strong clear end" x={px(Math.min(...ends) - 12)} y={rows.read + bar + 23}>
            {words.off}
          </text>
        </>
      )}
    </svg>
  );
}

interface BarProps {
  readonly work: Work;
  readonly y: number;
  readonly x: (share: number) => number;
  readonly name: string;
  readonly cooling?: string;
  readonly drying?: string;
}

function Bar({ work: { total, sensible }, y, x, name, cooling, drying }: BarProps) {
  const [edge, end] = [px(x(Math.min(sensible, total))), px(x(total))];
  return (
    <>
      <rect class="blank" x="1" y={y} width={px(end - 1)} height={bar} />
      <rect x={edge} y={y} width={px(end - edge)} height={bar} fill="url(#hatch-drying)" />
      <path class="outline" d={`M1 ${y}H${end}v${bar}H1ZM${edge} ${y}v${bar}`} />
      <text x="1" y={y - 8} class="clear">
        {name}
      </text>
      {cooling && (
        <text x="10" y={y + 19}>
          {cooling}
        </text>
      )}
      {drying && (
        <text class="middle clear" x={px((edge + end) / 2)} y={y + 19}>
          {drying}
        </text>
      )}
    </>
  );
}
