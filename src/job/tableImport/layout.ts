import { blocksIn } from './blocks.ts';
import { kindOf } from './cell.ts';
import { tidyIn } from './tidy.ts';
import type { Layout, Role, Sheet } from './types.ts';
import { roleIn } from './vocabulary.ts';

/** Which cells of a sheet belong together, and what they are likely to be; `null` where nothing in it looks like figures. */
export function layoutOf(sheet: Sheet): Layout | null {
  return (hasTidyHeads(sheet) ? tidyIn(sheet) : null) ?? blocksIn(sheet) ?? tidyIn(sheet);
}

const named: readonly Role[] = ['outdoorDryBulb', 'enteringWetBulb', 'total'];

/**
 * Whether a row names both temperatures and the total, each in a cell of its own, and figures begin right below all three: then
 * every line has its own, though merged cells leave most of a column empty, as in blocks.
 */
function hasTidyHeads(sheet: Sheet): boolean {
  return sheet.some((cells, row) => {
    const below = sheet[row + 1];
    if (!below || cells.length < named.length || cells.some((cell) => kindOf(cell) === 'number')) return false;
    const roles = cells.map(roleIn);
    return named.every(
      (role) =>
        roles.filter((one) => one === role).length === 1 && kindOf(below[roles.indexOf(role)] ?? '') === 'number',
    );
  });
}
