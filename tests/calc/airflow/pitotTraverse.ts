/** A traverse of 25 points with a Pitot tube in a straight rectangular duct, every reading alike. */
import type { Traverse } from '../../../src/calc/index.ts';
import { standardAir } from './support.ts';

const section = { shape: 'rectangular', width: 0.5, height: 0.4 } as const;
export const even = (value: number | null) => Array.from({ length: 5 }, () => new Array<number | null>(5).fill(value));
export const pitot: Traverse = {
  section,
  instrument: 'pitot',
  readings: even(12),
  air: standardAir,
  straight: { length: 10, after: 'other' },
};
