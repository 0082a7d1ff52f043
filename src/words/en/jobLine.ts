/** Words of the first line of a worksheet: which job, and whether it is safe. */
export const jobLine = {
  unnamed: 'New job',
  demo: 'Demo, invented',
  visitor: 'From a link',
  saved: (time: string) => `Saved ${time}`,
  notSaved: 'Not saved',
} as const;
