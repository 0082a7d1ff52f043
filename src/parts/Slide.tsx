import type { ComponentChildren } from 'preact';
import { slides } from '~/words/en/slides.ts';

export interface SlideProps {
  readonly id: string;
  readonly name: string;
  readonly hint?: string | undefined;
  /** What stands in the field, and the number that the slider stands at. */
  readonly text: string;
  readonly value: number;
  readonly unit: string;
  readonly min: number;
  readonly max: number;
  readonly step: number | 'any';
  /** What is wrong with the text. */
  readonly problem?: string | null;
  /** Cannot be moved; the hint says why. */
  readonly fixed?: boolean;
  readonly onText: (text: string) => void;
  readonly onBlur: () => void;
  readonly onSlide: (value: number) => void;
  readonly children?: ComponentChildren;
}

/** A value on a scale: a native slider, and a field for who would rather type it. */
export function Slide(props: SlideProps) {
  const { id, name, hint, text, value, unit, min, max, step, problem, fixed = false, onText, onBlur, onSlide } = props;
  const described = [hint && `${id}-hint`, problem && `${id}-check`].filter(Boolean).join(' ');
  return (
    <div class="slide-field" data-bad={problem ? '' : undefined}>
      <label for={id}>{name}</label>
      <div class="field-box">
        <input
          id={id}
          type="text"
          inputMode="decimal"
          autocomplete="off"
          spellcheck={false}
          maxLength={60}
          value={text}
          disabled={fixed}
          aria-invalid={problem ? 'true' : undefined}
          aria-describedby={described || undefined}
          onInput={(event) => onText(event.currentTarget.value)}
          onBlur={onBlur}
        />
        {unit !== '' && <span class="unit-fixed">{unit}</span>}
      </div>
      {!fixed && (
        <input
          class="slide"
          type="range"
          min={min}
          max={max}
          step={step}
          value={value}
          aria-label={slides.name(name)}
          aria-valuetext={unit === '' ? text : `${text}\u00a0${unit}`}
          onInput={(event) => onSlide(event.currentTarget.valueAsNumber)}
        />
      )}
      {hint && (
        <p class="hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      {problem && (
        <p class="check" id={`${id}-check`}>
          <b>{slides.check}</b> {problem}
        </p>
      )}
    </div>
  );
}
