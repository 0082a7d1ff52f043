import { slides } from '~/words/en/slides.ts';
import { TypedNumber, type TypedNumberProps } from './TypedNumber.tsx';

export interface SlideProps extends Omit<TypedNumberProps, 'children'> {
  /** The number that the slider stands at. */
  readonly value: number;
  readonly min: number;
  readonly max: number;
  readonly step: number | 'any';
  readonly onSlide: (value: number) => void;
}

/** The id of the slider beside the field of that id. */
export const slideId = (id: string) => `${id}-slide`;

/** A value on a scale: a native slider, and a field for who would rather type it. */
export function Slide({ value, min, max, step, onSlide, ...typed }: SlideProps) {
  const { name, text, unit, fixed } = typed;
  return (
    <TypedNumber {...typed}>
      {!fixed && (
        <input
          id={slideId(typed.id)}
          class="slide"
          type="range"
          min={min}
          max={max}
          step={step}
          value={value}
          aria-label={slides.name(name)}
          aria-valuetext={text === '' || unit === '' ? text || undefined : `${text}\u00a0${unit}`}
          onInput={(event) => onSlide(event.currentTarget.valueAsNumber)}
        />
      )}
    </TypedNumber>
  );
}
