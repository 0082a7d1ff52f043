import { leave, touch } from './fields.ts';

interface Props {
  readonly id: string;
  /** What it is for whoever does not see the heads. */
  readonly name: string;
  readonly value: string;
  readonly bad: boolean;
  /** The id of the sentence about it, where there is one. */
  readonly saidAt?: string | undefined;
  /** False when the job is only to be looked at: what stood there is put back. */
  readonly onText: (text: string) => boolean;
  readonly onFocus?: ((input: HTMLInputElement) => void) | undefined;
  /** False when the text from the clipboard is no block of figures. */
  readonly onBlock?: ((text: string) => boolean) | undefined;
}

/** A cell to type a figure into, on any sheet that has a grid of them. */
export function GridInput({ id, name, value, bad, saidAt, onText, onFocus, onBlock }: Props) {
  return (
    <input
      id={id}
      class="grid-cell"
      type="text"
      inputMode="decimal"
      enterKeyHint="next"
      autocomplete="off"
      spellcheck={false}
      maxLength={200}
      aria-label={name}
      aria-invalid={bad ? 'true' : undefined}
      aria-describedby={saidAt}
      value={value}
      onInput={({ currentTarget }) => {
        touch(id);
        if (!onText(currentTarget.value)) currentTarget.value = value;
      }}
      onBlur={leave}
      onFocus={onFocus && (({ currentTarget }) => onFocus(currentTarget))}
      onPaste={
        onBlock &&
        ((event) => {
          if (onBlock(event.clipboardData?.getData('text/plain') ?? '')) event.preventDefault();
        })
      }
    />
  );
}
