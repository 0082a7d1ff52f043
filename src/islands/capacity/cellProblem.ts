/** The sentence beside a figure of the maker's table that cannot be used. */
import { quantityOf } from '~/job/quantities.ts';
import type { Cell } from '~/job/ratingGrid.ts';
import type { UnitKey } from '~/job/types.ts';
import { problemWords } from '~/words/en/problems.ts';
import { quantityWords } from '~/words/en/quantities.ts';
import { inUnitOf, joined } from '../show.ts';

const decimals = (unit: UnitKey) => (unit === 'btuh' ? 0 : 1);

export function cellProblem({ read, quantity, text }: Cell, unit: UnitKey): string | null {
  if (read.state !== 'bad') return null;
  const key = `rating.${quantity}` as const;
  const { usual, kind } = quantityOf(key);
  const shown = (si: number) => inUnitOf(si, unit, decimals(unit));
  return (
    problemWords[read.code]?.({
      text: text.trim().slice(0, 24),
      name: quantityWords[key].inSentence,
      low: shown(read.min).number,
      high: joined(shown(read.max)),
      usual: `${shown(usual[0]).number} to ${joined(shown(usual[1]))}`,
      kind,
    }) ?? read.code
  );
}
