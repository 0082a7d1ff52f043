/** Where a blower's curve meets that of its ducts, before and after a change. Numbers come in the units that are shown. */
import { ticks } from 'd3-array';
import { textWidth } from '../box.ts';
import { linear, px } from '../scale.ts';
import { wrapped } from '../wrap.ts';

export interface CurvePoint {
  readonly flow: number;
  readonly static: number;
}

export interface DuctCurveProps {
  readonly blower: readonly CurvePoint[];
  /** The ducts as they were and as they are; with the point where each meets the blower. */
  readonly before: { readonly curve: readonly CurvePoint[]; readonly at: CurvePoint };
  readonly after: { readonly curve: readonly CurvePoint[]; readonly at: CurvePoint | null };
  readonly width: number;
  readonly words: {
    readonly flow: string;
    readonly static: string;
    readonly blower: string;
    readonly before: string;
    readonly after: string;
    readonly summary: string;
  };
}

const [left, bottom] = [52, 250];
/** As large as letters get: names of the axes are broken for these. */
const largest = 20;

export function DuctCurve({ blower, before, after, width, words }: DuctCurveProps) {
  const right = width - 12;
  const title = wrapped(words.static, width - left, largest);
  const top = 12 + title.length * 22;
  const height = bottom + 52;
  const mostFlow = Math.max(...blower.map(({ flow }) => flow)) * 1.06;
  const mostStatic = Math.max(...blower.map((point) => point.static)) * 1.04;
  const x = linear([0, mostFlow], [left, right]);
  const y = linear([0, mostStatic], [bottom, top]);
  const inside = (points: readonly CurvePoint[]) =>
    points.filter((point) => point.static <= mostStatic && point.flow <= mostFlow);
  const path = (points: readonly CurvePoint[]) =>
    inside(points)
      .map((point, index) => `${index === 0 ? 'M' : 'L'}${px(x(point.flow))} ${px(y(point.static))}`)
      .join('');
  const changed = after.at !== null && Math.abs(after.at.flow / before.at.flow - 1) > 0.002;
  return (
    <svg class="drawing" width="100%" viewBox={`0 0 ${width} ${height}`} role="img" aria-label={words.summary}>
      <path class="line-scale" d={`M${left} ${top}V${bottom}H${right}`} />
      {ticks(0, mostFlow, 4).map((tick) => (
        <g key={tick}>
          <path class="line-grid-fine" d={`M${px(x(tick))} ${top}V${bottom}`} />
          <text class="middle" x={px(x(tick))} y={bottom + 20}>
            {tick.toLocaleString('en')}
          </text>
        </g>
      ))}
      {ticks(0, mostStatic, 4).map((tick) => (
        <g key={tick}>
          <path class="line-grid-fine" d={`M${left} ${px(y(tick))}H${right}`} />
          <text class="end" x={left - 6} y={px(y(tick))} dy="0.35em">
            {tick.toLocaleString('en')}
          </text>
        </g>
      ))}
      {title.map((line, index) => (
        <text key={line} x={left} y={16 + index * 22}>
          {line}
        </text>
      ))}
      <text class="end" x={right} y={height - 6}>
        {words.flow}
      </text>
      <path class="line-saturation" d={path(blower)} />
      <path class="line-sum" d={path(before.curve)} />
      {changed && <path class="line-beyond" d={path(after.curve)} />}
      <Name at={inside(blower)[0]} x={x} y={y} dx={4} dy={-8} anchor="end">
        {words.blower}
      </Name>
      <circle class="aim" cx={px(x(before.at.flow))} cy={px(y(before.at.static))} r="6" />
      {x(before.at.flow) + 12 + textWidth(words.before, largest) > width ? (
        <Name at={before.at} x={x} y={y} dx={-12} dy={26} anchor="end">
          {words.before}
        </Name>
      ) : (
        <Name at={before.at} x={x} y={y} dx={12} dy={14}>
          {words.before}
        </Name>
      )}
      {changed && after.at && (
        <>
          <circle class="dot" cx={px(x(after.at.flow))} cy={px(y(after.at.static))} r="6" />
          <Name at={after.at} x={x} y={y} dx={-12} dy={-8} anchor="end">
            {words.after}
          </Name>
        </>
      )}
    </svg>
  );
}

interface NameProps {
  readonly at: CurvePoint | undefined;
  readonly x: (flow: number) => number;
  readonly y: (pressure: number) => number;
  readonly dx: number;
  readonly dy: number;
  readonly anchor?: 'end';
  readonly children: string;
}

function Name({ at, x, y, dx, dy, anchor, children }: NameProps) {
  if (!at) return null;
  return (
    <text class={anchor ? `clear ${anchor}` : 'clear'} x={px(x(at.flow) + dx)} y={px(y(at.static) + dy)}>
      {children}
    </text>
  );
}
