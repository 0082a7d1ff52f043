/** Exercises on air: a state of it, and the load of a coil between two of them. */
import { standardPressure } from '../../calc/atmosphere.ts';
import { coilLoad } from '../../calc/coilLoad.ts';
import { dryAirFlow } from '../../calc/dryAirFlow.ts';
import { moistAir } from '../../calc/moistAir.ts';
import { prefixed } from '../../calc/trace.ts';
import type { Step, Trace } from '../../calc/types.ts';
import { cubicFootPerMinute, foot, fromFahrenheit } from '../../calc/units.ts';
import type { Draw } from './draw.ts';
import type { Exercise, Figure } from './types.ts';

const collected = () => {
  const steps: Step[] = [];
  const trace: Trace = (step) => steps.push(step);
  return { steps, trace };
};
const heights = [0, 0, 1200, 3400, 5280].map((feet) => feet * foot);

/** Wet bulb, humidity ratio and enthalpy of air of a dry bulb and a relative humidity at a height. */
export function stateExercise(draw: Draw): Exercise {
  const { steps, trace } = collected();
  const altitude = draw.one(heights);
  const dryBulb = fromFahrenheit(draw.step(68, 84, 1));
  const relativeHumidity = draw.step(0.35, 0.65, 0.01);
  const air = moistAir({ dryBulb, relativeHumidity, pressure: standardPressure(altitude, trace) }, trace);
  return {
    kind: 'state',
    given: [
      { name: 'altitude', kind: 'length', value: altitude },
      { name: 'dryBulb', kind: 'temperature', value: dryBulb },
      { name: 'relativeHumidity', kind: 'fraction', value: relativeHumidity },
    ],
    grid: null,
    answers: [
      { name: 'wetBulb', kind: 'temperature', value: air.wetBulb },
      { name: 'humidityRatio', kind: 'humidityRatio', value: air.humidityRatio },
      { name: 'enthalpy', kind: 'enthalpy', value: air.enthalpy },
    ],
    verdict: null,
    steps,
  };
}

/** Total, sensible and latent of a coil between a return and a supply reading, the airflow actual air at the return. */
export function loadExercise(draw: Draw): Exercise {
  const { steps, trace } = collected();
  const altitude = draw.one(heights);
  const pressure = standardPressure(altitude, trace);
  const [returnDryBulb, returnHumidity] = [fromFahrenheit(draw.step(72, 80, 1)), draw.step(0.42, 0.6, 0.01)];
  const drop = draw.step(17, 22, 0.5) / 1.8;
  const [supplyDryBulb, supplyHumidity] = [returnDryBulb - drop, draw.step(0.85, 0.95, 0.01)];
  const volumeFlow = draw.step(800, 1900, 25) * cubicFootPerMinute;
  const given: Figure[] = [
    { name: 'altitude', kind: 'length', value: altitude },
    { name: 'returnDryBulb', kind: 'temperature', value: returnDryBulb },
    { name: 'returnHumidity', kind: 'fraction', value: returnHumidity },
    { name: 'supplyDryBulb', kind: 'temperature', value: supplyDryBulb },
    { name: 'supplyHumidity', kind: 'fraction', value: supplyHumidity },
    { name: 'airflow', kind: 'volumeFlow', value: volumeFlow },
  ];
  const air = (dryBulb: number, relativeHumidity: number, of: string) =>
    moistAir({ dryBulb, relativeHumidity, pressure }, prefixed(trace, of));
  const entering = air(returnDryBulb, returnHumidity, 'entering');
  const leaving = air(supplyDryBulb, supplyHumidity, 'leaving');
  const flow = dryAirFlow({ volumeFlow, at: entering }, trace);
  const load = coilLoad({ entering, leaving, dryAirFlow: flow }, trace);
  const isAsked = ({ id }: Step) => !/wetBulb|saturatedHumidityRatio|apparatus|condensateEnthalpy/.test(id);
  return {
    kind: 'load',
    given,
    grid: null,
    answers: [
      { name: 'dryAirFlow', kind: 'massFlow', value: flow },
      { name: 'total', kind: 'power', value: load.total },
      { name: 'sensible', kind: 'power', value: load.sensible },
      { name: 'latent', kind: 'power', value: load.latent },
    ],
    verdict: null,
    steps: steps.filter(isAsked),
  };
}
