/** How the air runs over a section of duct: velocity over the mean, from the hole to the far wall. */
import { ticks } from 'd3-array';
import { profileWords as words } from '../../words/en/airflowSection.ts';
import { linear, px } from '../scale.ts';

export interface ProfileChartProps {
  /** Of the points, as shares of the way across. */
  readonly depths: readonly number[];
  /** Of each hole: velocity over the mean of the section at each of its points; `null` where nothing is read. */
  readonly holes: readonly (readonly (number | null)[])[];
  /** The mean of each depth over all holes. */
  readonly means: readonly (number | null)[];
  readonly name: string;
}

const paper = { width: 344, height: 176 } as const;
const frame = { left: 40, right: 336, top: 12, bottom: 142 } as const;

export function ProfileChart({ depths, holes, means, name }: ProfileChartProps) {
  const all = [...holes.flat(), 1].filter((share) => share !== null);
  const most = Math.max(...all) * 1.05;
  const x = linear([0, 1], [frame.left, frame.right]);
  const y = linear([0, most], [frame.bottom, frame.top]);
  const path = (shares: readonly (number | null)[]) => pathOf(depths, shares, x, y);
  return (
    <svg class="drawing" width="100%" viewBox={`0 0 ${paper.width} ${paper.height}`} role="img" aria-label={name}>
      {ticks(0, most, 4).map((tick) => (
        <g key={tick}>
          <path class="line-grid-fine" d={`M${frame.left} ${px(y(tick))}H${frame.right}`} />
          <text class="end" x={frame.left - 6} y={px(y(tick))} dy="0.35em">
            {tick}
          </text>
        </g>
      ))}
      <path class="line-scale" d={`M${frame.left} ${frame.top}V${frame.bottom}H${frame.right}V${frame.top}`} />
      <path class="line-grid" d={`M${frame.left} ${px(y(1))}H${frame.right}`} />
      {holes.map((shares, index) => (
        <path key={index} class="line-humidity" d={path(shares)} />
      ))}
      <path class="line-measured" d={path(means)} />
      <text x={frame.left} y={paper.height - 10}>
        {words.near}
      </text>
      <text class="end" x={frame.right} y={paper.height - 10}>
        {words.far}
      </text>
    </svg>
  );
}

/** A line through the readings that are there; it breaks where one is missing. */
function pathOf(
  depths: readonly number[],
  shares: readonly (number | null)[],
  x: (share: number) => number,
  y: (share: number) => number,
): string {
  let pen = 'M';
  return depths
    .map((depth, index) => {
      const share = shares[index] ?? null;
      if (share === null) {
        pen = 'M';
        return '';
      }
      const point = `${pen}${px(x(depth))} ${px(y(share))}`;
      pen = 'L';
      return point;
    })
    .join('');
}
