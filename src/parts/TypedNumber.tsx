import type { ComponentChildren } from 'preact';
import { slides } from '~/words/en/slides.ts';

export interface TypedNumberProps {
  readonly id: string;
  readonly name: string;
  readonly hint?: string | undefined;
  readonly text: string;
  readonly unit: string;
  /** What is wrong with the text. */
  readonly problem?: string | null;
  /** Cannot be typed; the hint says why. */
  readonly fixed?: boolean;
  readonly onText: (text: string) => void;
  readonly onBlur?: () => void;
  /** What stands between the field and what is said of it. */
  readonly children?: ComponentChildren;
}

/** A number to try out, that no job keeps: label, field, unit, and what is said of it. */
export function TypedNumber(props: TypedNumberProps) {
  const { id, name, hint, text, unit, problem, fixed = false, onText, onBlur, children } = props;
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
      {children}
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
