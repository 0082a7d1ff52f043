/**
 * An equation as the working writes it, 'Q = ṁ·(h₁ − h₂)', in the language that KaTeX sets. A product is always written with
 * a dot, so that a bracket right behind a name is what a function is given. Throws an `Error` for what it cannot read.
 */

/** What stands low or high behind a letter, by the letter that it is. */
const low = 'ₐaᵦβₑeₕhᵢiⱼjₖkₗlₘmₙnₒoₚpᵣrₛsₜtᵤuᵥv₀0₁1₂2₃3₄4₅5₆6';
const high = '²2ⁿnᵈd*∗';
const functions = ['exp', 'max', 'lg', 'cos'];
/** Names of more than one letter. */
const words = ['SHR', 'Re'];
const accents: Readonly<Record<string, string>> = { '\u0307': 'dot', '\u0304': 'bar' };

const letterOf = (pairs: string, letter: string) => {
  const place = [...pairs].indexOf(letter);
  return place % 2 === 0 ? [...pairs][place + 1] : undefined;
};

/** TeX of an equation or of a symbol. */
export function equationTex(equation: string): string {
  const letters = [...equation.normalize('NFD')];
  let at = 0;

  const fail = () => new Error(`cannot set "${equation}" at "${letters.slice(at).join('')}"`);
  const space = () => {
    while (letters[at] === ' ') at++;
  };
  const takes = (letter: string) => {
    space();
    if (letters[at] !== letter) return false;
    at++;
    return true;
  };
  const startsWith = (word: string) => letters.slice(at, at + word.length).join('') === word;

  /** Sums and relations. */
  function sum(): string {
    let tex = signed();
    for (;;) {
      space();
      const sign = ['+', '−', '=', ','].find((one) => takes(one));
      if (sign === undefined) return tex;
      tex += `${sign === '−' ? '-' : sign}${signed()}`;
    }
  }

  /** A term that may be less than nothing. */
  const signed = (): string => (takes('−') ? `{-${term()}}` : term());

  /** Products and quotients; what stands before a stroke goes over it, and the next factor alone under it. */
  function term(): string {
    let tex = factor();
    for (;;) {
      if (takes('·')) tex += `\\cdot ${factor()}`;
      else if (takes('/')) tex = `\\frac{${bare(tex)}}{${bare(factor())}}`;
      else return tex;
    }
  }

  function factor(): string {
    space();
    if (takes('Σ')) return `\\textstyle\\sum ${factor()}`;
    if (takes('√')) return `\\sqrt{${bare(factor())}}`;
    if (takes('(')) return marked(bracket());
    if (takes('|')) {
      const inside = sum();
      if (!takes('|')) throw fail();
      return `\\lvert ${inside}\\rvert`;
    }
    const number = /^\d+(\.\d+)?/.exec(letters.slice(at).join(''))?.[0];
    if (number === undefined) return name();
    at += number.length;
    return number;
  }

  function bracket(): string {
    const inside = sum();
    if (!takes(')')) throw fail();
    return `\\left(${inside}\\right)`;
  }

  function name(): string {
    const called = functions.find(startsWith);
    if (called !== undefined) {
      at += called.length;
      return `\\operatorname{${called}} ${factor()}`;
    }
    const word = words.find(startsWith);
    let tex = word === undefined ? letter() : `\\mathrm{${word}}`;
    if (word !== undefined) at += word.length;
    tex = marked(tex);
    return letters[at] === '(' && takes('(') ? tex + bracket() : tex;
  }

  function letter(): string {
    const first = letters[at];
    if (first === undefined || !/\p{L}/u.test(first)) throw fail();
    at++;
    if (first === 'Δ') return `\\Delta ${letter()}`;
    const accent = accents[letters[at] ?? ''];
    if (accent === undefined) return first;
    at++;
    return `\\${accent}{${first}}`;
  }

  /** What is marked low and high. */
  function marked(tex: string): string {
    let [below, above] = ['', ''];
    for (;;) {
      const mark = letters[at] ?? '';
      const [isLow, isHigh] = [letterOf(low, mark), letterOf(high, mark)];
      if (mark === '_') below += letters[++at];
      else if (mark === '′') above += '\\prime ';
      else if (isLow !== undefined) below += isLow === 'β' ? '\\beta ' : isLow;
      else if (isHigh !== undefined) above += isHigh === '∗' ? '* ' : isHigh;
      else break;
      at++;
    }
    return tex + (below === '' ? '' : `_{${below}}`) + (above === '' ? '' : `^{${above}}`);
  }

  const tex = sum();
  space();
  if (at < letters.length) throw fail();
  return tex;
}

/** A bracket that stands alone over or under a stroke, or under a root, needs no brackets. */
function bare(tex: string): string {
  if (!tex.startsWith('\\left(') || !tex.endsWith('\\right)')) return tex;
  const inside = tex.slice(6, -7);
  let depth = 0;
  for (const [part] of inside.matchAll(/\\left\(|\\right\)/g)) {
    depth += part === '\\left(' ? 1 : -1;
    if (depth < 0) return tex;
  }
  return inside;
}
