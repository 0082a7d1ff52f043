import type { ComponentChildren } from 'preact';

/** One line in a double frame, only where the next action can hurt somebody. */
export function Caution({ children }: { children: ComponentChildren }) {
  return (
    <p class="caution">
      <b>Caution.</b> {children}
    </p>
  );
}
