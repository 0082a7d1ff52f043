/** Words on the ledger of steps from the nameplate to the expectation. */
export const ledgerChart = {
  unit: (unit: string) => `${unit}, and % of the first figure`,
} as const;
