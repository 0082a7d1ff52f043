import type { ComponentChildren } from 'preact';
import type { Fact, SpoiltTest } from '~/job/classroom/spoiltTypes.ts';
import { format } from '~/job/format.ts';
import { displayUnit } from '~/job/units.ts';
import * as words from '~/words/en/spoilt.ts';
import { system } from '../jobStore.ts';
import { capacityText, inUnitOf, joined, ofKind, percent } from '../show.ts';

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

function Lines({ name, of }: { name: string; of: readonly (readonly [string, string])[] }) {
  return (
    <table class="ledger exercise-figures">
      <caption>{name}</caption>
      <tbody>
        {of.map(([line, text]) => (
          <tr key={line}>
            <th scope="row">{line}</th>
            <td class="number">{text}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** A barometer is read in its own unit, the power of a machine in kilowatts, a capacity as everywhere. */
export function factText({ name, kind, value }: Fact): string {
  if (kind === 'length') return joined(inUnitOf(value, displayUnit.length[system.value], 0));
  if (kind === 'pressure')
    return joined(system.value === 'ip' ? inUnitOf(value, 'inHg', 2) : inUnitOf(value, 'hpa', 0));
  if (name === 'power' || name === 'powerInTable') return `${format(value, 'kw', 2)}\u00a0kW`;
  if (kind === 'power') return capacityText(value);
  if (kind === 'temperature') return joined(inUnitOf(value, displayUnit.temperature[system.value], 1));
  return joined(ofKind(kind, value));
}
