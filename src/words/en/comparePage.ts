/** Words that the page of two jobs comes with. */
export const comparePage = {
  title: 'Before and after',
  description: 'Two jobs of this device side by side, and whether their difference means anything.',
  say: 'Two jobs of this device side by side: whether the later one differs from the earlier by more than the readings are unsure.',
  noScript: 'The jobs are kept by your browser, and scripts are switched off.',
} as const;
