/** Words at the cells of a grid. */
const joined = (...names: readonly string[]) => names.filter(Boolean).join(', ');

export const gridWords = {
  airflow: 'Airflow',
  cell: (row: string, column: string) => joined(row, column),
  at: (row: string, column: string, sentence: string) => `${joined(row, column)}: ${sentence}`,
} as const;
