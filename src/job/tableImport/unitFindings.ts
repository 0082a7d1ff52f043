/** Whether the unit that a sheet names can be the one that its figures are in. */
import { unitLabel } from '../format.ts';
import { finding } from './finding.ts';
import { usualShare, usualUnit } from './proposed.ts';
import type { CellRead } from './rows.ts';
import type { Finding, Meaning } from './types.ts';

/** So few usual figures make a unit doubtful, when another makes nearly all of them usual. */
const doubtful = 0.4;
const likely = 0.8;

export function unitFindings(meanings: readonly Meaning[], cells: readonly CellRead[]): Finding[] {
  return meanings.flatMap((meaning): Finding[] => {
    const own = cells.filter((cell) => cell.meaning.id === meaning.id && !cell.filled);
    const [first] = own;
    if (!first) return [];
    const texts = own.slice(0, 400).map(({ text }) => text);
    const { id, role, unit } = meaning;
    const better = usualUnit(texts, role);
    if (better !== unit && usualShare(texts, role, unit) <= doubtful && usualShare(texts, role, better) >= likely) {
      const reading = unitLabel(better);
      return [
        finding('otherUnit', 'doubt', {
          spot: first,
          text: unitLabel(unit),
          reading,
          count: own.length,
          fix: { kind: 'meaning', id, role, unit: better },
        }),
      ];
    }
    return unit === 'btuh' ? inThousands(meaning, own) : [];
  });
}

/** Figures below a thousand under Btu/h are read in thousands, which is said once. */
function inThousands({ id, role }: Meaning, own: readonly CellRead[]): Finding[] {
  const having = own.filter(
    ({ read, text }) => read.state === 'read' && !read.plain && /^\d{1,3}([.,]\d{1,2})?$/.test(text),
  );
  const [first] = having;
  if (first?.read.state !== 'read') return [];
  const reading = String(Math.round(first.read.number));
  return [
    finding('inThousands', 'note', {
      spot: first,
      text: first.text,
      reading,
      count: having.length,
      fix: { kind: 'meaning', id, role, unit: 'mbh' },
    }),
  ];
}
