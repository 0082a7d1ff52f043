import type { ComponentChildren } from 'preact';

export interface SelectProps {
  readonly id: string;
  readonly ask: ComponentChildren;
  readonly options: Readonly<Record<string, string>>;
  readonly value: string | undefined;
  /** What stands there while nothing is chosen. */
  readonly open: string;
  readonly onChoose: (value: string, select: HTMLSelectElement) => void;
}

/** One of many: the phone's own list. */
export function Select({ id, ask, options, value, open, onChoose }: SelectProps) {
  return (
    <div class="field">
      <label for={id}>{ask}</label>
      <div class="field-box">
        <select
          id={id}
          value={value ?? ''}
          onChange={(event) => onChoose(event.currentTarget.value, event.currentTarget)}
        >
          {value === undefined && <option value="">{open}</option>}
          {Object.entries(options).map(([key, label]) => (
            <option key={key} value={key}>
              {label}
            </option>
          ))}
        </select>
      </div>
    </div>
  );
}
