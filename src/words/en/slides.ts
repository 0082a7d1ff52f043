/** Words of a value on a scale: a slider and its field. */
export const slides = {
  name: (name: string) => `${name}, slide`,
  check: 'Check:',
  between: (low: string, high: string) => `Type a number from ${low} to ${high}.`,
} as const;
