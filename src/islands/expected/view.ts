/** How wide the page is, and what a phone shows first. */
import { computed, signal } from '@preact/signals';
import { isSurface } from './model.ts';

/** Too narrow for the surface to be read at a glance: it opens as two lines. */
export const isPhone = signal(false);
/** On a phone: the filled surface was asked for. */
export const filled = signal(false);

/** The lines stand in the place of the surface: on a phone, and where the table has none. */
export const showsSlices = computed(() => !isSurface.value || (isPhone.value && !filled.value));

/** Follows the width of the page. Returns what ends that. */
export function followPage(): () => void {
  const narrow = matchMedia('(max-width: 40em)');
  // Paper is narrower than the screen that it is printed from: what is printed stays as it was seen.
  const follow = () => {
    if (!matchMedia('print').matches) isPhone.value = narrow.matches;
  };
  follow();
  narrow.addEventListener('change', follow);
  return () => narrow.removeEventListener('change', follow);
}
