import { deratesOf } from './derates.ts';
import { chainOf, type ExpectationConditions } from './expectationChain.ts';
import { traceChain } from './expectationTrace.ts';
import { expectedSensible } from './expectedSensible.ts';
import type { Expectation, Installation, RatingTable, Trace } from './types.ts';

/**
 * Net capacity that this system should have here and now, W, in steps from its table: read at these temperatures; the maker's
 * factor for this indoor unit; the measured volume as if at sea level; the blower heat inside a net table added back; the line
 * set; the air pressure here, by which that volume holds less mass; this system's own blower heat taken off. Each step is
 * listed as a derate; one that does not apply has the factor 1. `sensible` is `null` where the table does not say enough.
 *
 * Throws a `CalcError` `outsideTable` (or `hole`, with the rows of the wet bulb around it) unless `beyond` is `extend`, when
 * `outside` names the axes; `notPositive` when blower heat eats all of the capacity; and what `rated` throws.
 */
export function expectedCapacity(
  table: RatingTable,
  conditions: ExpectationConditions,
  installation: Installation,
  t?: Trace,
): Expectation {
  const chain = chainOf(table, conditions, installation, true);
  if (t) traceChain(table, conditions, chain, t);
  return {
    basis: 'net',
    total: chain.steps.net,
    sensible: expectedSensible(table, conditions, chain),
    sensibleBand: table.sensibleBand,
    coil: chain.dryCoil?.coil ?? null,
    outside: chain.outside,
    derates: deratesOf(table, conditions, chain),
  };
}

/** The total of `expectedCapacity` alone, W: the same chain, for callers that ask a hundred thousand times. */
export function expectedTotal(
  table: RatingTable,
  conditions: ExpectationConditions,
  installation: Installation,
): number {
  return chainOf(table, conditions, installation).steps.net;
}
