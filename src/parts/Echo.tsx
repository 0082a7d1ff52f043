import type { ComponentChildren } from 'preact';
import { parts } from '~/words/en/parts.ts';

/** What follows from a field, or how it was read: one line under it, led by a drawn corner. Empty, it keeps its line and is not seen. */
export function Echo({ id, children }: { id?: string; children: ComponentChildren }) {
  return (
    <p class="echo" {...(id && { id })}>
      {children}
    </p>
  );
}

/** What is wrong with a field, what is usual and what to do. A thick rule at its left, never a colour. */
export function Check({
  id,
  lead = parts.check,
  children,
}: {
  id?: string;
  lead?: string;
  children: ComponentChildren;
}) {
  return (
    <p class="check" {...(id && { id })}>
      <b>{lead}</b> {children}
    </p>
  );
}
