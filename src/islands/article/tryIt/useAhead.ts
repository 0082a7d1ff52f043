import { useState } from 'preact/hooks';
import { type Ahead, type Dial, rowAt } from './ahead.ts';

/** Something that a hand moves: a slider over the stops of a dial, or a box to tick where there are two of them. */
export interface Control {
  readonly name: string;
  readonly dial: Dial;
  /** The place where it stands, and the same as a person reads it. */
  readonly place: number;
  readonly text: string;
  readonly tick: boolean;
  readonly onPlace: (place: number) => void;
}

/** Where the sliders of a picture stand, in SI, the figures there, and its sliders by their place in the list. */
export function useAhead<Row extends readonly number[]>(figures: Ahead<Row>) {
  const { dials } = figures;
  const [places, set] = useState(() => dials.map(({ start }) => start));
  const placeOf = (i: number) => places[i] ?? 0;
  const control = (i: number, name: string, text: string, tick = false): Control => ({
    name,
    dial: dials[i] ?? { stops: [], start: 0 },
    place: placeOf(i),
    text,
    tick,
    onPlace: (place) => set((now) => now.map((old, at) => (at === i ? place : old))),
  });
  return { values: dials.map(({ stops }, i) => stops[placeOf(i)] ?? 0), row: rowAt(figures, places), control };
}
