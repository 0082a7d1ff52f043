/** Each step of working, against its own equation: the text that a person reads, with the amounts beside it put in. */
import { expect, test } from 'vitest';
import type { Step } from '../../src/calc/index.ts';
import { traceEverything } from '../../src/components/everyStep.ts';
import { equationSides } from './equationValue.ts';

/** Sums over a list, and what is a function of the air or the refrigerant, which other tests hold to published figures. */
const notWorked = /Σ|[pW]ₛ[ᵈ*]?\(t|^pₛ| = t\*\(|ρ\(|^Wₛ\(tₐ| on a straight line /;

/** Every step of every system, worked out anew for each test. */
function everyStep(): readonly Step[] {
  const steps: Step[] = [];
  traceEverything((step) => steps.push(step));
  return steps;
}

test('every step comes to what its own equation makes of the amounts beside it', () => {
  let worked = 0;
  for (const step of everyStep()) {
    const sides = equationSides(step);
    if (sides === null) {
      expect(step.equation).toMatch(notWorked);
      continue;
    }
    worked++;
    const [left, right] = sides;
    // A matching of two curves ends within some billionths of the pressure.
    if (!(Math.abs(left - right) <= 1e-7 * Math.abs(left)))
      expect.fail(`${step.id}: ${step.equation}, ${left} and ${right}`);
  }
  expect(worked).toBeGreaterThan(300);
});

/** A letter with the name of a cause or of a method behind it stands for a whole list. */
const ofList = /^(u|g|ṁ)\(|^V̇[₁-₉]$/;
/** The airflow at which a maker's factor was read, although the letter of the factor does not say so. */
const readAt = /^ṁ₀ of Q₂ = Q₁?·k$/;
/** Functions of the air, of the refrigerant and of numbers, and the small raised letter that stands for the exponent n. */
const functions = /pₛ[ᵈ*]?\(|Wₛ\(|t\*?\(|ρ\(|exp|max|cos|lg|π/g;

test('every letter of an equation is among its amounts, and every amount is in the equation', () => {
  for (const { id, equation, puts, gives } of everyStep()) {
    expect(puts, id).not.toEqual([]);
    const text = equation.replace('ⁿ', '^n');
    const symbols = [gives, ...puts].map(({ symbol }) => symbol).sort((a, b) => b.length - a.length);
    const isExcused = (symbol: string) => ofList.test(symbol) || readAt.test(`${symbol} of ${equation}`);
    const idle = symbols.filter((symbol) => !text.includes(symbol) && !isExcused(symbol));
    const rest = symbols.reduce((left, symbol) => left.replaceAll(symbol, ''), text).replace(functions, '');
    const unsaid = /straight line|Σ/.test(equation) ? [] : (rest.match(/\p{L}+/gu) ?? []);
    if (idle.length + unsaid.length > 0) expect.fail(`${id}: ${equation}, ${idle} not in it, ${unsaid} not said`);
  }
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
