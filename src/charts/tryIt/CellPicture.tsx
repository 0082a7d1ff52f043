import { linear, px } from '../scale.ts';

export interface CellPictureProps {
  /** Fractions of the way from the cooler to the warmer column and from the lower to the higher row. */
  readonly across: number;
  readonly up: number;
  readonly width: number;
  readonly words: {
    /** Heads: the cooler and the warmer column, the lower and the higher row. */
    readonly columns: readonly [string, string];
    readonly rows: readonly [string, string];
    /** What the rows are. */
    readonly row: string;
    /** Printed figures, column by column, the lower row first. */
    readonly figures: readonly [readonly [string, string], readonly [string, string]];
    /** Read along the wet bulb in either column, and between the two. */
    readonly cool: string;
    readonly hot: string;
    readonly between: string;
    readonly summary: string;
  };
}

const [top, bottom, height] = [56, 184, 214];

/** One cell of a table: its four figures at the corners, a step up each side, and a step across. */
export function CellPicture({ across, up, width, words }: CellPictureProps) {
  const [left, right] = [width * 0.34, width - 92];
  const x = px(linear([0, 1], [left, right])(across));
  const y = px(linear([0, 1], [bottom, top])(up));
  const sides = [px(left), px(right)] as const;
  const near = (corner: number) => Math.abs(y - corner) < 16;
  const isRight = across > 0.5;
  return (
    <svg class="drawing" width="100%" viewBox={`0 0 ${width} ${height}`} role="img" aria-label={words.summary}>
      {sides.map((side, column) => (
        <text key={side} class="quiet middle" x={side} y="16">
          {words.columns[column]}
        </text>
      ))}
      <text class="quiet" x="0" y="16">
        {words.row}
      </text>
      {words.rows.map((row, i) => (
        <text key={row} class="quiet" x="0" y={i === 0 ? bottom + 5 : top + 5}>
          {row}
        </text>
      ))}
      <path class="line-scale" d={`M${sides[0]} ${top}H${sides[1]}V${bottom}H${sides[0]}Z`} />
      <path class="line-dimension" d={`M${sides[0]} ${y}H${sides[1]}`} />
      <path class="line-cell" d={`M${sides[0]} ${bottom}V${y}M${sides[1]} ${bottom}V${y}`} />
      {words.figures.map((figures, column) =>
        figures.map((figure, row) => {
          const corner = row === 0 ? bottom : top;
          return (
            <text
              key={figure}
              class={column === 0 ? 'end clear' : 'clear'}
              x={(sides[column] ?? 0) + (column === 0 ? -10 : 10)}
              y={corner + 5}
            >
              {near(corner) ? '' : figure}
            </text>
          );
        }),
      )}
      <circle class="aim" cx={sides[0]} cy={y} r="5" />
      <circle class="aim" cx={sides[1]} cy={y} r="5" />
      <text class="end clear strong" x={sides[0] - 10} y={y + 5}>
        {words.cool}
      </text>
      <text class="clear strong" x={sides[1] + 10} y={y + 5}>
        {words.hot}
      </text>
      <circle class="dot" cx={x} cy={y} r="7" />
      <text
        class={isRight ? 'figure clear end' : 'figure clear'}
        x={x + (isRight ? -12 : 12)}
        y={y < 90 ? y + 28 : y - 14}
      >
        {words.between}
      </text>
    </svg>
  );
}
