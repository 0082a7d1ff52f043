/** What follows from a field, said under it. */
export const echoes = {
  readAs: (value: string) => `Read as ${value}.`,
  usual: (range: string) => `Usual: ${range}.`,
  typedAs: (value: string) => `Typed as ${value}.`,
  isWetBulb: (value: string) => `${value} wet bulb.`,
  isHumidity: (value: string) => `${value} relative humidity.`,
  cooler: (difference: string) => `${difference} cooler than the return.`,
  warmer: (difference: string) => `${difference} warmer than the return.`,
  usualWet: (humidity: string) => `${humidity} is usual for a wet coil.`,
  mean: (count: number, value: string) => `Mean of ${count} readings: ${value}.`,
  flowTaken: (kind: string, place: string, limit: string) => `Taken as ${kind}, ${place}, ±${limit}.`,
  flowKinds: { actual: 'actual air', standard: 'standard air', unsure: 'actual or standard air, the middle' },
  flowPlaces: { entering: 'at the return', leaving: 'at the supply', unsure: 'return or supply, the middle' },
  perTon: (value: string) => `${value}.`,
  makes: (capacity: string) => `It makes ${capacity}.`,
  should: (capacity: string) => `Here and now it should make ${capacity}.`,
  change: 'Change',
} as const;
