import { CellPicture } from '~/charts/tryIt/CellPicture.tsx';
import { displayUnit } from '~/job/units.ts';
import { tryCell as words } from '~/words/en/tryCell.ts';
import { system } from '../../jobStore.ts';
import { capacity, inUnitOf, joined, percent, temperature } from '../../show.ts';
import type { Ahead } from './ahead.ts';
import { TryIt } from './TryIt.tsx';
import { useAhead } from './useAhead.ts';

interface Props {
  readonly figures: Ahead<readonly [cool: number, hot: number, between: number]>;
  /** What is printed, W, column by column. */
  readonly corners: readonly [readonly [number, number], readonly [number, number]];
}

/** A total read between four printed ones: up each side, then across. */
export function Cell({ figures, corners }: Props) {
  const {
    values: [outdoors = 0, wetBulb = 0],
    row: [cool, hot, between],
    control,
  } = useAhead(figures);
  const [columns, rows] = figures.dials.map(({ stops }) => [stops[0] ?? 0, stops.at(-1) ?? 1] as const) as [
    readonly [number, number],
    readonly [number, number],
  ];
  const across = (outdoors - columns[0]) / (columns[1] - columns[0]);
  const up = (wetBulb - rows[0]) / (rows[1] - rows[0]);
  // A table is read to its last digit: what is rounded to hundreds everywhere else would hide the steps.
  const unit = displayUnit.power[system.value];
  const exact = (watts: number) => inUnitOf(watts, unit);
  const number = (watts: number) => exact(watts).number;
  const heads = columns.map((at) => words.column(temperature(at))) as [string, string];
  const said = words.said(
    temperature(wetBulb),
    temperature(outdoors),
    percent(up),
    percent(across),
    joined(capacity(between)),
  );
  return (
    <TryIt
      id="cell"
      controls={[control(0, words.outdoors, temperature(outdoors)), control(1, words.wetBulb, temperature(wetBulb))]}
      draw={(width) => (
        <CellPicture
          across={across}
          up={up}
          width={width}
          words={{
            columns: heads,
            rows: rows.map(temperature) as [string, string],
            row: words.row,
            figures: corners.map((column) => column.map(number)) as [[string, string], [string, string]],
            cool: number(cool),
            hot: number(hot),
            between: number(between),
            summary: said,
          }}
        />
      )}
      said={said}
      table={words.table}
      lines={[
        { name: words.rows.along(heads[0]), ...exact(cool) },
        { name: words.rows.along(heads[1]), ...exact(hot) },
        { name: words.rows.across, ...exact(between), sum: true },
      ]}
      caption={words.caption}
    />
  );
}
