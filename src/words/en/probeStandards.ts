/** Words of what the probes showed of a standard. */
export const standardWords = {
  legend: { iceBath: 'In the ice bath', salt: 'Over the salt', aspirated: 'Beside the aspirated wet bulb' },
  cells: { entering: 'Return probe showed', leaving: 'Taped probe showed', known: 'It should have shown' },
  agreed: {
    iceBath: 'Empty: taken as having agreed with 32.0\u00a0°F within 0.2\u00a0°F. One probe is enough.',
    salt: 'Empty: taken as having agreed with 75.3\u00a0% within 1\u00a0%. One probe is enough.',
    aspirated: 'Empty: taken as having agreed within 1\u00a0% or 0.3\u00a0°F. One probe is enough.',
  },
  corrected: (size: string, high: boolean, limit: string) =>
    `Together they read ${size} too ${high ? 'high' : 'low'}: more than the standard can be out. Both readings are ${high ? 'lowered' : 'raised'} by it, and ±${limit} stays in doubt.`,
  within: (size: string, high: boolean, limit: string) =>
    `Together they read ${size} too ${high ? 'high' : 'low'}: the standard itself may be out by as much. Nothing is moved, and ±${limit} stays in doubt.`,
  needsCheck: 'It counts once the two were compared side by side.',
  rule: 'An error that is known is taken off and its uncertainty kept (JCGM\u00a0100): that of the standard, and a quarter of the error, since it may differ in other air (our judgement). Known to ±0.2\u00a0°F: an ice bath; to ±1\u00a0%: a saturated salt; to ±1\u00a0% or ±0.3\u00a0°F: an aspirated wet bulb (common practice, no source).',
} as const;
