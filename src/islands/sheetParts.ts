/** Parts that every sheet has and none waits for: they stand once they have been fetched. */
import { signal } from '@preact/signals';
import type { ComponentType } from 'preact';
import type { QuantityKey } from '~/job/types.ts';

export interface SheetParts {
  readonly UndoKey: ComponentType;
  readonly Was: ComponentType<{ of: QuantityKey }>;
}

/** `null` until they are there. */
export const sheetParts = signal<SheetParts | null>(null);
