/** What the air chart shows of the job: its points, its processes, and the pressure that it is drawn for. */
import { computed } from '@preact/signals';
import { saturationHumidityRatio } from '~/calc/humidityRatio.ts';
import { moistAir } from '~/calc/moistAir.ts';
import type { MoistAir } from '~/calc/types.ts';
import { readEntered, sitePressure } from '~/job/entered.ts';
import { type PointKey, type Process, processesOf } from '~/job/processes.ts';
import { isMovable } from '~/job/stateEdits.ts';
import { jobAir, type NamedState, namedStates } from '~/job/states.ts';
import type { Entered, Job } from '~/job/types.ts';
import { processWords, stateWords } from '~/words/en/moistAir.ts';
import { job, source } from '../jobStore.ts';

export interface ChartPoint {
  readonly key: PointKey;
  /** What stands at it where there is no room for its name. */
  readonly code: string;
  readonly name: string;
  readonly air: MoistAir;
  readonly movable: boolean;
}

/** What the chart is drawn for and looked at; less is mountains without people, more is a mine. */
export const pressures = [60e3, 105e3] as const;

type Heights = Readonly<Partial<Record<'altitude' | 'barometer', Entered>>>;
let lastHeights: Heights = {};

function heightsOf({ entered }: Job): Heights {
  const { altitude, barometer } = entered;
  return { ...(altitude && { altitude }), ...(barometer && { barometer }) };
}

const isSound = (of: Job) =>
  sitePressure(of) >= pressures[0] &&
  sitePressure(of) <= pressures[1] &&
  readEntered(of, 'altitude').state !== 'bad' &&
  readEntered(of, 'barometer').state !== 'bad';

/** Whether height and barometer are such that the chart can be drawn for them. */
export const pressureFits = computed(() => isSound(job.value));

/** The job at a pressure that can be drawn: with its last such height while the one typed does not fit. */
export const chartJob = computed((): Job => {
  const now = job.value;
  if (isSound(now)) {
    lastHeights = heightsOf(now);
    return now;
  }
  const { altitude: _, barometer: __, ...entered } = now.entered;
  return { ...now, entered: { ...entered, ...lastHeights } };
});

export const pressure = computed(() => sitePressure(chartJob.value));
export const states = computed((): readonly NamedState[] => namedStates(chartJob.value));
export const processes = computed((): readonly Process[] => processesOf(chartJob.value));
export const returnAir = computed(() => jobAir(chartJob.value, 'entering'));
export const supplyAir = computed(() => jobAir(chartJob.value, 'leaving'));

export const stateCode = (key: string) => key.toUpperCase();
export const processNumber = (key: string) => key.slice(1);
export const nameOfState = ({ key, name }: Pick<NamedState, 'key' | 'name'>) =>
  name.trim() || stateWords.state(stateCode(key));
const nameOfEnd = ({ key, kind }: Pick<Process, 'key' | 'kind'>) =>
  `${processWords.endNames[kind]} ${processNumber(key)}`;

/** Every point that is on the chart: return, supply, named states, and the ends of processes that have one of their own. */
export const points = computed((): readonly ChartPoint[] => {
  const own = [
    { key: 'entering', code: 'R', name: stateWords.return, outcome: returnAir.value },
    { key: 'leaving', code: 'S', name: stateWords.supply, outcome: supplyAir.value },
  ] as const;
  return [
    ...own.flatMap(({ key, code, name, outcome }) =>
      outcome.ok ? [{ key, code, name, air: outcome.value, movable: isMovable(job.value, key) }] : [],
    ),
    ...states.value.flatMap((state): ChartPoint[] => {
      const { key, air } = state;
      return air.ok ? [{ key, code: stateCode(key), name: nameOfState(state), air: air.value, movable: true }] : [];
    }),
    ...processes.value.flatMap((process): ChartPoint[] => {
      const { key, kind, outcome } = process;
      if (kind === 'drying' || !outcome.ok) return [];
      return [{ key, code: processNumber(key), name: nameOfEnd(process), air: outcome.value.end, movable: false }];
    }),
  ];
});

/** The air at a place of the chart, no damper than it can be at the pressure of now. */
export function airOfSpot({ dryBulb, humidityRatio }: Pick<MoistAir, 'dryBulb' | 'humidityRatio'>): MoistAir {
  const most = saturationHumidityRatio(dryBulb, pressure.value);
  return moistAir({ dryBulb, humidityRatio: Math.min(most, humidityRatio), pressure: pressure.value });
}

/** The name of a point for a list to choose from, whether it can be drawn or not. */
export function nameOfPoint(key: PointKey): string {
  if (key === 'entering') return stateWords.return;
  if (key === 'leaving') return stateWords.supply;
  const state = states.value.find((one) => one.key === key);
  if (state) return nameOfState(state);
  const process = processes.value.find((one) => one.key === key);
  return process ? nameOfEnd(process) : stateCode(key);
}

export const isInvented = computed(() => source.value === 'demo' || job.value.invented === true);
