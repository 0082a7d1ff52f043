/** The panel of step 5 for what is rarely needed: open for the sake of one field, or of any. */
import { signal } from '@preact/signals';
import type { QuantityKey } from '~/job/types.ts';

export const more = signal<QuantityKey | 'any' | null>(null);
