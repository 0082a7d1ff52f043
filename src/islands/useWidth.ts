import type { RefObject } from 'preact';
import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';

/** 174 mm: what Letter and A4 both have room for. */
const sheetWidth = 658;

/** The width of a box, px, for a drawing that is made for it; on paper that of the sheet. 0 until it is known. */
export function useWidth(): readonly [box: RefObject<HTMLDivElement>, width: number] {
  const box = useRef<HTMLDivElement>(null);
  const [width, set] = useState(0);
  // Before the first paint with it, so that nothing below moves when the drawing comes.
  useLayoutEffect(() => set(Math.round(box.current?.clientWidth ?? 0)), []);
  useEffect(() => {
    let before = 0;
    const watch = new ResizeObserver(([entry]) => {
      const wide = Math.round(entry?.contentRect.width ?? 0);
      if (wide > 0) set(wide);
    });
    if (box.current) watch.observe(box.current);
    const print = () =>
      set((now) => {
        before = now;
        return Math.min(now, sheetWidth);
      });
    const printed = () => set(before);
    addEventListener('beforeprint', print);
    addEventListener('afterprint', printed);
    return () => {
      watch.disconnect();
      removeEventListener('beforeprint', print);
      removeEventListener('afterprint', printed);
    };
  }, []);
  return [box, width];
}
