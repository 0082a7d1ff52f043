import { linear, px } from './scale.ts';

export interface NamedShare {
  readonly name: string;
  /** A fraction of the variance. */
  readonly share: number;
}

export interface SharesProps {
  readonly shares: readonly NamedShare[];
  readonly width: number;
  readonly summary: string;
  /** Height of a row. */
  readonly row?: number;
}

/** What makes a range: a leader for each cause, as long as its share of the variance, ending in a dot. */
export function Shares({ shares, width, summary, row = 30 }: SharesProps) {
  const from = Math.round(width * 0.57);
  const most = Math.max(...shares.map(({ share }) => share), 0.01);
  const x = linear([0, most], [from, width - 54]);
  return (
    <svg
      class="drawing"
      width="100%"
      viewBox={`0 0 ${width} ${shares.length * row + 4}`}
      role="img"
      aria-label={summary}
    >
      {shares.map(({ name, share }, index) => {
        const y = index * row + row / 2 + 2;
        return (
          <g key={name}>
            <text x="0" y={y + 5}>
              {name}
            </text>
            <path class="line-scale" d={`M${from} ${y - 8}v16`} />
            <path class="line-dimension" d={`M${from} ${y}H${px(x(share))}`} />
            <circle class="dot" cx={px(x(share))} cy={y} r="5" />
            <text class="end strong" x={width} y={y + 5}>
              {Math.round(share * 100)} %
            </text>
          </g>
        );
      })}
    </svg>
  );
}
