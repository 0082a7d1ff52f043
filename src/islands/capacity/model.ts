/** What the capacity sheet shows of a job: its open steps, the line of each, what is still needed, what the bar says. */
import { computed, signal } from '@preact/signals';
import { isChoice } from '~/job/choices.ts';
import { unitLabel } from '~/job/format.ts';
import { isFound } from '~/job/measuredTest.ts';
import type { QuantityKey } from '~/job/types.ts';
import { usesSheet } from '~/job/usesSheet.ts';
import { choiceWords } from '~/words/en/choices.ts';
import { problemInBar } from '~/words/en/problems.ts';
import { quantityWords } from '~/words/en/quantities.ts';
import { barWords, needNames } from '~/words/en/sheet.ts';
import { airflowStep, ratingStep, sureStep } from '~/words/en/steps.ts';
import type { WorkingGroup } from '~/words/en/working.ts';
import { problemParts, readOf, shownText, shownUnit, typing } from '../fields.ts';
import type { BarWords } from '../SheetBar.tsx';
import { sheetSteps } from '../sheetSteps.ts';
import { capacityText, clock, joined, ofKind, percent } from '../show.ts';
import { assessment, interpreted, job } from '../store.ts';
import { cellParts } from './cellProblem.ts';
import { cellCount, isGeneric, readyGrid } from './cells.ts';
import { stopReason } from './remarks.ts';
import { verdictSaid } from './said.ts';

export const capacitySteps = sheetSteps(['entering', 'leaving', 'airflow', 'outdoors', 'rating', 'sure']);
export type StepId = (typeof capacitySteps.steps)[number];
export const { isDesk } = capacitySteps;

/** The part of the working that somebody asked to see. */
export const workingAsked = signal<WorkingGroup | null>(null);

/** A typed value with its unit, for a line of the ledger; empty when nothing is typed. */
function lineOf(key: QuantityKey): string {
  const unit = shownUnit(key);
  const text = shownText(key, unit).trim();
  if (text === '') return '';
  const found = readOf(key);
  const bare = found.state === 'read' && /\d\s*$/.test(text);
  return bare ? `${text}\u00a0${unitLabel(unit)}` : text;
}

const air = (of: 'entering' | 'leaving') => {
  const humidity = job.value.chosen.humidityAs === 'wetBulb' ? 'wetBulb' : 'relativeHumidity';
  return [lineOf(`${of}.dryBulb`), lineOf(`${of}.${humidity}`)];
};

const optionOf = (key: 'fullSpeed' | 'sideBySide'): string => {
  const value = job.value.chosen[key];
  return isChoice(key, value) ? (choiceWords[key].options as Record<string, string>)[value]!.toLowerCase() : '';
};

function outdoorsLine(): string[] {
  const speed = job.value.chosen.fullSpeed;
  return [
    lineOf('outdoorDryBulb'),
    speed === undefined ? '' : speed === 'unsure' ? barWords.speedUnsure : barWords.fullSpeed,
  ];
}

/** The airflow that counts where that is not the one typed here. */
function foundLine(): string | null {
  const { volumeFlow } = interpreted.value.test.airflow;
  return isFound(job.value) && volumeFlow !== null ? airflowStep.found(joined(ofKind('volumeFlow', volumeFlow))) : null;
}

const lines: Readonly<Record<StepId, () => string>> = {
  entering: () => air('entering').filter(Boolean).join(' · ') || barWords.notRead,
  leaving: () => air('leaving').filter(Boolean).join(' · ') || barWords.notRead,
  airflow: () => foundLine() ?? (lineOf('airflow.volumeFlow') || barWords.notRead),
  outdoors: () => outdoorsLine().filter(Boolean).join(' · ') || barWords.notRead,
  rating: () => {
    if (usesSheet(job.value)) return ratingStep.sheet;
    if (isGeneric.value) return lineOf('rating.certified') || barWords.notRead;
    const { done, all } = cellCount.value;
    return all === 0 ? barWords.notRead : ratingStep.of(done, all);
  },
  sure: () => (job.value.chosen.sideBySide ? optionOf('sideBySide') : barWords.notAsked),
};

