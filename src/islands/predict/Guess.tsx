import type { Control, NumberControl } from '~/job/classroom/lessons/types.ts';
import { unitLabel } from '~/job/format.ts';
import { readLimit } from '~/job/read.ts';
import { fromSi, toSi } from '~/job/units.ts';
import { Slide } from '~/parts/Slide.tsx';
import { TypedNumber } from '~/parts/TypedNumber.tsx';
import { badGuess, toSay } from '~/words/en/lessonQuestions.ts';
import { predict } from '~/words/en/predict.ts';
import { Few } from './Few.tsx';
import { answerText, guessUnit } from './said.ts';

/** What was said: the text of a field, or one of a few by its place. */
export interface Said {
  readonly text: string;
  readonly chosen: number | null;
}
export const nothingSaid: Said = { text: '', chosen: null };

/** What was said before the page was alive. */
export function saidEarly(id: string): Said {
  if (typeof document === 'undefined') return nothingSaid;
  const field = document.getElementById(id);
  const few = [...document.getElementsByName(id)] as HTMLInputElement[];
  const chosen = few.findIndex(({ checked }) => checked);
  return { text: field instanceof HTMLInputElement ? field.value : '', chosen: chosen < 0 ? null : chosen };
}

/** The guess that was said; `null` where there is none that could be. A number is read as any other, with or without its unit. */
export function guessOf(control: Control, { text, chosen }: Said): number | null {
  if (control.by === 'choice') return chosen;
  const found = readLimit(text, guessUnit(control.kind), control.range);
  return found.state === 'read' ? found.si : null;
}

interface Props {
  readonly id: string;
  readonly name: string;
  readonly control: Control;
  /** The few to choose from, by name. */
  readonly options: readonly string[];
  readonly said: Said;
  /** Nothing was said when it was to be shown. */
  readonly isMissing: boolean;
  readonly onSay: (said: Said) => void;
}

/** The control to say a guess with. */
export function Guess({ id, name, control, options, said, isMissing, onSay }: Props) {
  const missing = isMissing ? predict.needGuess : null;
  if (control.by === 'choice') {
    const choose = (chosen: number) => onSay({ text: '', chosen });
    return <Few id={id} options={options} chosen={said.chosen} problem={missing} onChoose={choose} />;
  }
  const unit = guessUnit(control.kind);
  const guess = guessOf(control, said);
  const [low, high] = control.range;
  const isBad = said.text.trim() !== '' && guess === null;
  const problem = isBad ? badGuess(answerText(control, low), answerText(control, high)) : missing;
  const onText = (text: string) => onSay({ text, chosen: null });
  const field = { id, name, hint: toSay[control.by], text: said.text, unit: unitLabel(unit), problem, onText };
  if (control.by === 'number') return <TypedNumber {...field} />;
  return (
    <Slide
      {...field}
      value={fromSi(guess ?? low, unit)}
      min={fromSi(low, unit)}
      max={fromSi(high, unit)}
      step={stepOf(control)}
      onSlide={(value) => onText(endText(control, toSi(value, unit)))}
    />
  );
}

/** Bar ends are shares: whole per cents, or halves of one. */
const stepOf = ({ decimals }: NumberControl) => (decimals === 0 ? 1 : 0.5);

/** What stands in the field of an end that was moved. */
export function endText(control: NumberControl, si: number): string {
  const [low, high] = control.range;
  const step = stepOf(control);
  const onStep = Math.round(fromSi(Math.min(high, Math.max(low, si)), 'percent') / step) * step;
  return onStep.toFixed(control.decimals);
}
