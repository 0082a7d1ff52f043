import { useState } from 'preact/hooks';
import { formatNumber, unitLabel, withUnit } from '~/job/format.ts';
import { quantityOf, unitOf } from '~/job/quantities.ts';
import { read } from '~/job/read.ts';
import type { QuantityKey } from '~/job/types.ts';
import { fromSi, toSi } from '~/job/units.ts';
import { Field } from '~/parts/Field.tsx';
import { Slide } from '~/parts/Slide.tsx';
import { problemWords } from '~/words/en/problems.ts';
import { slideName } from '~/words/en/slides.ts';
import { partsOf } from './fields.ts';
import { system } from './jobStore.ts';

interface Props {
  readonly id: string;
  /** The quantity whose unit, digits and possible values these are. */
  readonly of: QuantityKey;
  readonly name: string;
  readonly hint?: string | undefined;
  /** SI. */
  readonly value: number;
  readonly range: readonly [number, number];
  /** Of the slider, in the unit that is shown. */
  readonly step: number;
  /** Why it cannot be moved. */
  readonly fixed?: string | null;
  readonly onValue: (si: number) => void;
}

/** A value to try out: a slider, and a field for who would rather type it. Nothing of it is kept. */
export function SlideField({ id, of, name, hint, value, range, step, fixed = null, onValue }: Props) {
  // The text while it is being typed, nonsense too; afterwards the field shows the value again.
  const [typed, type] = useState<string | null>(null);
  const unit = unitOf(of, system.value);
  const decimals = quantityOf(of).decimals[system.value];
  const shown = formatNumber(fromSi(value, unit), decimals);
  const found = typed === null ? null : read(typed, of, unit);
  const problem =
    found?.state === 'bad' && typed !== null
      ? (problemWords[found.code]?.(partsOf(of, typed, unit)) ?? found.code)
      : null;
  const [low, high] = [
    Math.floor(fromSi(range[0], unit) / step) * step,
    Math.ceil(fromSi(range[1], unit) / step) * step,
  ];
  const at = fromSi(value, unit);
  return (
    <div class="slide-field">
      <Field
        id={id}
        name={name}
        hint={fixed ?? hint}
        value={typed ?? shown}
        unit={unitLabel(unit)}
        unitSpoken=""
        problem={problem}
        disabled={fixed !== null}
        onInput={(text) => {
          type(text);
          const next = read(text, of, unit);
          if (next.state === 'read') onValue(next.si);
        }}
        onBlur={() => type(null)}
      />
      {fixed === null && (
        <Slide
          id={`${id}-slide`}
          name={slideName(name)}
          min={Math.min(low, at)}
          max={Math.max(high, at)}
          step={at === Math.round(at / step) * step ? step : 'any'}
          value={at}
          said={withUnit(shown, unit)}
          onSlide={(number) => onValue(toSi(Math.round(number / step) * step, unit))}
        />
      )}
    </div>
  );
}
