/** How the figures of a question are written in the units of the page. */
import type { NumberControl, Tell, TellName } from '~/job/classroom/lessons/types.ts';
import { displayUnit, type UnitKey } from '~/job/units.ts';
import { height, type Texts } from '~/words/en/lessonQuestions.ts';
import { factText } from '../classroom/said.ts';
import { system } from '../jobStore.ts';
import { capacityText, inUnitOf, joined, ofKind, percent, sizeText } from '../show.ts';

/** Figures that are not written as others of their kind are. */
const own: Readonly<Partial<Record<TellName, (si: number) => string>>> = {
  altitude: (si) => (si === 0 ? height.sea : height.above(factText({ name: 'altitude', kind: 'length', value: si }))),
  tons: sizeText,
  blowerPower: (si) => joined(inUnitOf(si, 'watt', 0)),
  uncertainty: (si) => joined(inUnitOf(si, 'percent', 1)),
  humidityLimit: (si) => joined(inUnitOf(si, 'percent', Number.isInteger(Math.round(si * 1000) / 10) ? 0 : 1)),
};

export function tellText({ name, kind, value }: Tell): string {
  const written = own[name];
  if (written) return written(value);
  if (kind === 'power') return capacityText(value);
  // Whole figures are told as such.
  return joined(ofKind(kind, value)).replace('.0\u00a0°', '\u00a0°');
}

export const textsOf =
  (told: readonly Tell[]): Texts =>
  (name) => {
    const found = told.find((one) => one.name === name);
    return found ? tellText(found) : '';
  };

/** What a guess is typed in. */
export const guessUnit = (kind: NumberControl['kind']): UnitKey => displayUnit[kind][system.value];

/** Guess and answer alike. */
export function answerText({ kind, decimals }: Pick<NumberControl, 'kind' | 'decimals'>, si: number): string {
  if (kind === 'power') return capacityText(si);
  if (kind === 'temperature') return joined(ofKind(kind, si));
  return decimals === 0 ? percent(si) : joined(inUnitOf(si, 'percent', decimals));
}
