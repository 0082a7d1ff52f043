import { useState } from 'preact/hooks';
import { formatNumber, unitLabel, withUnit } from '~/job/format.ts';
import { quantityOf, unitOf } from '~/job/quantities.ts';
import { read } from '~/job/read.ts';
import type { QuantityKey } from '~/job/types.ts';
import { fromSi, toSi } from '~/job/units.ts';
import { Slide } from '~/parts/Slide.tsx';
import { slides } from '~/words/en/slides.ts';
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

/** A value to try out, in the unit of the page. Nothing of it is kept. */
export function SlideField({ id, of, name, hint, value, range, step, fixed = null, onValue }: Props) {
  // The text while it is being typed, nonsense too; afterwards the field shows the value again.
  const [typed, type] = useState<string | null>(null);
  const unit = unitOf(of, system.value);
  const { decimals, possible } = quantityOf(of);
  const text = (si: number) => formatNumber(fromSi(si, unit), decimals[system.value]);
  const isBad = typed !== null && read(typed, of, unit).state === 'bad';
  const at = fromSi(value, unit);
  const onStep = (number: number) => Math.round(number / step) * step;
  return (
    <Slide
      id={id}
      name={name}
      hint={fixed ?? hint}
      text={typed ?? text(value)}
      value={at}
      unit={unitLabel(unit)}
      min={Math.min(Math.floor(fromSi(range[0], unit) / step) * step, at)}
      max={Math.max(Math.ceil(fromSi(range[1], unit) / step) * step, at)}
      // A value between two steps stays where it is until the slider is moved.
      step={Math.abs(at - onStep(at)) < 1e-9 ? step : 'any'}
      problem={isBad ? slides.between(text(possible[0]), withUnit(text(possible[1]), unit)) : null}
      fixed={fixed !== null}
      onText={(next) => {
        type(next);
        const found = read(next, of, unit);
        if (found.state === 'read') onValue(found.si);
      }}
      onBlur={() => type(null)}
      onSlide={(number) => onValue(toSi(onStep(number), unit))}
    />
  );
}
