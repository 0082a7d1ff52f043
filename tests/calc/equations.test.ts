/** Each step of working, against its own equation: the text that a person reads, with the amounts beside it put in. */
import { expect, test } from 'vitest';
import { everyStep } from '../../src/components/everyStep.ts';
import { equationValue } from './equationValue.ts';

const steps = everyStep();
const worked = steps.map((step) => ({ ...step, value: equationValue(step) }));

/** Sums over a list, and what is a function of the air or the refrigerant, which other tests hold to published figures. */
const notWorked = /Σ|[pW]ₛ[ᵈ*]?(\(t|\*$)|^pₛ| = t\*\(|ρ\(|1\/√f|·Wₛ\*|^Wₛ\(tₐ\)/;

test('every step but those of sums and of functions of the air can be worked out from its text', () => {
  expect(worked.filter(({ value, equation }) => value === null && !notWorked.test(equation))).toEqual([]);
  expect(worked.filter(({ value }) => value !== null).length).toBeGreaterThan(80);
});

test.each(worked.filter(({ value }) => value !== null))('$id: $equation', ({ value, gives }) => {
  // A matching of two curves ends within some billionths of the pressure.
  expect(Math.abs(value! - gives.value)).toBeLessThanOrEqual(1e-7 * Math.abs(gives.value));
});

test('the terms of a sum over a list are its amounts', () => {
  const added = steps.filter(({ equation }) => equation === 'V̇ = ΣV̇ᵢ');
  expect(added.length).toBeGreaterThan(0);
  for (const { puts, gives } of added)
    expect(puts.reduce((sum, { value }) => sum + value, 0)).toBeCloseTo(gives.value, 9);
  const squared = steps.filter(({ equation }) => equation === 'u = √(Σ(cᵢ·uᵢ)²)');
  expect(squared.length).toBeGreaterThan(0);
  for (const { puts, gives } of squared)
    expect(Math.hypot(...puts.map(({ value }) => value))).toBeCloseTo(gives.value, 9);
  const weighed = steps.filter(({ equation }) => equation === 'ṁ = Σgᵢ·ṁᵢ');
  expect(weighed.length).toBeGreaterThan(0);
  for (const { puts, gives } of weighed) {
    const of = (letter: string) => puts.filter(({ symbol }) => symbol.startsWith(letter)).map(({ value }) => value);
    const [weights, flows] = [of('g('), of('ṁ(')];
    expect(weights.reduce((sum, one) => sum + one, 0)).toBeCloseTo(1, 9);
    expect(weights.reduce((sum, one, index) => sum + one * flows[index]!, 0)).toBeCloseTo(gives.value, 9);
  }
});
