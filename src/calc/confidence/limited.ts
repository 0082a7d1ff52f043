import type { ErrorSource } from '../types.ts';

/** A cause with a stated limit, the half-width of a rectangle (JCGM 100:2008, 4.3.7). */
export function limited<Input extends string>(
  name: string,
  limit: number,
  moves: ErrorSource<Input>['moves'],
): ErrorSource<Input> {
  return { name, u: limit / Math.sqrt(3), shape: 'rectangular', degreesOfFreedom: null, moves };
}
