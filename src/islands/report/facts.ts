/** Who, what, where and when: what heads and title blocks of both pages say alike. */
import { computed } from '@preact/signals';
import { choiceWords } from '~/words/en/choices.ts';
import { report } from '~/words/en/report.ts';
import { titleBlock } from '~/words/en/results.ts';
import { amountOf } from '../fields.ts';
import { clock, inUnitOf, joined, sizeText } from '../show.ts';
import { interpreted, job, system } from '../store.ts';

export const note = (key: keyof typeof job.value.notes): string => job.value.notes[key]?.trim() ?? '';

/** A day with its year, as a paper needs it that is kept. */
export function day(iso: string): string {
  const date = new Date(iso);
  return Number.isNaN(date.getTime())
    ? ''
    : date.toLocaleDateString('en-GB', { day: 'numeric', month: 'long', year: 'numeric' });
}

/** When it was read: as the tester says, else when the supply air was typed. */
export const readAt = computed((): string => {
  const { entered } = job.value;
  const at = entered['leaving.dryBulb']?.at ?? entered['entering.dryBulb']?.at;
  return note('readAt') || (at ? report.onDay(day(at), clock(at)) : '');
});

/** "3 ton, air handler". */
export const systemText = computed((): string => {
  const { nominalCapacity } = interpreted.value.test;
  const kind = job.value.chosen['equipment.kind'];
  const equipment = kind && (choiceWords['equipment.kind'].options as Readonly<Record<string, string>>)[kind];
  return [nominalCapacity === null ? '' : sizeText(nominalCapacity), equipment?.toLowerCase()]
    .filter(Boolean)
    .join(', ');
});

export const placeText = computed((): string => {
  const { altitude, barometer } = interpreted.value.test;
  if (barometer !== null)
    return joined(inUnitOf(barometer, system.value === 'ip' ? 'inHg' : 'hpa', system.value === 'ip' ? 2 : 0));
  return altitude === null ? titleBlock.seaLevelAssumed : amountOf('altitude', altitude);
});

export const unitsText = computed(() => (system.value === 'ip' ? '°F, Btu/h' : '°C, kW'));
