import { useState } from 'preact/hooks';
import { sourceLabels } from '~/calc/sourceLabels.ts';
import type { DerateCause } from '~/calc/types.ts';
import { stepRests, stepSays, stepWords } from '~/words/en/deratingSteps.ts';
import { fineText } from '../../fine.ts';
import { lazy } from '../../lazy.tsx';
import { derates, out, putIn } from './model.ts';
import { StepSliders } from './StepSliders.tsx';

const StepWorking = lazy<{ cause: DerateCause }>(() =>
  import('./StepWorking.tsx').then((module) => module.StepWorking),
);

/** What a step is, why it rests here, what else might stand in it, and where it comes from. Fetched when one is opened. */
export function StepBody({ cause }: { cause: DerateCause }) {
  const [asked, ask] = useState(false);
  const derate = derates.value.find((one) => one.cause === cause);
  if (!derate) return null;
  const { applies, after, band, source } = derate;
  const isOut = out.value.has(cause);
  const rests = !applies && !isOut;
  return (
    <div class="derating-body">
      <p>{stepSays[cause]}</p>
      {rests && <p class="quiet">{stepRests[cause]}</p>}
      {band > 0 && <p class="quiet">{stepWords.band(fineText(after * (1 - band)), fineText(after * (1 + band)))}</p>}
      <label class="switch">
        <input type="checkbox" checked={!isOut} onChange={(event) => putIn(cause, event.currentTarget.checked)} />
        <span>{stepWords.counts}</span>
      </label>
      <StepSliders cause={cause} />
      <p class="note quiet">
        {stepWords.source} {sourceLabels[source]}
      </p>
      {cause !== 'certified' && (
        <details class="fold" onToggle={(event) => event.currentTarget.open && ask(true)}>
          <summary>{stepWords.working}</summary>
          {asked && <StepWorking cause={cause} />}
        </details>
      )}
    </div>
  );
}
