/** A picture of the maker's table, held above the cells: in the memory of this page alone, and given up when the page goes. */
import { signal } from '@preact/signals';

export interface HeldPhoto {
  readonly url: string;
  readonly width: number;
  readonly height: number;
}

/** The picture, or `unreadable` for a file that is none. */
export const photo = signal<HeldPhoto | 'unreadable' | null>(null);

/** Shows a file in place of the picture before. */
export async function hold(file: File): Promise<void> {
  const url = URL.createObjectURL(file);
  const image = new Image();
  image.src = url;
  try {
    await image.decode();
    putAway();
    photo.value = { url, width: image.naturalWidth, height: image.naturalHeight };
  } catch {
    URL.revokeObjectURL(url);
    putAway();
    photo.value = 'unreadable';
  }
}

export function putAway(): void {
  if (photo.value && photo.value !== 'unreadable') URL.revokeObjectURL(photo.value.url);
  photo.value = null;
}
