/** Words of the wait until steady, where it goes on while another sheet is open. */
export const waitWords = {
  notBefore: (from: string, to: string) =>
    `Waiting until steady: not before ${from}, then ten minutes of readings, to ${to}.`,
  reading: (to: string) => `Waiting until steady: ten minutes of readings, to ${to}.`,
  way: 'To the wait',
} as const;
