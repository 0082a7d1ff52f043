/** The upper left corner of a sheet, each cell with what it is taken for. */
import type { Layout, Meaning, Role, Sheet } from './types.ts';

export interface Preview {
  readonly rows: readonly {
    /** Its place in the sheet, from zero. */
    readonly row: number;
    readonly cells: readonly { readonly text: string; readonly role: Role }[];
  }[];
  readonly columns: number;
  readonly moreRows: number;
  readonly moreColumns: number;
}

const most = { rows: 14, columns: 14 } as const;

export function previewOf(sheet: Sheet, layout: Layout, meanings: readonly Meaning[]): Preview {
  const roles = new Map<string, Role>();
  for (const group of layout.groups) {
    for (const { row, column, meaning } of group) {
      if (row > most.rows * 4 || column > most.columns) continue;
      roles.set(`${row}/${column}`, meanings[meaning]?.role ?? 'none');
    }
  }
  const filled = sheet.flatMap((cells, row) => (cells.some((cell) => cell !== '') ? [row] : []));
  const width = filled.reduce(
    (widest, row) => Math.max(widest, (sheet[row] ?? []).findLastIndex((cell) => cell !== '') + 1),
    0,
  );
  const columns = Math.min(width, most.columns);
  const shown = filled.slice(0, most.rows);
  return {
    rows: shown.map((row) => ({
      row,
      cells: Array.from({ length: columns }, (_, column) => ({
        text: sheet[row]?.[column] ?? '',
        role: roles.get(`${row}/${column}`) ?? 'none',
      })),
    })),
    columns,
    moreRows: filled.length - shown.length,
    moreColumns: width - columns,
  };
}
