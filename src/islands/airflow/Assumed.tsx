import type { ComponentChildren } from 'preact';
import { airflowMethods as words } from '~/words/en/airflowMethods.ts';

/** What is taken for granted until somebody says otherwise, folded away beside where to measure: no one has to answer it. */
export function Assumed({ children }: { children: ComponentChildren }) {
  return (
    <details class="fold">
      <summary>{words.assumed}</summary>
      {children}
    </details>
  );
}
