import type { ComponentType } from 'preact';
import { airflowSheet, methodWords } from '~/words/en/airflowSheet.ts';
import { lazy } from '../lazy.tsx';
import { SheetStep } from '../SheetStep.tsx';
import { endTexts, flowText } from './flowText.ts';
import { airflowWays, answered, answerOf, type Method, use, used } from './model.ts';

const late = (load: () => Promise<ComponentType>): ComponentType => lazy(load);

/** The fields of each method, fetched when it is opened. */
const bodies: Readonly<Record<Method, ComponentType>> = {
  readout: late(() => import('./methods/Readout.tsx').then((module) => module.Readout)),
  fanTable: late(() => import('./methods/FanTable.tsx').then((module) => module.FanTable)),
  flowGrid: late(() => import('./methods/FlowGrid.tsx').then((module) => module.FlowGrid)),
  hood: late(() => import('./methods/Hood.tsx').then((module) => module.Hood)),
  traverse: late(() => import('./methods/Traverse.tsx').then((module) => module.Traverse)),
  temperatureRise: late(() => import('./methods/TemperatureRise.tsx').then((module) => module.TemperatureRise)),
  pressureMatch: late(() => import('./methods/PressureMatch.tsx').then((module) => module.PressureMatch)),
  grille: late(() => import('./methods/Grille.tsx').then((module) => module.Grille)),
};

/** Lets this answer count, where there are several. */
function UseKey({ method }: { method: Method }) {
  return (
    <button type="button" class="plain-button" onClick={() => use(method)}>
      {airflowSheet.use}
    </button>
  );
}

/** One method: a line with its answer while it is closed. */
export function MethodStep({ method }: { method: Method }) {
  const answer = answerOf(method);
  const Body = bodies[method];
  const counting = used.value === method;
  return (
    <SheetStep
      sheet={airflowWays}
      step={method}
      words={{ ...methodWords[method], lead: '' }}
      summary={answer ? airflowSheet.line(flowText(answer), ...endTexts(answer)) : airflowSheet.notUsed}
      aside={counting ? airflowSheet.counts : undefined}
      tools={answer && answered.value.length > 1 && !counting && <UseKey method={method} />}
    >
      {airflowWays.isOpen(method) && <Body />}
    </SheetStep>
  );
}
