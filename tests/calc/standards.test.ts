/** What a standard says of two probes: known errors are taken off, their uncertainty kept. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { heldAgainst, standards } from '../../src/calc/confidence/standards.ts';
import { assess } from '../../src/calc/index.ts';
import { corrected, weightsOf } from '../../src/calc/sideBySide.ts';
import type { SideBySide, Test } from '../../src/calc/types.ts';
import { wholeTest } from './testCase.ts';

const references = ['neither', 'entering', 'leaving'] as const;
const limits = { standard: 0.01, probes: 0.03 };

describe('two probes held against a standard', () => {
  /** Two probes with errors of their own, held against it and compared; then read in air that is known. */
  const errors = fc.record({
    entering: fc.double({ min: -0.05, max: 0.05, noNaN: true }),
    leaving: fc.double({ min: -0.05, max: 0.05, noNaN: true }),
    reference: fc.constantFrom(...references),
    shown: fc.constantFrom('entering', 'leaving', 'both'),
  });

  test('read the truth again after difference and shared error are taken off, whichever of them was held against it', () => {
    fc.assert(
      fc.property(errors, ({ entering, leaving, reference, shown }) => {
        const weights = weightsOf(reference);
        const held = heldAgainst(
          { entering: shown === 'leaving' ? null : entering, leaving: shown === 'entering' ? null : leaving },
          entering - leaving,
          weights.leaving,
          limits,
        )!;
        const known = { dryBulb: 0, humidity: held.error };
        const difference = { dryBulb: 0, humidity: entering - leaving, scatter: null };
        const sideBySide: SideBySide = {
          returnAir: difference,
          supplyAir: null,
          reference,
          drift: null,
          shared: { dryBulb: null, humidity: held.limit, error: known },
        };
        const read: Test = {
          ...wholeTest,
          entering: { ...wholeTest.entering, relativeHumidity: 0.5 + entering },
          leaving: { ...wholeTest.leaving, relativeHumidity: 0.85 + leaving },
          sideBySide,
        };
        const right = corrected(read);
        expect(right.entering.relativeHumidity).toBeCloseTo(0.5, 12);
        expect(right.leaving.relativeHumidity).toBeCloseTo(0.85, 12);
      }),
      { numRuns: 60 },
    );
  });

  test('are corrected only by more than the standard can be out, and never widen the range by it', () => {
    fc.assert(
      fc.property(fc.double({ min: -0.06, max: 0.06, noNaN: true }), (error) => {
        const held = heldAgainst({ entering: error, leaving: error }, 0, 0.5, limits)!;
        expect(held.correction).toBe(Math.abs(error) > 0.01 ? held.error : 0);
        // What is left of the error is within what is left in doubt.
        expect(Math.abs(held.error - held.correction)).toBeLessThanOrEqual(held.limit);
        expect(held.limit).toBeGreaterThanOrEqual(0.01);
        if (held.correction === 0) expect(held.limit).toBeLessThanOrEqual(0.03);
      }),
      { numRuns: 60 },
    );
    expect(heldAgainst({ entering: null, leaving: null }, 0.01, 0.5, limits)).toBeNull();
  });

  test('whose standard stays within its limit keep their data sheet, where that is narrower', () => {
    const held = heldAgainst({ entering: 0.009, leaving: 0.009 }, 0, 0.5, { standard: 0.01, probes: 0.01 })!;
    expect([held.correction, held.limit]).toEqual([0, 0.01]);
  });
});

test('a shared humidity error of 3 % that is taken off moves the capacity by about a twentieth, and narrows the range of the share', () => {
  const alike = { dryBulb: 0, humidity: 0, scatter: null };
  const compared: SideBySide = { returnAir: alike, supplyAir: alike, reference: 'neither', drift: null, shared: null };
  const error = { dryBulb: 0, humidity: -0.03 };
  const limit = heldAgainst({ entering: -0.03, leaving: null }, 0, 0.5, {
    standard: standards.salt.limit,
    probes: 0.03,
  })!;
  const plain = assess({ ...wholeTest, sideBySide: compared });
  const held = assess({
    ...wholeTest,
    sideBySide: { ...compared, shared: { dryBulb: null, humidity: limit.limit, error } },
  });
  if (!plain.measured.ok || !held.measured.ok || !plain.ratio.ok || !held.ratio.ok) throw new Error('no figures');
  // +3 % on both probes moves the capacity by 5.3 % (computed outside, worked capacity example).
  expect(held.measured.value.total / plain.measured.value.total - 1).toBeCloseTo(0.053, 2);
  expect(held.ratio.value.u).toBeLessThan(plain.ratio.value.u);
});
