/** What the probe sheet shows of a job: the differences in each air, the line of each step, what the bar says. */
import { computed } from '@preact/signals';
import { chosen } from '~/job/choices.ts';
import { meanReading, measuredHere } from '~/job/readings.ts';
import { joinSure } from '~/job/sure/join.ts';
import { comparedIn, type PairAir, pairsIn } from '~/job/sure/pairs.ts';
import { supplyPointsOf } from '~/job/sure/supplyPoints.ts';
import { choiceWords } from '~/words/en/choices.ts';
import { joinSureWords } from '~/words/en/joinSure.ts';
import { probeBar, probeTodo, probeWords } from '~/words/en/probes.ts';
import { job } from '../jobStore.ts';
import type { BarWords } from '../SheetBar.tsx';
import { sheetSteps } from '../sheetSteps.ts';
import { clock, humidityStep, temperature, temperatureStep } from '../show.ts';

joinSure();
joinSureWords();

export const probeSheetSteps = sheetSteps([
  'probesReturn',
  'probesSupply',
  'probesShared',
  'probesSteady',
  'probesPoints',
  'probesEnd',
]);
export type ProbeStep = (typeof probeSheetSteps.steps)[number];
export const { isDesk } = probeSheetSteps;

/** How the probes say their humidity. */
export const measure = computed(() => (measuredHere(job.value)[1] === 'wetBulb' ? 'wetBulb' : 'relativeHumidity'));

/** What the probes differ by in each air; `null` until both were read there. */
export const compared = {
  return: computed(() => comparedIn(job.value, 'return')),
  supply: computed(() => comparedIn(job.value, 'supply')),
  end: computed(() => comparedIn(job.value, 'end')),
} as const satisfies Record<Exclude<PairAir, 'swap' | 'steady'>, unknown>;

/** Whether the probes are compared by exchanging them in the ducts. */
export const isSwapped = computed(() => chosen(job.value, 'probes.how') === 'swapped');

/** The difference that the answer speaks of: the first air that was read. */
export const first = computed(() => compared.return.value ?? compared.supply.value);

/** Readings in one air that give a mean and its scatter. */
const enough = 5;

/** What is still to be done on this sheet, in the order in which it is done. */
export const todo = computed((): readonly string[] => {
  const { return: inReturn, supply, end } = compared;
  const isSteady = job.value.tables['steady.batches'] !== undefined || pairsIn(job.value, 'steady').length >= enough;
  return [
    isSwapped.value || (inReturn.value?.pairs ?? 0) >= enough ? '' : probeTodo.return,
    supply.value ? '' : probeTodo.supply,
    isSteady ? '' : probeTodo.steady,
    end.value ? '' : probeTodo.end,
  ].filter(Boolean);
});

/** A difference as the sheet says it: what the taped supply probe shows more. */
export interface Apart {
  readonly temperature: string;
  readonly humidity: string | null;
}

export function apartIn({ dryBulb, humidity }: { dryBulb: number; humidity: number | null }): Apart {
  return {
    temperature: temperatureStep(-dryBulb),
    humidity: humidity === null ? null : humidityStep(-humidity, measure.value),
  };
}

export const points = computed(() => supplyPointsOf(job.value));
export const meanOfPoints = computed(() => points.value.reduce((sum, one) => sum + one, 0) / points.value.length);
export const spreadOfPoints = computed(() => Math.max(...points.value) - Math.min(...points.value));

/** Whether the supply reading is the mean of the points. */
export const isMeanUsed = computed(() => {
  const { dryBulb } = meanReading(job.value, 'leaving');
  return dryBulb !== null && Math.abs(dryBulb - meanOfPoints.value) < 0.03;
});

function airLine(air: keyof typeof compared): string {
  const found = compared[air].value;
  if (!found) return probeWords.notRead;
  const { temperature: dry, humidity } = apartIn(found.difference);
  return humidity === null ? dry : probeWords.differ(dry, humidity);
}

const sharedLine = () => {
  const standard = chosen(job.value, 'probes.humidityStandard') ?? 'none';
  const said = [
    standard === 'none' ? '' : choiceWords['probes.humidityStandard'].options[standard],
    chosen(job.value, 'probes.iceBath') === 'yes' ? 'Ice bath' : '',
  ].filter(Boolean);
  return said.join(' · ').toLowerCase() || probeWords.nothingSaid;
};

const steadyLine = () => {
  if (job.value.tables['steady.batches']) return probeWords.steadyTaken;
  const since = job.value.notes['steady.startedAt'];
  return since === undefined ? probeWords.notRead : probeWords.since(clock(since));
};

const lines: Readonly<Record<ProbeStep, () => string>> = {
  probesReturn: () => airLine('return'),
  probesSupply: () => airLine('supply'),
  probesShared: sharedLine,
  probesSteady: steadyLine,
  probesPoints: () => (points.value.length < 2 ? probeWords.notRead : temperature(meanOfPoints.value)),
  probesEnd: () => airLine('end'),
};
export const lineOf = (step: ProbeStep): string => lines[step]();

/** How many readings there are, then what is to be done next, then what became of the differences. */
function smallOf(pairs: number): string {
  const [next] = todo.value;
  return pairs >= enough && next ? probeTodo.inBar(next) : probeBar.applied(pairs);
}

export const bar = computed((): BarWords => {
  const found = first.value;
  if (!found) return { big: probeBar.start, sentence: true, small: probeBar.startSmall };
  const { temperature: dry, humidity } = apartIn(found.difference);
  const used = job.value.chosen.sideBySide === 'yes';
  return {
    big: humidity === null ? dry : probeWords.differ(dry, humidity),
    after: probeBar.apart,
    sentence: true,
    small: used ? smallOf(found.pairs) : probeBar.notApplied,
  };
});
