import type { ComponentChildren } from 'preact';
import { parts } from '~/words/en/parts.ts';
import { Check } from './Echo.tsx';

export interface FieldProps {
  readonly id: string;
  readonly name: string;
  readonly term?: string | undefined;
  readonly hint?: string | undefined;
  readonly value: string;
  readonly unit: string;
  /** How the key beside the value is spoken: what a tap does. */
  readonly unitSpoken: string;
  readonly problem?: string | null;
  /** Where what is wrong is said, when it is not said below the field. */
  readonly saidAt?: string | undefined;
  /** A quantity that may be negative gets a key for the sign: phone keyboards for numbers often have none. */
  readonly signed?: boolean;
  /** A short label to be seen where the whole name is only to be heard; '' where nothing but the box is seen. */
  readonly seen?: string | undefined;
  readonly onInput: (text: string, input?: HTMLInputElement) => void;
  readonly onBlur?: () => void;
  /** Absent where a field has one unit only. */
  readonly onUnit?: (() => void) | undefined;
  readonly children?: ComponentChildren;
}

/** A number to type, with its label above, its unit as a key, and a sentence below when it cannot be read. */
export function Field(props: FieldProps) {
  const { id, name, term, hint, value, unit, unitSpoken, problem, saidAt, signed, seen, onInput, onBlur, onUnit } =
    props;
  const described = [hint && `${id}-hint`, problem && (saidAt ?? `${id}-check`)].filter(Boolean).join(' ');
  const flip = () => onInput(/^[-−]/.test(value) ? value.slice(1) : `-${value}`);
  return (
    <div class="field" data-bad={problem ? '' : undefined}>
      <label for={id} class={seen === '' ? 'spoken' : undefined}>
        {seen ? (
          <>
            <span aria-hidden="true">{seen}</span>
            <span class="spoken">{name}</span>
          </>
        ) : (
          name
        )}{' '}
        {term && <small>({term})</small>}
      </label>
      <div class="field-box">
        {signed && (
          <button type="button" class="unit-key" onClick={flip} aria-label={parts.changeSign(name)}>
            {parts.sign}
          </button>
        )}
        <input
          id={id}
          type="text"
          inputMode="decimal"
          enterKeyHint="next"
          autocomplete="off"
          autocorrect="off"
          spellcheck={false}
          maxLength={200}
          value={value}
          aria-invalid={problem ? 'true' : undefined}
          aria-describedby={described || undefined}
          onInput={(event) => onInput(event.currentTarget.value, event.currentTarget)}
          onBlur={onBlur}
        />
        {onUnit ? (
          <button type="button" class="unit-key" onClick={onUnit} aria-label={unitSpoken}>
            {unit}
          </button>
        ) : (
          unit !== '' && <span class="unit-fixed">{unit}</span>
        )}
      </div>
      <div class="field-said">
        {hint && (
          <p class="hint" id={`${id}-hint`}>
            {hint}
          </p>
        )}
        {problem && !saidAt && <Check id={`${id}-check`}>{problem}</Check>}
        {props.children}
      </div>
    </div>
  );
}
