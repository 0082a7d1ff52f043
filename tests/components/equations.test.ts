import { readdirSync, readFileSync } from 'node:fs';
import katex from 'katex';
import { describe, expect, test } from 'vitest';
import { equationsIn } from '../../src/components/equations.ts';
import { equationTex } from '../../src/components/equationTex.ts';
import { everyStep } from '../../src/components/everyStep.ts';
import { type EquationGroup, groups } from '../../src/words/en/symbols.ts';

const calc = new URL('../../src/calc/', import.meta.url);
const names = Object.keys(groups) as EquationGroup[];
const set = (equation: string) => katex.renderToString(equationTex(equation), { output: 'mathml', strict: 'error' });

test.each([
  ['Q = ṁ·(h₁ − h₂)', 'Q=\\dot{m}\\cdot \\left(h_{1}-h_{2}\\right)'],
  ['W = ε·pₛ/(p − pₛ)', 'W=\\frac{ε\\cdot p_{s}}{p-p_{s}}'],
  ['t*₂', 't_{2}^{* }'],
  ['t₁′', 't_{1}^{\\prime }'],
  ['qᵦ = Pᵦ', 'q_{\\beta }=P_{\\beta }'],
  ['w = √(2·p/ρ)', 'w=\\sqrt{\\frac{2\\cdot p}{ρ}}'],
  ['pₛ(t)', 'p_{s}\\left(t\\right)'],
  ['(a + b)·(c + d)/2', '\\frac{\\left(a+b\\right)\\cdot \\left(c+d\\right)}{2}'],
  ['−2·lg(x)', '{-2\\cdot \\operatorname{lg} \\left(x\\right)}'],
  ['ΔQ', '\\Delta Q'],
])('%s is set as %s', (equation, tex) => {
  expect(equationTex(equation)).toBe(tex);
});

test.each(['', 'Q = ', 'a·', '(a', 'a)', 'a ? b'])('"%s", which is no equation, is refused', (text) => {
  expect(() => equationTex(text)).toThrow(/cannot set/);
});

describe.each(names)('the equations of %s', (group) => {
  const { equations, letters } = equationsIn(group);

  test('can all be set, and so can their letters', () => {
    expect(equations.length).toBeGreaterThan(2);
    for (const one of [...equations.map(({ equation }) => equation), ...letters.map(({ letter }) => letter)])
      expect(set(one), one).toContain('<math');
  });

  test('use every letter that is explained', () => {
    const used = letters.map(({ letter }) => letter);
    expect(Object.keys(groups[group].letters).filter((letter) => !used.includes(letter))).toEqual([]);
  });
});

test('every equation that stands in the calculation stands on the page', () => {
  const files = readdirSync(calc, { recursive: true, encoding: 'utf8' }).filter((path) => path.endsWith('.ts'));
  const code = files.map((path) => readFileSync(new URL(path, calc), 'utf8')).join('\n');
  const written = [...code.matchAll(/equation: (?:[^\n?]*\? )?'([^']+)'(?: : '([^']+)')?/g)].flatMap((found) =>
    found.slice(1).filter((one) => one !== undefined),
  );
  const traced = new Set(everyStep().map(({ equation }) => equation));
  // What an instrument shows as velocity is taken as it is: no step of working.
  const none = ['w = w'];
  expect(written.length).toBeGreaterThan(50);
  expect(written.filter((equation) => !traced.has(equation) && !none.includes(equation))).toEqual([]);
});
