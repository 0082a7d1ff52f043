/** What is chosen where it is asked how sure the readings are. */
export const sureChoices = {
  /** Chances on either side of a range: nine in ten, or nineteen in twenty for disputes. */
  'sure.confidence': { values: ['nine', 'nineteen'], assumed: 'nine' },
  /** What a probe is taken for whose ± nobody has typed. */
  'probes.class': { values: ['ordinary', 'better', 'calibrated'], assumed: 'ordinary' },
  /** Whether the probes are compared in one air, or by exchanging them in the ducts. */
  'probes.how': { values: ['together', 'swapped'], assumed: 'together' },
  /** Whether one of the two probes is taken as right; else each is moved by half of their difference. */
  'probes.reference': { values: ['neither', 'entering', 'leaving'], assumed: 'neither' },
  /** What the humidity, and the temperature, of both were held against. */
  'probes.humidityStandard': { values: ['none', 'salt', 'wetBulb'], assumed: 'none' },
  'probes.iceBath': { values: ['no', 'yes'], assumed: 'no' },
} as const;
