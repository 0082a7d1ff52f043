/** Notes in the margin of a desk's sheet, numbered as the ledger is. */
export const margin = {
  title: 'Notes and sources',
  measured: (flow: string, difference: string) => `${flow} of dry air × ${difference}, return less supply.`,
  expected: (cells: string) => `From the figures at ${cells}. Linear inside the cell.`,
  estimate: (band: string) =>
    `From published curves through the certified capacity: an estimate; open sources differ by ${band} either way.`,
  ratio: 'Net capacity here over the net capacity that this system should have here and now.',
  seaLevel: 'Assumed: sea level.',
  limits: (dryBulb: string, humidity: string) => `Probe limits ±${dryBulb} and ±${humidity} unless you say otherwise.`,
} as const;
