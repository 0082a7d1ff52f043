import type { ComponentType } from 'preact';
import { Step } from '~/parts/Step.tsx';
import { airflowSheet, methodWords } from '~/words/en/airflowSheet.ts';
import { lazy } from '../lazy.tsx';
import { flowText, sureText } from './flowText.ts';
import { answerOf, type Method, methods, openPart, used } from './model.ts';

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

/** One method: a line with its answer while it is closed. */
export function MethodStep({ method }: { method: Method }) {
  const { name, term, lead } = methodWords[method];
  const open = openPart.value === method;
  const answer = answerOf(method);
  const Body = bodies[method];
  return (
    <Step
      id={`step-${method}`}
      number={methods.indexOf(method) + 1}
      name={name}
      term={term}
      summary={answer ? `${flowText(answer)}, ${sureText(answer.u)}` : airflowSheet.notUsed}
      aside={used.value === method ? airflowSheet.counts : undefined}
      open={open}
      fixed={false}
      onToggle={() => {
        openPart.value = open ? null : method;
      }}
    >
      {open && (
        <>
          <p class="step-say">{lead}</p>
          <Body />
        </>
      )}
    </Step>
  );
}
