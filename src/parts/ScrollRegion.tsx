import type { ComponentChildren } from 'preact';

/** A table wider than its column: it scrolls by itself, by a finger or from the keyboard, and the page does not. */
export function ScrollRegion({ label, children }: { label: string; children: ComponentChildren }) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable without a pointer.
    <div class="table-scroll" role="region" aria-label={label} tabIndex={0}>
      {children}
    </div>
  );
}
