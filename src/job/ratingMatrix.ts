/** The rows of a maker's table as it is printed: outdoors across, the indoor air and the airflow down. */
import type { RatingRow } from '../calc/types.ts';

export interface MatrixLine {
  readonly enteringWetBulb: number;
  readonly enteringDryBulb: number | null;
  readonly dryAirFlow: number | null;
  /** One for each outdoor temperature; `null` where nothing stands. */
  readonly figures: readonly (Pick<RatingRow, 'total' | 'sensible'> | null)[];
}

export interface RatingMatrix {
  readonly outdoors: readonly number[];
  readonly lines: readonly MatrixLine[];
}

const rising = (a: number, b: number) => a - b;

/** SI as the rows; lines in the order of airflow, wet bulb, dry bulb. A row without a total has no place. */
export function ratingMatrix(rows: readonly RatingRow[]): RatingMatrix {
  const given = rows.filter(({ total }) => total !== null);
  const outdoors = [...new Set(given.map(({ outdoorDryBulb }) => outdoorDryBulb))].sort(rising);
  const nameOf = (row: RatingRow) => [row.dryAirFlow, row.enteringWetBulb, row.enteringDryBulb].join('/');
  const lines = [...Map.groupBy(given, nameOf).values()].flatMap((own): MatrixLine[] => {
    const [first] = own;
    if (!first) return [];
    return [
      {
        enteringWetBulb: first.enteringWetBulb,
        enteringDryBulb: first.enteringDryBulb ?? null,
        dryAirFlow: first.dryAirFlow ?? null,
        figures: outdoors.map((at) => own.find(({ outdoorDryBulb }) => outdoorDryBulb === at) ?? null),
      },
    ];
  });
  lines.sort(
    (a, b) =>
      (a.dryAirFlow ?? 0) - (b.dryAirFlow ?? 0) ||
      a.enteringWetBulb - b.enteringWetBulb ||
      (a.enteringDryBulb ?? 0) - (b.enteringDryBulb ?? 0),
  );
  return { outdoors, lines };
}
