import type { ComponentChildren, VNode } from 'preact';
import { whereFold } from '~/words/en/airflowWhere.ts';
import { LateFold } from '../LateFold.tsx';
import { Assumed } from './Assumed.tsx';
import { Steps } from './Steps.tsx';

interface Props {
  readonly lead: string;
  readonly picture: VNode;
  readonly say: string;
  readonly steps: readonly string[];
  readonly assumed: ComponentChildren;
  /** What is asked before it can be drawn. */
  readonly children?: ComponentChildren;
  /** What is drawn below the steps. */
  readonly after?: ComponentChildren;
}

/** Where to measure, drawn, and what to do there, in a fold; beside it what is taken for granted. */
export function WhereFold({ lead, picture, say, steps, assumed, children, after }: Props) {
  return (
    <div class="fold-pair">
      <LateFold summary={whereFold}>
        <p>{lead}</p>
        {children}
        <figure class="airflow-where">
          {picture}
          <figcaption>{say}</figcaption>
        </figure>
        <Steps steps={steps} />
        {after}
      </LateFold>
      <Assumed>{assumed}</Assumed>
    </div>
  );
}
