import { useState } from 'preact/hooks';
import { sourceLabels } from '~/calc/sourceLabels.ts';
import type { Derate, DerateCause } from '~/calc/types.ts';
import { derating, stepRests, stepSays } from '~/words/en/derating.ts';
import { changeText, fineText } from '../../fine.ts';
import { lazy } from '../../lazy.tsx';
import { derates, out, putIn } from './model.ts';
import { nameOf, restOf } from './rows.ts';
import { StepSliders } from './StepSliders.tsx';

const StepWorking = lazy<{ cause: DerateCause }>(() =>
  import('./StepWorking.tsx').then((module) => module.StepWorking),
);

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
      {seen && <StepBody derate={derate} />}
    </details>
  );
}

function StepBody({ derate }: { derate: Derate }) {
  const { cause, applies, after, band, source } = derate;
  const [asked, ask] = useState(false);
  const isOut = out.value.has(cause);
  const rests = !applies && !isOut;
  return (
    <div class="derating-body">
      <p>{stepSays[cause]}</p>
      {rests && <p class="quiet">{stepRests[cause]}</p>}
      {band > 0 && <p class="quiet">{derating.band(fineText(after * (1 - band)), fineText(after * (1 + band)))}</p>}
      <label class="switch">
        <input type="checkbox" checked={!isOut} onChange={(event) => putIn(cause, event.currentTarget.checked)} />
        <span>{derating.counts}</span>
      </label>
      <StepSliders cause={cause} />
      <p class="note quiet">
        {derating.source} {sourceLabels[source]}
      </p>
      {cause !== 'certified' && (
        <details class="fold" onToggle={(event) => event.currentTarget.open && ask(true)}>
          <summary>{derating.working}</summary>
          {asked && <StepWorking cause={cause} />}
        </details>
      )}
    </div>
  );
}
