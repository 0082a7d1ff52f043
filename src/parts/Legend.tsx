import { drawings } from '~/words/en/results.ts';

const lines = [
  { word: drawings.measured, path: 'M0 8H64', kind: 'line-measured' },
  { word: drawings.should, path: 'M0 8H64', kind: 'line-should' },
  { word: drawings.line, path: 'M0 8H64', kind: 'line-agreed' },
] as const;

/** How to read our drawings: each kind of line means one thing on every sheet. */
export function Legend() {
  return (
    <section class="sheet-legend">
      <h3>{drawings.title}</h3>
      <dl class="legend">
        {lines.map(({ word, path, kind }) => (
          <>
            <dt>
              <svg class="drawing" width="64" height="16" aria-hidden="true">
                <path class={kind} d={path} />
              </svg>
            </dt>
            <dd>{word}</dd>
          </>
        ))}
      </dl>
    </section>
  );
}
