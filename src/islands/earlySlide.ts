import { useEffect, useState } from 'preact/hooks';

/**
 * What a slider was moved to, or a box ticked (1) or cleared (0), before its page was alive. Making it alive puts it back to its start;
 * this moves it again, once the island stands. `id` is that of the control in the document.
 */
export function useEarlySlide(id: string, onSlide: (value: number) => void): void {
  // Read while the island is drawn for the first time, when nothing of the document has been touched yet.
  const [moved] = useState(() => (typeof document === 'undefined' ? null : movedTo(document.getElementById(id))));
  useEffect(() => {
    if (moved !== null) onSlide(moved);
  }, []);
}

function movedTo(control: HTMLElement | null): number | null {
  if (!(control instanceof HTMLInputElement)) return null;
  if (control.type === 'checkbox') return control.checked === control.defaultChecked ? null : Number(control.checked);
  if (control.type !== 'range') return null;
  return Math.abs(control.valueAsNumber - Number(control.defaultValue)) > 1e-6 ? control.valueAsNumber : null;
}
