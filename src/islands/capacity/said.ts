/** What says the verdict of this sheet: fetched behind the expectation, without which there is none. */
import { signal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { expectedHalf, fetchWhen } from '../store.ts';
import { whenUntouched } from '../untouched.ts';

/** The answer's sentences: for anyone, for the technician, and what else is to be known. */
export interface Sentences {
  readonly mark?: ComponentChildren;
  readonly first: string;
  readonly second: string;
  readonly third?: string;
}

/** `null` until it has been fetched. */
export const verdictSaid = signal<typeof import('./late.ts') | null>(null);

if (typeof document !== 'undefined') {
  fetchWhen(
    () => expectedHalf.value !== null,
    async () => {
      const late = await import('./late.ts');
      whenUntouched(() => {
        verdictSaid.value = late;
      });
    },
  );
}
