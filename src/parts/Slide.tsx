export interface SlideProps {
  readonly id: string;
  /** How it is called by those who listen: its field beside it has the name already. */
  readonly name: string;
  readonly min: number;
  readonly max: number;
  readonly step: number | 'any';
  readonly value: number;
  /** The value with its unit. */
  readonly said: string;
  readonly disabled?: boolean;
  readonly onSlide: (value: number) => void;
}

/** A native slider, drawn as a scale: thin, with ends, and something to hold that a thumb can hit. */
export function Slide({ id, name, min, max, step, value, said, disabled = false, onSlide }: SlideProps) {
  return (
    <input
      id={id}
      class="slide"
      type="range"
      min={min}
      max={max}
      step={step}
      value={value}
      disabled={disabled}
      aria-label={name}
      aria-valuetext={said}
      onInput={(event) => onSlide(event.currentTarget.valueAsNumber)}
    />
  );
}
