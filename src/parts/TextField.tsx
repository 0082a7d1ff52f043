export interface TextFieldProps {
  readonly id: string;
  readonly name: string;
  readonly value: string;
  readonly long?: boolean;
  readonly onInput: (text: string, input: HTMLInputElement | HTMLTextAreaElement) => void;
}

/** Words to type: a name, a model number, a note. */
export function TextField({ id, name, value, long, onInput }: TextFieldProps) {
  return (
    <div class="field field-text">
      <label for={id}>{name}</label>
      <div class="field-box">
        {long ? (
          <textarea
            id={id}
            rows={3}
            maxLength={2000}
            value={value}
            onInput={(event) => onInput(event.currentTarget.value, event.currentTarget)}
          />
        ) : (
          <input
            id={id}
            type="text"
            autocomplete="off"
            maxLength={200}
            enterKeyHint="next"
            value={value}
            onInput={(event) => onInput(event.currentTarget.value, event.currentTarget)}
          />
        )}
      </div>
    </div>
  );
}
