import { clockedInput, type HeatSource } from '../../calc/airflow/heat.ts';
import { airflowFromTemperatureRise, type TemperatureRiseFound } from '../../calc/airflow/heatRise.ts';
import { attempt } from '../../calc/outcome.ts';
import type { Outcome, Trace } from '../../calc/types.ts';
import { chosen } from '../choices.ts';
import { entered } from '../entered.ts';
import { probeLimit } from '../probeLimits.ts';
import type { Job } from '../types.ts';
import { airHere } from './air.ts';
import { type Found, fieldsOf } from './found.ts';
import { allOf } from './needs.ts';

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
  if (!heat.ok || !ends.ok) {
    const waiting = [heat, ends].flatMap((one) => (one.ok ? [] : one.waiting));
    return { ok: false, waiting, problem: heat.ok ? null : heat.problem };
  }
  const power = entered(job, 'rise.blowerPower');
  const between = chosen(job, 'rise.blowerBetween') !== 'no';
  return attempt(
    () =>
      airflowFromTemperatureRise(
        {
          heat: heat.value,
          blower: between ? (power === null ? 'assumed' : { power }) : 'outside',
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

function heatOf(job: Job, t?: Trace): Outcome<HeatSource> {
  const kind = chosen(job, 'rise.heat') ?? 'single';
  if (kind === 'power') {
    const fields = allOf(job, 'rise.power');
    return fields.ok ? { ok: true, value: { kind, power: fields.value['rise.power'] } } : fields;
  }
  if (kind === 'fuel') return fuelOf(job, t);
  const fields = allOf(job, 'rise.voltage', 'rise.current');
  if (!fields.ok) return fields;
  const powerFactor = entered(job, 'rise.powerFactor');
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
