/** The sentence beside a figure of the maker's table that cannot be used. */
import { quantityOf } from '~/job/quantities.ts';
import type { Cell, Grid } from '~/job/ratingGrid.ts';
import type { UnitKey } from '~/job/types.ts';
import { type ProblemParts, problemWords } from '~/words/en/problems.ts';
import { quantityWords } from '~/words/en/quantities.ts';
import { ratingStep } from '~/words/en/steps.ts';
import { inUnitOf, joined } from '../show.ts';

const decimals = (unit: UnitKey) => (unit === 'btuh' ? 0 : 1);

export function cellProblem(cell: Cell, grid: Grid): string | null {
  const { read } = cell;
  if (read.state !== 'bad') return null;
  const sentence = problemWords[read.code]?.(cellParts(cell, grid));
  return `${cellName(cell, grid)}: ${sentence ?? read.code}`;
}

/** What sentences about such a figure are made of. */
export function cellParts({ quantity, text }: Cell, { unit }: Grid): ProblemParts {
  const key = `rating.${quantity}` as const;
  const { usual, possible, kind } = quantityOf(key);
  const shown = (si: number) => inUnitOf(si, unit, decimals(unit));
  return {
    text: text.trim().slice(0, 24),
    name: quantityWords[key].inSentence,
    low: shown(possible[0]).number,
    high: joined(shown(possible[1])),
    usual: `${shown(usual[0]).number} to ${joined(shown(usual[1]))}`,
    kind,
  };
}

/** The name of a figure by its heads, for a sentence or for those who listen. */
export function cellName(
  { quantity, outdoors, wetBulb }: Pick<Cell, 'quantity' | 'outdoors' | 'wetBulb'>,
  grid: Grid,
): string {
  const name = quantityWords[`rating.${quantity}`].name;
  return ratingStep.cellName(name, grid.outdoors[outdoors]?.label ?? '', grid.wetBulbs[wetBulb]?.label ?? '');
}
