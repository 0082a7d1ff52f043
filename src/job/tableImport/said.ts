import type { Fix, Said } from './types.ts';

/** What is said of a sheet after a fix was taken up. */
export function withFix(said: Said, fix: Fix): Said {
  if (fix.kind === 'join') return { ...said, joined: true };
  if (fix.kind === 'meaning') {
    return { ...said, meanings: { ...said.meanings, [fix.id]: { role: fix.role, unit: fix.unit } } };
  }
  const cells = Object.fromEntries(fix.cells.map(({ row, column, text }) => [`${row}/${column}`, text]));
  return { ...said, cells: { ...said.cells, ...cells } };
}
