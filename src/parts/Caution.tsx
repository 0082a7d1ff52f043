import type { ComponentChildren } from 'preact';
import { type CautionPage, parts } from '~/words/en/parts.ts';
import { href } from './href.ts';

/** One line in a double frame, only where the next action can hurt somebody. Its first word leads to all that is to be said of it. */
export function Caution({ of, children }: { of: CautionPage; children: ComponentChildren }) {
  return (
    <p class="caution">
      <b>
        <a href={href(`/cautions/${of}/`)}>{parts.caution}</a>
      </b>{' '}
      {children}
    </p>
  );
}
