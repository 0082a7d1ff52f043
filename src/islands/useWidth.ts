import type { RefObject } from 'preact';
import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';
import { followWidth } from './followWidth.ts';

/** The width of a box, px, for a drawing that is made for it; on paper that of the sheet. 0 until it is known. */
export function useWidth(): readonly [box: RefObject<HTMLDivElement>, width: number] {
  const box = useRef<HTMLDivElement>(null);
  const shown = useRef(0);
  const [width, draw] = useState(0);
  const set = (wide: number) => {
    shown.current = wide;
    draw(wide);
  };
  // Before the first paint with it, so that nothing below moves when the drawing comes.
  useLayoutEffect(() => set(Math.round(box.current?.clientWidth ?? 0)), []);
  useEffect(
    () => (box.current ? followWidth(box.current, { now: () => shown.current, set, fillsSheet: false }) : undefined),
    [],
  );
  return [box, width];
}
