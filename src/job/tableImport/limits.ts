/** What is taken in at all, and what one job holds. Beyond it a sentence is said, and nothing is tried. */
export const importLimits = {
  bytes: 20 * 1024 * 1024,
  rows: 50_000,
  columns: 2_000,
  /** Figures looked at: a sheet with more is no table of one machine. */
  figures: 20_000,
} as const;
