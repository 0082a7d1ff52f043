/** Words at the cells of a grid. */
const joined = (...names: readonly string[]) => names.filter(Boolean).join(', ');

export const gridWords = {
  airflow: 'Airflow',
  cell: (row: string, column: string) => joined(row, column),
  at: (cell: string, sentence: string) => `${cell}: ${sentence}`,
  noVelocity: (text: string) =>
    `${text} is no velocity. The probe stands the wrong way, a hole is blocked, or air comes back there. Read it again.`,
} as const;
