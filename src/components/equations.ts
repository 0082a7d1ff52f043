/** The equations of the working, sorted for a page: each once in its group, and the letters in it. */
import type { Step } from '~/calc/index.ts';
import { type EquationGroup, groups } from '~/words/en/symbols.ts';
import { everyStep } from './everyStep.ts';

/** A step for one of several airs, blowers or lines carries its name in front, which says nothing of the equation. */
const bareId = (id: string) =>
  id.replace(/^(entering|leaving|standard|rating|first|second|end|lineRated|lineLiquid)\.(?=\w+\.|blowerHeat)/, '');

/** Under which group an id stands, by its beginning; the first that fits. */
const starts: readonly (readonly [RegExp, EquationGroup])[] = [
  [/^(standardPressure|moistAir|mix)/, 'air'],
  [/^lineSet/, 'lines'],
  [/^airflow/, 'airflow'],
  [/^ductGain/, 'ducts'],
  [/^(rated|expectation|dryOut|blowerHeat\.default)/, 'expected'],
  [/./, 'measured'],
];
const groupOf = (id: string) => starts.find(([start]) => start.test(id))![1];

/** A letter with the name of a cause or of a method behind it stands for a whole list. */
const isOfList = (symbol: string) => /^(u|g|ṁ)\(/.test(symbol);

export interface Equation {
  readonly id: string;
  readonly equation: string;
  readonly source: Step['source'];
  /** Every letter that is put in or comes out. */
  readonly symbols: readonly string[];
}

/** Every equation of a group once, in the order of the job. */
function equationsOf(group: EquationGroup): readonly Equation[] {
  const found = new Map<string, Equation>();
  for (const { id, equation, source, puts, gives } of everyStep()) {
    const bare = bareId(id);
    if (groupOf(bare) !== group || found.has(equation)) continue;
    const symbols = [gives, ...puts].map(({ symbol }) => symbol).filter((symbol) => !isOfList(symbol));
    found.set(equation, { id: bare, equation, source, symbols });
  }
  return [...found.values()];
}

/** The equations of a group, and what each letter in them means. Throws for a letter without a meaning. */
export function equationsIn(group: EquationGroup) {
  const equations = equationsOf(group);
  const meanings: Readonly<Record<string, string>> = groups[group].letters;
  const letters = [...new Set(equations.flatMap(({ symbols }) => symbols))].map((letter) => {
    const means = meanings[letter];
    if (means === undefined) throw new Error(`words/en/symbols.ts does not say what ${letter} means in ${group}`);
    return { letter, means };
  });
  return { equations, letters };
}
