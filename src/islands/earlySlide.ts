import { useEffect, useState } from 'preact/hooks';

/**
 * Where a slider was moved to before its page was alive. Making it alive puts it back to its start; this moves it again, once
 * the island stands. `id` is that of the slider in the document.
 */
export function useEarlySlide(id: string, onSlide: (value: number) => void): void {
  // Read while the island is drawn for the first time, when nothing of the document has been touched yet.
  const [moved] = useState(() => {
    if (typeof document === 'undefined') return null;
    const slide = document.querySelector<HTMLInputElement>(`input[id="${id}"]`);
    if (slide === null || slide.type !== 'range') return null;
    const at = slide.valueAsNumber;
    return Math.abs(at - Number(slide.defaultValue)) > 1e-6 ? at : null;
  });
  useEffect(() => {
    if (moved !== null) onSlide(moved);
  }, []);
}
