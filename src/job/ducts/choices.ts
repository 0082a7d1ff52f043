/** What is chosen of the ducts outside the rooms. */
export const ductChoices = {
  /** What is around them: an attic by its roof, or a place whose temperature is typed. */
  'ducts.where': {
    values: [
      'ventedDarkShingle',
      'ventedLightShingle',
      'ventedDarkShingleRadiantBarrier',
      'ventedLightShingleRadiantBarrier',
      'darkClayTile',
      'reflectiveMetal',
      'unvented',
      'unventedRadiantBarrier',
      'other',
    ],
  },
  /** As printed on the wrap, or none. */
  'ducts.insulation': { values: ['bare', 'r4', 'r6', 'r8'] },
} as const;
