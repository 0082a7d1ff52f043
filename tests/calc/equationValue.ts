/** What an equation of the working comes to, worked out from its text alone: nothing of the package's own arithmetic is used. */
import type { Amount, Step } from '../../src/calc/index.ts';

const functions: Readonly<Record<string, (...of: number[]) => number>> = {
  exp: Math.exp,
  max: Math.max,
  cos: Math.cos,
  lg: Math.log10,
};

/**
 * Both sides of a step's equation with its amounts put in. One that is solved backwards has its result on the right, so that is put in
 * as well. `null` where it holds a sum over a list, a function of the air, or a letter that is not among the amounts.
 */
export function equationSides({ equation, puts, gives }: Step): readonly [left: number, right: number] | null {
  const at = equation.indexOf(' = ');
  const [left, right] = [equation.slice(0, at), equation.slice(at + 3)];
  if (left === gives.symbol) {
    const value = valueIn(right, puts);
    return value === null ? null : [gives.value, value];
  }
  const sides = [left, right].map((side) => valueIn(side, [...puts, gives]));
  return sides.includes(null) ? null : (sides as [number, number]);
}

function valueIn(text: string, puts: readonly Amount[]): number | null {
  const symbols = [...puts].sort((a, b) => b.symbol.length - a.symbol.length);
  let at = 0;

  const takes = (mark: string): boolean => {
    while (text[at] === ' ') at++;
    if (!text.startsWith(mark, at)) return false;
    at += mark.length;
    return true;
  };
  const unknown = () => new SyntaxError(text.slice(at));

  function sum(): number {
    let value = takes('−') ? -term() : term();
    for (;;) {
      if (takes('+')) value += term();
      else if (takes('−')) value -= term();
      else return value;
    }
  }
  function term(): number {
    let value = power();
    for (;;) {
      if (takes('·')) value *= power();
      else if (takes('/')) value /= power();
      else return value;
    }
  }
  function power(): number {
    const value = factor();
    if (takes('²')) return value ** 2;
    if (!takes('ⁿ')) return value;
    const exponent = puts.find(({ symbol }) => symbol === 'n');
    if (!exponent) throw unknown();
    return value ** exponent.value;
  }
  function closed(mark: string): number {
    const value = sum();
    if (!takes(mark)) throw unknown();
    return value;
  }
  function factor(): number {
    while (text[at] === ' ') at++;
    // Before brackets: some letters carry what they are of in brackets.
    const amount = symbols.find(({ symbol }) => text.startsWith(symbol, at));
    if (amount) {
      at += amount.symbol.length;
      return amount.value;
    }
    if (takes('π')) return Math.PI;
    if (takes('√')) return Math.sqrt(factor());
    if (takes('(')) return closed(')');
    if (takes('|')) return Math.abs(closed('|'));
    for (const [name, of] of Object.entries(functions)) {
      if (!takes(`${name}(`)) continue;
      const given = [sum()];
      while (takes(',')) given.push(sum());
      if (!takes(')')) throw unknown();
      return of(...given);
    }
    const number = /^\d+(\.\d+)?/.exec(text.slice(at))?.[0];
    if (number === undefined) throw unknown();
    at += number.length;
    return Number(number);
  }

  try {
    const value = sum();
    if (at < text.length) throw unknown();
    return value;
  } catch (error) {
    if (error instanceof SyntaxError) return null;
    throw error;
  }
}
