import { clockedInput, type HeatSource } from '../../calc/airflow/heat.ts';
import {
  airflowFromTemperatureRise,
  type TemperatureRise,
  type TemperatureRiseFound,
} from '../../calc/airflow/heatRise.ts';
import { attempt } from '../../calc/outcome.ts';
import type { Outcome, Trace } from '../../calc/types.ts';
import { chosen } from '../choices.ts';
import { probeLimit } from '../probeLimits.ts';
import type { Job } from '../types.ts';
import { airHere } from './air.ts';
import { type Found, fieldsOf } from './found.ts';
import { allOf, optional } from './needs.ts';

const names = {
  'heat.voltage': 'rise.voltage',
  'heat.current': 'rise.current',
  'heat.powerFactor': 'rise.powerFactor',
  'heat.power': 'rise.power',
  'heat.efficiency': 'rise.efficiency',
  'gas.volume': 'rise.gasVolume',
  'gas.time': 'rise.gasTime',
  'gas.heatingValue': 'rise.heatingValue',
  'blower.power': 'rise.blowerPower',
  enteringDryBulb: 'rise.entering',
  leavingDryBulb: 'rise.leaving',
  temperatureRise: 'rise.leaving',
} as const;

/** Airflow from a known heat and the rise that it makes. The water in the air is that of the return. */
export function fromTemperatureRise(job: Job, t?: Trace): Found<TemperatureRiseFound> {
  const heat = heatOf(job, t);
  const ends = allOf(job, 'rise.entering', 'rise.leaving');
  const blower = blowerOf(job);
  if (!heat.ok || !ends.ok || !blower.ok) {
    const waiting = [heat, ends, blower].flatMap((one) => (one.ok ? [] : one.waiting));
    return { ok: false, waiting, problem: heat.ok ? null : heat.problem };
  }
  return attempt(
    () =>
      airflowFromTemperatureRise(
        {
          heat: heat.value,
          blower: blower.value,
          enteringDryBulb: ends.value['rise.entering'],
          leavingDryBulb: ends.value['rise.leaving'],
          humidityRatio: airHere(job, 'entering').air.humidityRatio,
          probes: chosen(job, 'rise.probes') ?? 'one',
          probeLimit: probeLimit(job, 'dryBulb').si,
          speed: chosen(job, 'rise.speed') ?? 'unsure',
        },
        t,
      ),
    fieldsOf(names),
  );
}

/** The blower's own heat, where it stands between the probes. */
function blowerOf(job: Job): Outcome<TemperatureRise['blower']> {
  if (chosen(job, 'rise.blowerBetween') === 'no') return { ok: true, value: 'outside' };
  const power = optional(job, 'rise.blowerPower');
  if (!power.ok) return power;
  return { ok: true, value: power.value === null ? 'assumed' : { power: power.value } };
}

function heatOf(job: Job, t?: Trace): Outcome<HeatSource> {
  const kind = chosen(job, 'rise.heat') ?? 'single';
  if (kind === 'power') {
    const fields = allOf(job, 'rise.power');
    return fields.ok ? { ok: true, value: { kind, power: fields.value['rise.power'] } } : fields;
  }
  if (kind === 'fuel') return fuelOf(job, t);
  const fields = allOf(job, 'rise.voltage', 'rise.current');
  const factor = optional(job, 'rise.powerFactor');
  if (!fields.ok) return factor.ok ? fields : { ...fields, waiting: [...fields.waiting, ...factor.waiting] };
  if (!factor.ok) return factor;
  const powerFactor = factor.value;
  return {
    ok: true,
    value: {
      kind: 'electric',
      phases: kind === 'three' ? 3 : 1,
      voltage: fields.value['rise.voltage'],
      current: fields.value['rise.current'],
      ...(powerFactor === null ? {} : { powerFactor }),
    },
  };
}

function fuelOf(job: Job, t?: Trace): Outcome<HeatSource> {
  const fields = allOf(job, 'rise.gasVolume', 'rise.gasTime', 'rise.heatingValue', 'rise.efficiency');
  if (!fields.ok) return fields;
  const { value } = fields;
  const clocked = {
    volume: value['rise.gasVolume'],
    time: value['rise.gasTime'],
    heatingValue: value['rise.heatingValue'],
  };
  return attempt(
    () => ({
      kind: 'fuel',
      input: clockedInput(clocked, t),
      efficiency: value['rise.efficiency'],
      efficiencyFrom: chosen(job, 'rise.efficiencyFrom') ?? 'guessed',
    }),
    fieldsOf(names),
  );
}