export const lineOfStep = (step: StepId): string => lines[step]();

/** At the head of an open step, on its right: what is taken for granted there. */
export function asideOf(step: StepId): string | undefined {
  if (step === 'sure') return sureStep.line(percent(interpreted.value.test.line));
  const at = step === 'entering' || step === 'leaving' ? job.value.entered[`${step}.dryBulb`]?.at : undefined;
  return at ? barWords.readAt(clock(at)) : undefined;
}

/** The fields that the measured figure still waits for, in the order of the sheet, by the names of `assess`. */
export const measuredNeeds = computed(() => waitingOf(assessment.value.measured));
export const expectedNeeds = computed(() => waitingOf(assessment.value.expected));

function waitingOf(outcome: { ok: boolean; waiting?: readonly string[] }): readonly string[] {
  return outcome.ok ? [] : (outcome.waiting ?? []);
}

export const needText = (needs: readonly string[]): string => needs.map((need) => needNames[need] ?? need).join(', ');

/** What the measured figure alone takes for granted, and nobody said. */
const measuredAssumes: ReadonlySet<string> = new Set(['altitude', 'airflow.place', 'airflow.kind']);
const assumedCount = computed(() => {
  const { airflow } = interpreted.value.test;
  // Where the way of finding the airflow says its place and kind, they are not taken for granted.
  const said =
    job.value.chosen['airflow.method'] !== undefined && airflow.place !== 'unsure' && airflow.kind !== 'unsure';
  return interpreted.value.assumed.filter((what) => measuredAssumes.has(what) && !(said && what !== 'altitude')).length;
});

/** The first field that cannot be used and is not being typed in: what to call it, what is usual, where it is. */
const firstProblem = computed(() => {
  for (const { key, code } of interpreted.value.problems) {
    const name = quantityKey(key);
    // The lines have a sheet of their own, which says what is wrong with them.
    if (name && !name.startsWith('lineSet.') && key !== typing.value)
      return {
        name: quantityWords[name].inSentence,
        small: problemInBar(problemParts(name), code),
        field: `field-${name}`,
      };
    const here = readyGrid.value;
    const cell = here?.cells.find((one) => one.key === key);
    if (here && cell && typing.value !== `cell-${key}`)
      return {
        name: quantityWords[`rating.${cell.quantity}`].inSentence,
        small: problemInBar(cellParts(cell, here), code),
        field: `cell-${key}`,
      };
  }
  return null;
});

const quantityKey = (key: string): QuantityKey | null => (key in quantityWords ? (key as QuantityKey) : null);

/** What the bar says. Bad figures first, then what is missing, then the best that can be said. */
export const bar = computed((): BarWords => {
  const bad = firstProblem.value;
  if (bad) return { big: `${barWords.check} ${bad.name}`, sentence: true, small: bad.small, field: bad.field };
  const { measured, ratio } = assessment.value;
  if (!measured.ok) return waitingBar(measured.problem !== null);
  const stop = stopReason.value;
  if (stop && typing.value === null) return { big: barWords.noVerdict, sentence: true, small: stop.short };
  const said = ratio.ok && verdictSaid.value?.barOfVerdict();
  if (said) return said;
  const small = [barWords.measuredNow, assumedCount.value > 0 && barWords.assumed(assumedCount.value)];
  return { big: capacityText(measured.value.total), sentence: false, small: small.filter(Boolean).join(' · ') };
});

function waitingBar(problem: boolean): BarWords {
  if (problem) return { big: barWords.cannotBe, sentence: true, small: barWords.cannotBeSmall };
  const needs = measuredNeeds.value;
  const nothing = Object.keys(job.value.entered).length === 0;
  if (nothing) return { big: barWords.start, sentence: true, small: barWords.fiveFigures };
  return { big: barWords.stillNeeded, sentence: true, small: needText(needs) };
}
