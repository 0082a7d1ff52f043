import { oblique, px } from '../scale.ts';
import { Axes, type AxisOf, lineThrough, plot, scalesOf } from './Axes.tsx';

export interface StaticsPictureProps {
  /** The blower's printed column in the units that are shown: pressure and flow. */
  readonly blower: readonly (readonly [pressure: number, flow: number])[];
  readonly supply: number;
  readonly returned: number;
  readonly flow: number;
  /** What the table would give at the supply side alone. */
  readonly supplyOnly: number;
  readonly width: number;
  readonly words: {
    readonly pressure: string;
    readonly flow: string;
    readonly supply: string;
    readonly returned: string;
    readonly supplyOnly: string;
    readonly summary: string;
  };
}

/** A blower's curve over the pressure: the two sides end to end on the scale, the airflow at their sum, and the one of half a sum. */
export function StaticsPicture(props: StaticsPictureProps) {
  const { blower, supply, returned, flow, supplyOnly, width, words } = props;
  const [least, most] = [blower.at(-1)?.[1] ?? 0, blower[0]?.[1] ?? 1];
  const x: AxisOf = { domain: [0, blower.at(-1)?.[0] ?? 1], name: words.pressure, ticks: width > 500 ? 8 : 5 };
  const y: AxisOf = { domain: [least * 0.7, most * 1.08], name: words.flow, ticks: 6 };
  const scales = scalesOf(x, y, width);
  const [nought, middle, end] = [0, supply, supply + returned].map(scales.x) as [number, number, number];
  const sides = plot.bottom - 16;
  return (
    <svg class="drawing" width="100%" viewBox={`0 0 ${width} ${plot.height}`} role="img" aria-label={words.summary}>
      <Axes x={x} y={y} width={width} />
      <path class="line-saturation" d={lineThrough(blower, scales)} />
      <path
        class="line-scale"
        d={`M${px(middle)} ${px(scales.y(supplyOnly))}V${plot.bottom}M${px(end)} ${plot.bottom}V${px(scales.y(flow))}H${plot.left}`}
      />
      <path class="line-dimension" d={`M${px(nought)} ${sides}H${px(end)}`} />
      <path class="line-end" d={[nought, middle, end].map((at) => oblique(at, sides)).join('')} />
      <Side from={nought} to={middle} y={sides - 8} name={words.supply} />
      <Side from={middle} to={end} y={sides - 8} name={words.returned} />
      <circle class="aim" cx={px(middle)} cy={px(scales.y(supplyOnly))} r="6" />
      <text class="clear" x={px(middle + 10)} y={px(scales.y(supplyOnly) - 8)}>
        {words.supplyOnly}
      </text>
      <circle class="dot" cx={px(end)} cy={px(scales.y(flow))} r="7" />
    </svg>
  );
}

/** The name of one side over its dimension line, where it has room. */
function Side({ from, to, y, name }: { from: number; to: number; y: number; name: string }) {
  if (to - from < name.length * 7) return null;
  return (
    <text class="middle clear" x={px((from + to) / 2)} y={y}>
      {name}
    </text>
  );
}
