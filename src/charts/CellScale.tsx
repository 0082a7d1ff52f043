/**
 * The scales along the cells of a rating table: where the reading lies between two printed heads. Positions are in
 * percent of the drawing, so that it follows the cells beside it at any width.
 */
export interface CellScaleProps {
  readonly heads: readonly number[];
  readonly at: number;
  readonly label: string;
  /** Cells of two figures each, with a smaller gap between them. */
  readonly tall?: boolean;
}

/** Middles of the cells, in percent: one cell alone, or two with a gap of a tenth between. */
const centres = (count: number, two: readonly [number, number]) => (count === 1 ? [two[0]] : two);

function position(heads: readonly number[], at: number, middles: readonly number[]): number {
  const [low, high] = heads;
  if (low === undefined || high === undefined || low === high) return middles[0] ?? 50;
  const share = Math.min(1.25, Math.max(-0.25, (at - low) / (high - low)));
  return (middles[0] ?? 0) + share * ((middles[1] ?? 0) - (middles[0] ?? 0));
}

export function ColumnScale({ heads, at, label }: CellScaleProps) {
  const middles = centres(heads.length, heads.length === 1 ? [50, 50] : [22.5, 77.5]);
  const x = position(heads, at, middles);
  return (
    <svg class="drawing cell-scale-columns" width="100%" height="36" aria-hidden="true">
      {middles.map((m) => (
        <line key={m} class="line-scale" x1={`${m}%`} x2={`${m}%`} y1="16" y2="36" />
      ))}
      <line class="line-scale" x1={`${middles[0]}%`} x2={`${middles.at(-1)}%`} y1="28" y2="28" />
      <circle class="dot" cx={`${x}%`} cy="28" r="5" />
      <text class="strong middle clear" x={`${x}%`} y="14">
        {label}
      </text>
    </svg>
  );
}

export function RowScale({ heads, at, label, tall = false }: CellScaleProps) {
  const middles = centres(heads.length, heads.length === 1 ? [50, 50] : tall ? [23.5, 76.5] : [20, 80]);
  const y = position(heads, at, middles);
  return (
    <svg class="drawing cell-scale-rows" width="84" height="100%" aria-hidden="true">
      {middles.map((m) => (
        <line key={m} class="line-scale" x1="58" x2="84" y1={`${m}%`} y2={`${m}%`} />
      ))}
      <line class="line-scale" x1="68" x2="68" y1={`${middles[0]}%`} y2={`${middles.at(-1)}%`} />
      <circle class="dot" cx="68" cy={`${y}%`} r="5" />
      {heads.length > 1 && (
        <text class="strong end clear" x="50" y={`${Math.min(61, Math.max(39, y))}%`} dy="0.35em">
          {label}
        </text>
      )}
    </svg>
  );
}
