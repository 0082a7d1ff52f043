/** The ground of a small chart: two scales with their ticks, in the units that are shown. */
import { decimalsOf, roundStep, roundValues } from '../grid.ts';
import { linear, px } from '../scale.ts';

export interface AxisOf {
  /** In the unit that is shown. */
  readonly domain: readonly [number, number];
  readonly name: string;
  /** How many ticks there are at most; on a narrow paper fewer. */
  readonly ticks: number;
}

export const plot = { left: 50, top: 30, bottom: 196, height: 240 } as const;
const rightMargin = 14;

/** The scales of a plot on a paper of so many px. */
export const scalesOf = (x: AxisOf, y: AxisOf, width: number) => ({
  right: width - rightMargin,
  x: linear(x.domain, [plot.left, width - rightMargin]),
  y: linear(y.domain, [plot.bottom, plot.top]),
});

const ticksOf = ({ domain: [low, high], ticks }: AxisOf) => {
  const step = roundStep((high - low) / ticks);
  const decimals = decimalsOf(step);
  return roundValues(low, high, step).map((at) => ({
    at,
    text: at.toLocaleString('en', { minimumFractionDigits: decimals }).replace('-', '−'),
  }));
};

export function Axes({ x, y, width }: { readonly x: AxisOf; readonly y: AxisOf; readonly width: number }) {
  const { left, top, bottom, height } = plot;
  const scales = scalesOf(x, y, width);
  return (
    <>
      {ticksOf(x).map(({ at, text }) => {
        // A figure at the edge of the paper ends there.
        const isLast = scales.right - scales.x(at) < rightMargin;
        return (
          <g key={at}>
            <path class="line-grid-fine" d={`M${px(scales.x(at))} ${top}V${bottom}`} />
            <text class={isLast ? 'end' : 'middle'} x={isLast ? width : px(scales.x(at))} y={bottom + 18}>
              {text}
            </text>
          </g>
        );
      })}
      {ticksOf(y).map(({ at, text }) => (
        <g key={at}>
          <path class="line-grid-fine" d={`M${left} ${px(scales.y(at))}H${scales.right}`} />
          <text class="end" x={left - 7} y={px(scales.y(at))} dy="0.35em">
            {text}
          </text>
        </g>
      ))}
      <path class="line-scale" d={`M${left} ${top}V${bottom}H${scales.right}`} />
      <text x="0" y="14">
        {y.name}
      </text>
      <text class="end" x={scales.right} y={height - 6}>
        {x.name}
      </text>
    </>
  );
}

/** A line through points in the units that are shown. */
export function lineThrough(
  points: readonly (readonly [number, number])[],
  { x, y }: { readonly x: (value: number) => number; readonly y: (value: number) => number },
): string {
  return points.map(([a, b], i) => `${i === 0 ? 'M' : 'L'}${px(x(a))} ${px(y(b))}`).join('');
}
