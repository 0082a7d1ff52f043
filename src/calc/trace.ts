import type { Amount, Kind, Trace } from './types.ts';

/** One amount of a step of working. */
export function amount(symbol: string, kind: Kind, value: number): Amount {
  return { symbol, kind, value };
}

/** A trace whose steps carry a name in front, so that the same calculation of two things can be told apart. */
export function prefixed(trace: Trace | undefined, name: string): Trace | undefined {
  return trace && ((step) => trace({ ...step, id: `${name}.${step.id}` }));
}
