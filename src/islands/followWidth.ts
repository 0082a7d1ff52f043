/** 174 mm: what Letter and A4 both have room for. */
const sheetWidth = 658;

/** A drawing that is made for a width, px. */
interface Drawn {
  readonly now: () => number;
  readonly set: (width: number) => void;
  /** A drawing that the screen shows smaller may fill the sheet, or stay as it is. */
  readonly fillsSheet: boolean;
}

/** Makes a drawing as wide as its box, and while it is printed for the sheet. Returns what ends it. */
export function followWidth(box: Element, { now, set, fillsSheet }: Drawn): () => void {
  const watch = new ResizeObserver(([entry]) => {
    const width = Math.round(entry?.contentRect.width ?? 0);
    if (width > 0) set(width);
  });
  watch.observe(box);
  let before = 0;
  const print = () => {
    before = now();
    set(fillsSheet ? sheetWidth : Math.min(before, sheetWidth));
  };
  const printed = () => set(before);
  addEventListener('beforeprint', print);
  addEventListener('afterprint', printed);
  return () => {
    watch.disconnect();
    removeEventListener('beforeprint', print);
    removeEventListener('afterprint', printed);
  };
}
