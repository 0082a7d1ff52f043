import type { Derate, DerateCause } from './types.ts';

/** The steps that put in or take off watts; the others multiply. */
const added: ReadonlySet<DerateCause> = new Set(['blowerInside', 'blowerHere']);

/**
 * The steps of an expectation with some of them left out, to see what each is worth, W: the first begins where it did, every
 * other where the one before it ended now; each keeps its factor, or its watts of blower heat. One that is left out no longer
 * applies.
 */
export function leaveOut(derates: readonly Derate[], out: ReadonlySet<DerateCause>): readonly Derate[] {
  let before = derates[0]?.before ?? 0;
  return derates.map((derate) => {
    const isOut = out.has(derate.cause);
    const after = isOut
      ? before
      : added.has(derate.cause)
        ? before + derate.after - derate.before
        : before * (derate.after / derate.before);
    const step = { ...derate, before, after, factor: after / before, ...(isOut ? { applies: false, band: 0 } : {}) };
    before = after;
    return step;
  });
}
