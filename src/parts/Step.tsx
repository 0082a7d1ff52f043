import type { ComponentChildren } from 'preact';

export interface StepProps {
  readonly id: string;
  /** What stands before its name: a number, or the letter of a point. */
  readonly number: number | string;
  readonly name: string;
  readonly term?: string;
  readonly mark?: ComponentChildren;
  /** What the closed line shows at its right, and every line on paper. */
  readonly summary: string;
  readonly aside?: string | undefined;
  readonly open: boolean;
  /** On a desk every step is open, so its head is a heading and not a key. */
  readonly fixed: boolean;
  readonly onToggle: () => void;
  readonly children: ComponentChildren;
}

/** A step of a sheet: one ledger line when closed, a section between two rules when open. */
export function Step(props: StepProps) {
  const { id, number, name, term, mark, summary, aside, open, fixed, onToggle, children } = props;
  const line = (
    <>
      <span class="step-number">{number}</span>
      <span class="step-name">
        {name}
        {mark}
        {term && <small>({term})</small>}
      </span>
      <span class="step-summary">{summary}</span>
      <span class="step-aside">{aside}</span>
    </>
  );
  return (
    <section class="step" id={id} data-open={open ? '' : undefined} aria-labelledby={`${id}-head`}>
      <h2 id={`${id}-head`} class="step-head">
        {fixed ? (
          <span class="step-key">{line}</span>
        ) : (
          <button
            type="button"
            class="step-key"
            aria-expanded={open ? 'true' : 'false'}
            aria-controls={`${id}-body`}
            onClick={onToggle}
          >
            {line}
          </button>
        )}
      </h2>
      <div class="step-body" id={`${id}-body`}>
        {children}
      </div>
    </section>
  );
}
