/** Each step of working, against its own equation: the text that a person reads, with the amounts beside it put in. */
import { expect, test } from 'vitest';
import { everyStep } from '../../src/components/everyStep.ts';
import { equationValue } from './equationValue.ts';

/** Sums over a list, and what is a function of the air or the refrigerant, which other tests hold to published figures. */
const notWorked = /Σ|[pW]ₛ[ᵈ*]?(\(t|\*$)|^pₛ| = t\*\(|ρ\(|1\/√f|·Wₛ\*|^Wₛ\(tₐ/;
/** A letter with the name of a cause or of a method behind it stands for a whole list. */
const ofList = /^(u|g|ṁ)\(|^V̇[₁-₉]$/;

test('every step comes to what its equation says, but those of sums and of functions of the air', () => {
  const worked = everyStep().filter(({ equation }) => !notWorked.test(equation));
  expect(worked.length).toBeGreaterThan(80);
  for (const step of worked) {
    const { id, equation, gives } = step;
    const value = equationValue(step) ?? Number.NaN;
    // A matching of two curves ends within some billionths of the pressure.
    expect(Math.abs(value - gives.value), `${id}: ${equation}`).toBeLessThanOrEqual(1e-7 * Math.abs(gives.value));
  }
});

test('every step says what went into it, and names all of it in its equation', () => {
  const notNamed = everyStep().flatMap(({ id, equation, puts, gives }) => {
    expect(puts, id).not.toEqual([]);
    return [gives, ...puts]
      .filter(({ symbol }) => !ofList.test(symbol) && !equation.replace('ⁿ', 'n').includes(symbol))
      .map(({ symbol }) => `${symbol} of ${equation}`);
  });
  // The airflow at which a maker's factor was read.
  expect(notNamed).toEqual(['ṁ₀ of Q₂ = Q·k']);
});

test('the terms of a sum over a list are its amounts', () => {
  const steps = everyStep();
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
