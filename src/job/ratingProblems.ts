import { type FieldProblem, problemOf } from './problems.ts';
import type { RatingGrid } from './ratingGrid.ts';

/** The heads, airflows and figures of the maker's table that cannot be used, with the reason. */
export function ratingProblems(grid: RatingGrid): readonly FieldProblem[] {
  if (grid.state === 'waiting') return [];
  const heads = [...grid.outdoors, ...grid.wetBulbs].filter(({ problem }) => problem === 'equal');
  const [first, second] = grid.airflows;
  const sameAirflow = first?.state === 'read' && second?.state === 'read' && first.si === second.si;
  return [
    ...heads.map(({ key }): FieldProblem => ({ key, code: 'equal' })),
    ...(sameAirflow ? [{ key: 'rating.airflowSecond', code: 'equal' } as const] : []),
    ...grid.cells.flatMap((cell) => problemOf(cell.key, cell.read)),
  ];
}
