/** The panel of step 5 for what is rarely needed: open for the sake of one field, or of any. */
import { computed, signal } from '@preact/signals';
import type { QuantityKey } from '~/job/types.ts';
import { capacitySteps } from '../model.ts';

export const more = signal<QuantityKey | 'any' | null>(null);

/** Where it has room below the figures: on a desk, and among all steps. Elsewhere it stands in their place. */
export const isRoomy = computed(() => capacitySteps.isDesk.value || capacitySteps.allOpen.value);

/** Whether the figures of the table have been drawn. */
export const drawn = signal(false);
