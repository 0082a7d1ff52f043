/** The panel of step 5 for what is rarely needed: open for the sake of one field, or of any. */
import { computed, signal } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import type { QuantityKey } from '~/job/types.ts';
import { job } from '../../jobStore.ts';
import { capacitySteps } from '../model.ts';

export const more = signal<QuantityKey | 'any' | null>(null);

/** Where it has room below the figures: on a desk, and among all steps. Elsewhere it stands in their place. */
export const isRoomy = computed(() => capacitySteps.isDesk.value || capacitySteps.allOpen.value);

/** Whether the figures of the table have been drawn. */
export const drawn = signal(false);

/** Whether the panel stands in place of the figures. */
export const isAside = computed(() => more.value !== null && !isRoomy.value);

/** Whether each cell takes a sensible figure below its total. */
export const hasBoth = () => job.value.chosen['rating.withSensible'] === 'yes';

/** Whether a job came with the question of the blower's heat answered: while it stands open its answer stays beside it. */
export const useSettled = () => useMemo(() => job.value.chosen['rating.basis'] !== undefined, [job.value.id]);
