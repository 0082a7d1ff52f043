/** The panel of step 5 for what is rarely needed: open, perhaps for the sake of one field. */
import { signal } from '@preact/signals';
import type { QuantityKey } from '~/job/types.ts';

export const more = signal<QuantityKey | 'any' | null>(null);
