import type { Amount, Kind } from './types.ts';

/** One amount of a step of working. */
export function amount(symbol: string, kind: Kind, value: number): Amount {
  return { symbol, kind, value };
}
