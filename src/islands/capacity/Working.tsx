import { useEffect, useMemo } from 'preact/hooks';
import { assess } from '~/calc/assess.ts';
import { sources } from '~/calc/sources.ts';
import type { Amount, Step } from '~/calc/types.ts';
import { displayUnit, type UnitKey } from '~/job/units.ts';
import { answer } from '~/words/en/answer.ts';
import { stepWords, type WorkingGroup, workingGroup, workingGroups } from '~/words/en/working.ts';
import { amountIn, joined } from '../show.ts';
import { interpreted, system } from '../store.ts';
import { workingAsked } from './model.ts';

/** SI units in which the package works, where they differ from those that an SI reader is shown. */
const worked: Readonly<Partial<Record<Amount['kind'], UnitKey>>> = { massFlow: 'kgPerS', power: 'watt' };

const inSi = (amount: Amount) => joined(amountIn(amount, worked[amount.kind] ?? displayUnit[amount.kind].si));
const inOwn = (amount: Amount) => joined(amountIn(amount, displayUnit[amount.kind].ip));

/** Every result in its steps: the equation, the numbers put in, what it gives, and where it stands. */
export function Working() {
  const { test } = interpreted.value;
  const steps = useMemo(() => {
    const taken: Step[] = [];
    assess(test, (step) => taken.push(step));
    return taken;
  }, [test]);
  const asked = workingAsked.value;
  useEffect(() => {
    const head = asked && document.getElementById(`working-${asked}`);
    if (!head) return;
    head.focus({ preventScroll: true });
    head.scrollIntoView();
  }, [asked]);
  return (
    <div class="working-steps">
      <p class="label quiet">{answer.workingLead}</p>
      {inGroups(steps).map(([group, own]) => (
        <section key={group}>
          <h3 id={`working-${group}`} tabIndex={-1}>
            {workingGroups[group]}
          </h3>
          <ol class="working-list">
            {own.map((step, index) => (
              <Line key={index} step={step} />
            ))}
          </ol>
        </section>
      ))}
    </div>
  );
}

/** The steps under their headings, both in the order in which they first come. */
function inGroups(steps: readonly Step[]): readonly (readonly [WorkingGroup, readonly Step[]])[] {
  const found = new Map<WorkingGroup, Step[]>();
  for (const step of steps) {
    const group = workingGroup(step.id);
    found.set(group, [...(found.get(group) ?? []), step]);
  }
  return [...found];
}

function Line({ step }: { step: Step }) {
  const result = inSi(step.gives);
  const own = system.value === 'ip' ? inOwn(step.gives) : result;
  return (
    <li>
      <p class="working-name">
        <b>{stepWords(step.id)}</b> <cite>{sources[step.source].label}</cite>
      </p>
      <p class="working-equation">{step.equation}</p>
      <p class="working-puts">
        {step.puts.map((put, index) => (
          <span key={index}>
            {put.symbol} = {inSi(put)}
          </span>
        ))}
      </p>
      <p class="working-gives">
        {step.gives.symbol} = <b>{result}</b>
        {own !== result && ` = ${own}`}
      </p>
    </li>
  );
}
