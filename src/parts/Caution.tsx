import type { ComponentChildren } from 'preact';
import { parts } from '~/words/en/parts.ts';

/** One line in a double frame, only where the next action can hurt somebody. */
export function Caution({ children }: { children: ComponentChildren }) {
  return (
    <p class="caution">
      <b>{parts.caution}</b> {children}
    </p>
  );
}
