import { useEffect, useState } from 'preact/hooks';
import { place, quantity, reading } from './model.ts';
import { figure, nameOf, placeText } from './said.ts';

/** What is read at the place, spoken once it rests. */
export function Spoken() {
  const [said, say] = useState('');
  const at = place.value;
  const words = at
    ? `${nameOf(quantity.value)}: ${figure(quantity.value, reading.value?.[quantity.value] ?? null)}, ${placeText(at)}`
    : '';
  useEffect(() => {
    const timer = setTimeout(() => say(words), 500);
    return () => clearTimeout(timer);
  }, [words]);
  return (
    <p class="spoken" role="status">
      {said}
    </p>
  );
}
