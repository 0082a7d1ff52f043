import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';

/** A fold whose inside is drawn, and so fetched, when somebody opens it for the first time. */
export function LateFold({
  summary,
  children,
  kind = '',
}: {
  summary: string;
  children: ComponentChildren;
  kind?: string;
}) {
  const [seen, setSeen] = useState(false);
  return (
    <details class={`fold ${kind}`} onToggle={(event) => event.currentTarget.open && setSeen(true)}>
      <summary>{summary}</summary>
      {seen && children}
    </details>
  );
}
