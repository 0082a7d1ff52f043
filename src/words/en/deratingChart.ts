/** Words on the ledger of steps from the nameplate to the expectation. */
export const ledgerChart = {
  unit: (unit: string) => `${unit}, and per cent of the first figure`,
} as const;
