import type { ComponentChildren } from 'preact';
import type { SpoiltTest } from '~/job/classroom/spoiltTypes.ts';
import * as words from '~/words/en/spoilt.ts';
import { capacityText, joined, ofKind, percent } from '../show.ts';
import { Lines } from './Lines.tsx';
import { factText } from './said.ts';

interface Props {
  readonly tests: readonly SpoiltTest[];
  /** What stands under each test on the sheet of the answers. */
  readonly under?: (test: SpoiltTest) => ComponentChildren;
}

/** Tests as they are given to a class: what was written down, and what was made of it. */
export function SpoiltSheet({ tests, under }: Props) {
  return (
    <ol class="exercises">
      {tests.map((test, place) => (
        <li key={place}>
          <h3>{words.test(place + 1)}</h3>
          {under ? under(test) : null}
          <Lines name={words.notes} of={test.facts.map((fact) => [words.facts[fact.name], factText(fact)])} />
          <Lines
            name={words.result}
            of={[
              [words.results.measured, capacityText(test.worked.measured)],
              [words.results.expected, capacityText(test.worked.expected)],
              [words.results.share, percent(test.worked.share)],
              [words.results.water, joined(ofKind('massFlow', test.water))],
            ]}
          />
          {under ? null : (
            <p>
              {words.yourAnswer}: <span class="blank-line" />
            </p>
          )}
        </li>
      ))}
    </ol>
  );
}
