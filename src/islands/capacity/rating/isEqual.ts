import type { QuantityKey } from '~/job/types.ts';
import { interpreted } from '../../store.ts';

/** Whether the same figure stands twice where two must differ: at two heads, or for two blocks. */
export const isEqual = (key: QuantityKey): boolean =>
  interpreted.value.problems.some((problem) => problem.key === key && problem.code === 'equal');
