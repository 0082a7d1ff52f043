import { useState } from 'preact/hooks';
import type { Derate, DerateCause } from '~/calc/types.ts';
import { derating } from '~/words/en/derating.ts';
import { changeText } from '../../fine.ts';
import { lazy } from '../../lazy.tsx';
import { derates } from './model.ts';
import { nameOf, restOf } from './rows.ts';

const StepBody = lazy<{ cause: DerateCause }>(() => import('./StepBody.tsx').then((module) => module.StepBody));

/** The steps one by one: what each is, what it is worth, where it comes from, and what else might stand there. */
export function StepList() {
  return (
    <div class="derating-steps">
      <h3>{derating.stepsTitle}</h3>
      <ol>
        {derates.value.map((derate, i) => (
          <li key={derate.cause}>
            <StepFold derate={derate} number={i + 1} />
          </li>
        ))}
      </ol>
    </div>
  );
}

function StepFold({ derate, number }: { derate: Derate; number: number }) {
  const [seen, see] = useState(false);
  const rest = restOf(derate);
  const worth = rest ?? changeText(derate.after - derate.before);
  return (
    <details
      class="fold derating-step"
      data-step={derate.cause}
      onToggle={(event) => event.currentTarget.open && see(true)}
    >
      <summary>
        <span>
          {number}&ensp;{nameOf(derate.cause)}
        </span>
        <span class="derating-worth">{worth}</span>
      </summary>
      {seen && <StepBody cause={derate.cause} />}
    </details>
  );
}
