import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';

interface Props {
  /** Of the parts of one group no more than one stands open on a phone. */
  readonly group: string;
  readonly name: string;
  /** What its closed line shows at its right. */
  readonly said?: string;
  /** Whether it stands open when it comes. */
  readonly first: boolean;
  /** Whether all stand open. */
  readonly roomy: boolean;
  readonly children: ComponentChildren;
}

/** One of the parts of a step that is longer than a phone. The next field leads into a closed one; where there is room all stand open. */
export function Part({ group, name, said, first, roomy, children }: Props) {
  // From then on it is opened and closed by hand alone.
  const [open] = useState(roomy || first);
  return (
    <details class="fold part" name={roomy ? undefined : group} open={open}>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: a summary is a key by itself. */}
      <summary
        // The part above it may have closed, and taken it out of sight.
        onClick={({ currentTarget }) => requestAnimationFrame(() => currentTarget.scrollIntoView({ block: 'nearest' }))}
      >
        <span class="part-name">{name}</span> <span class="part-said">{said}</span>
      </summary>
      {children}
    </details>
  );
}
