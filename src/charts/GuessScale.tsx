import { ticks } from 'd3-array';
import { textWidth } from './box.ts';
import { linear, px } from './scale.ts';

export interface GuessRow {
  readonly label: string;
  readonly by: 'given' | 'guess' | 'answer' | 'agreed';
  /** On the scale; none as long as nothing is said. */
  readonly values: readonly number[];
  /** Of a range, where it ends at the top. */
  readonly top?: number | null;
}

export interface GuessScaleProps {
  /** What an answer is on the scale: a bar from its low end, the first part of a bar, the low end of a range, a place. */
  readonly look: 'bar' | 'parted' | 'range' | 'place';
  readonly pen: 'measured' | 'should';
  readonly ends: readonly [low: number, high: number];
  readonly unit: string;
  readonly rows: readonly GuessRow[];
  /** What the blank part of a parted bar is. */
  readonly rest: string;
  readonly width: number;
  readonly summary: string;
  /** Where somebody taps or drags, on the scale. */
  readonly onPlace?: ((value: number) => void) | undefined;
}

/** A row has its name above what is drawn of it, in letters of up to twenty. */
const ROW = { height: 64, name: 20, top: 28, deep: 24 } as const;
const MIDDLE = ROW.top + ROW.deep / 2;
const RING = 6;

/** Guess and result under one another on one scale: a guess ends in a ring, a result in a thick pen, what was given in a dot. */
export function GuessScale(props: GuessScaleProps) {
  const { look, pen, ends, unit, rows, rest, width, summary, onPlace } = props;
  const range: [number, number] = [12, width - 28];
  const x = linear(ends, range);
  const back = linear(range, ends);
  const axis = ROW.height * rows.length + 4;
  const apart = unit === '%' ? 0 : 24;
  const place = (event: PointerEvent) => {
    const svg = event.currentTarget as SVGSVGElement;
    const { left, width: wide } = svg.getBoundingClientRect();
    onPlace?.(Math.min(ends[1], Math.max(ends[0], back(((event.clientX - left) / wide) * width))));
  };
  const grip = onPlace && {
    onPointerDown: (event: PointerEvent) => {
      (event.currentTarget as SVGSVGElement).setPointerCapture(event.pointerId);
      place(event);
    },
    onPointerMove: (event: PointerEvent) => event.buttons > 0 && place(event),
  };
  return (
    <svg
      class={onPlace ? 'drawing guess-scale' : 'drawing'}
      width="100%"
      viewBox={`0 0 ${width} ${axis + 34 + apart}`}
      role="img"
      aria-label={summary}
      {...grip}
    >
      <Axis x={x} at={axis} width={width} ends={ends} unit={unit} />
      {rows.map((row, index) => (
        <g key={row.label} transform={`translate(0 ${index * ROW.height})`}>
          {row.by === 'agreed' ? (
            <path class="line-agreed" d={`M${px(x(row.values[0] ?? 0))} ${ROW.top}V${axis - index * ROW.height}`} />
          ) : (
            <Shape row={row} look={look} pen={pen} x={x} width={width} />
          )}
          <text class="clear" x="0" y={ROW.name}>
            {row.label}
          </text>
          {look === 'parted' && row.values.length > 0 && (
            <text class="end quiet" x={width} y={ROW.name}>
              {rest}
            </text>
          )}
        </g>
      ))}
    </svg>
  );
}

interface AxisProps extends Pick<GuessScaleProps, 'ends' | 'unit' | 'width'> {
  readonly x: (value: number) => number;
  readonly at: number;
}

function Axis({ x, at, width, ends, unit }: AxisProps) {
  const places = ticks(ends[0], ends[1], width > 500 ? 6 : unit === '%' ? 3 : 2);
  const labels = places.map((t, index) => ({
    at: x(t),
    text: `${t.toLocaleString('en')}${unit === '%' && index === places.length - 1 ? '\u00a0%' : ''}`,
  }));
  // The last one stays on the paper, in letters of twenty too.
  const isCut = (one: (typeof labels)[number]) => one.at + textWidth(one.text, 20) / 2 > width - 8;
  return (
    <>
      <path class="line-scale" d={`M0 ${at}H${width}${labels.map((one) => `M${px(one.at)} ${at}v8`).join('')}`} />
      {labels.map((one) => (
        <text key={one.text} class={isCut(one) ? 'end' : 'middle'} x={isCut(one) ? width : px(one.at)} y={at + 28}>
          {one.text}
        </text>
      ))}
      {unit !== '%' && (
        <text class="end" x={width} y={at + 52}>
          {unit}
        </text>
      )}
    </>
  );
}

interface ShapeProps extends Pick<GuessScaleProps, 'look' | 'pen' | 'width'> {
  readonly row: GuessRow;
  readonly x: (value: number) => number;
}

function Shape({ row: { by, values, top }, look, pen, x, width }: ShapeProps) {
  const places = values.map((value) => px(x(value)));
  const at = places[0];
  const line = by === 'answer' ? `line-${pen}` : by === 'guess' ? 'line-dimension' : 'line-sum';
  return (
    <>
      {look === 'place' && <path class="line-grid" d={`M0 ${MIDDLE}H${width}`} />}
      {at !== undefined && look === 'bar' && <path class={line} d={`M12 ${MIDDLE}H${at}`} />}
      {at !== undefined && look === 'parted' && (
        <Bar from={12} to={at} end={width - 28} fill={by === 'answer' ? 'url(#hatch-drying)' : 'none'} />
      )}
      {at !== undefined && look === 'range' && by !== 'given' && (
        <Bar from={at} to={px(x(top ?? 0))} end={null} fill={by === 'answer' ? 'url(#hatch-measured)' : 'none'} />
      )}
      {places.map((one) => (
        <End key={one} at={one} by={by} />
      ))}
    </>
  );
}

/** A bar that is filled from one place to another, and blank from there to its end. */
function Bar({ from, to, end, fill }: { from: number; to: number; end: number | null; fill: string }) {
  const box = { x: from, y: ROW.top, width: px(Math.max(0, to - from)), height: ROW.deep };
  return (
    <>
      <rect {...box} fill={fill} />
      <rect {...box} class="outline" />
      {end !== null && <rect class="outline" x={to} y={ROW.top} width={px(Math.max(0, end - to))} height={ROW.deep} />}
    </>
  );
}

function End({ at, by }: { at: number; by: GuessRow['by'] }) {
  if (by === 'given') return <circle class="dot" cx={at} cy={MIDDLE} r="5" />;
  if (by === 'answer') return <path class="line-measured" d={`M${at} ${ROW.top - 2}v${ROW.deep + 4}`} />;
  return <circle class="aim" cx={at} cy={MIDDLE} r={RING} />;
}
