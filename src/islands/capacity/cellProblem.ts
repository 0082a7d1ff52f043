/** The sentence beside a figure of the maker's table that cannot be used. */
import { quantityOf } from '~/job/quantities.ts';
import type { Cell, Grid } from '~/job/ratingGrid.ts';
import type { UnitKey } from '~/job/types.ts';
import { problemWords } from '~/words/en/problems.ts';
import { quantityWords } from '~/words/en/quantities.ts';
import { ratingStep } from '~/words/en/steps.ts';
import { inUnitOf, joined } from '../show.ts';

const decimals = (unit: UnitKey) => (unit === 'btuh' ? 0 : 1);

export function cellProblem({ read, quantity, text, ...place }: Cell, grid: Grid): string | null {
  if (read.state !== 'bad') return null;
  const { unit } = grid;
  const key = `rating.${quantity}` as const;
  const { usual, kind } = quantityOf(key);
  const shown = (si: number) => inUnitOf(si, unit, decimals(unit));
  const sentence = problemWords[read.code]?.({
    text: text.trim().slice(0, 24),
    name: quantityWords[key].inSentence,
    low: shown(read.min).number,
    high: joined(shown(read.max)),
    usual: `${shown(usual[0]).number} to ${joined(shown(usual[1]))}`,
    kind,
  });
  return `${cellName({ quantity, ...place }, grid)}: ${sentence ?? read.code}`;
}

/** The name of a figure by its heads, for a sentence or for those who listen. */
export function cellName(
  { quantity, outdoors, wetBulb }: Pick<Cell, 'quantity' | 'outdoors' | 'wetBulb'>,
  grid: Grid,
): string {
  const name = quantityWords[`rating.${quantity}`].name;
  return ratingStep.cellName(name, grid.outdoors[outdoors]?.label ?? '', grid.wetBulbs[wetBulb]?.label ?? '');
}
