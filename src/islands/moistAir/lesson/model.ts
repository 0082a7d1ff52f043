/** What the question at the chart is, what was guessed, and whether the answer may be seen. Guesses are kept nowhere. */
import { computed, signal } from '@preact/signals';
import { saturationHumidityRatio } from '~/calc/humidityRatio.ts';
import { moistAir } from '~/calc/moistAir.ts';
import type { MoistAir } from '~/calc/types.ts';
import { chartFrame } from '~/charts/moistAir/frame.ts';
import { system } from '../../jobStore.ts';
import { noHands } from '../../predict/Hands.tsx';
import { pressure } from '../points.ts';
import { large, width } from '../view.ts';
import { figureOf, type Question, questionOf } from './questions.ts';

export const seed = signal(1);
export const shown = signal(false);

/** Texts of a guess, by the field that they are typed in. */
export const texts = signal<Readonly<Partial<Record<'dryBulb' | 'relativeHumidity' | 'wetBulb', string>>>>({});
/** The guess as air on the chart; `null` until there is one that can be. */
export const guess = signal<MoistAir | null>(null);

export const hands = signal(noHands);

export const question = computed((): Question => questionOf(seed.value, system.value, pressure.value));

/** Goes to the question of a seed, with nothing said and nothing shown. */
export function ask(next: number): void {
  seed.value = next;
  shown.value = false;
  guess.value = null;
  texts.value = {};
  hands.value = noHands;
}

export const frame = computed(() => {
  if (width.value === 0) return null;
  const { given } = question.value;
  // The answer is not part of what the chart is made around: its edges would tell where it lies.
  return chartFrame({
    system: system.value,
    pressure: pressure.value,
    width: width.value,
    view: 'whole',
    letter: large.value ? 21 : 14,
    around: given,
  });
});

/** Where a figure lies on the chart: a wet bulb on the saturation curve, a humidity at the temperature that was heated to. */
export function airOfFigure({ kind, end }: Question, si: number): MoistAir {
  if (figureOf[kind] === 'wetBulb') {
    return moistAir({
      dryBulb: si,
      humidityRatio: saturationHumidityRatio(si, pressure.value),
      pressure: pressure.value,
    });
  }
  return moistAir({ dryBulb: end, relativeHumidity: si, pressure: pressure.value });
}

/** The answer as air on the chart. */
export const answerAir = (of: Question): MoistAir =>
  of.kind === 'wetBulb' ? airOfFigure(of, of.answer.wetBulb) : of.answer;
