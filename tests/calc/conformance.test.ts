/** Whether a value keeps to its limits: chances in closed form, guard bands on either side, and what is refused at its edge. */
import { describe, expect, test } from 'vitest';
import { CalcError, conformance } from '../../src/calc/index.ts';
import { codeOf } from './codeOf.ts';

const measured = { value: 10, u: 2 };
/** The 90 % point of the normal distribution, and its chance below 1, from any table. */
const k = 1.2815515655446004;
const belowOne = 0.841344746068543;

describe('a value and its limits', () => {
  test('with a lower limit conforms with the chance above it, and is guarded on both sides of it', () => {
    const { probability, ...ends } = conformance(measured, { lower: 8 });
    expect(probability).toBeCloseTo(belowOne, 12);
    expect(ends).toEqual({
      acceptFrom: expect.closeTo(8 + 2 * k, 9),
      acceptTo: null,
      rejectBelow: expect.closeTo(8 - 2 * k, 9),
      rejectAbove: null,
    });
  });

  test('with an upper limit conforms with the chance below it, and is guarded on both sides of it', () => {
    const { probability, ...ends } = conformance(measured, { upper: 8 });
    expect(probability).toBeCloseTo(1 - belowOne, 12);
    expect(ends).toEqual({
      acceptFrom: null,
      acceptTo: expect.closeTo(8 - 2 * k, 9),
      rejectBelow: null,
      rejectAbove: expect.closeTo(8 + 2 * k, 9),
    });
  });

  test('between two limits has the chance between them, and all four ends', () => {
    const found = conformance(measured, { lower: 8, upper: 12, confidence: 0.5 });
    expect(found.probability).toBeCloseTo(2 * belowOne - 1, 12);
    // At even chances the guard is nothing.
    expect([found.acceptFrom, found.acceptTo, found.rejectBelow, found.rejectAbove]).toEqual([8, 12, 8, 12]);
  });

  test('known to one degree of freedom has the chance of its closed form, ½ + atan(t)/π', () => {
    const found = conformance({ ...measured, degreesOfFreedom: 1 }, { lower: 8 });
    expect(found.probability).toBeCloseTo(0.75, 12);
    expect(found.acceptFrom).toBeCloseTo(8 + 2 * Math.tan(0.4 * Math.PI), 9);
    expect(conformance({ ...measured, degreesOfFreedom: null }, { lower: 8 })).toEqual(
      conformance(measured, { lower: 8 }),
    );
  });
});

describe('what is refused', () => {
  const ok = { lower: 8 };
  test.each([
    ['value', () => conformance({ ...measured, value: 1e101 }, ok), 'outOfRange'],
    ['value', () => conformance({ ...measured, value: Number.NaN }, ok), 'notFinite'],
    ['u', () => conformance({ ...measured, u: 0 }, ok), 'outOfRange'],
    ['u', () => conformance({ ...measured, u: 1e101 }, ok), 'outOfRange'],
    ['confidence', () => conformance(measured, { ...ok, confidence: 0.49 }), 'outOfRange'],
    ['confidence', () => conformance(measured, { ...ok, confidence: 0.9991 }), 'outOfRange'],
    ['degreesOfFreedom', () => conformance({ ...measured, degreesOfFreedom: 0.09 }, ok), 'outOfRange'],
    ['limit', () => conformance(measured, { lower: -1e101 }), 'outOfRange'],
    ['limit', () => conformance(measured, { upper: Number.NaN }), 'notFinite'],
    ['limits', () => conformance(measured, {}), 'missing'],
    ['upper', () => conformance(measured, { lower: 8, upper: 8 }), 'notAscending'],
  ] as const)('is a bad %s', (quantity, run, code) => {
    expect(codeOf(run)).toBe(code);
    expect(run).toThrow(new RegExp(`^${quantity}:`));
  });

  test('is nothing at the edges themselves', () => {
    expect(
      conformance({ value: -1e100, u: 1e-100, degreesOfFreedom: 0.1 }, { lower: -1e100, confidence: 0.999 })
        .probability,
    ).toBe(0.5);
    expect(
      conformance({ value: 1e100, u: 1e100, degreesOfFreedom: Number.MAX_VALUE }, { upper: 1e100, confidence: 0.5 })
        .probability,
    ).toBe(0.5);
    try {
      conformance(measured, { lower: 9, upper: 8 });
      expect.unreachable();
    } catch (error) {
      expect(error).toBeInstanceOf(CalcError);
      expect(error).toMatchObject({ code: 'notAscending', value: 8, min: 9 });
    }
  });
});
