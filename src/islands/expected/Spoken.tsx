import { SaidAtRest } from '../SaidAtRest.tsx';
import { place, quantity, reading } from './model.ts';
import { figure, nameOf, placeText } from './said.ts';

/** What is read at the place, spoken once it rests. */
export function Spoken() {
  const at = place.value;
  const words = at
    ? `${nameOf(quantity.value)}: ${figure(quantity.value, reading.value?.[quantity.value] ?? null)}, ${placeText(at)}`
    : '';
  return <SaidAtRest words={words} />;
}
