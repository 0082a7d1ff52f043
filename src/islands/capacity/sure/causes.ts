/** The causes of the range in words, the largest first. */
import { computed } from '@preact/signals';
import { causeNames } from '~/words/en/airflowResult.ts';
import { sureCauses, sureFigures } from '~/words/en/sureFigures.ts';
import { assessment } from '../../store.ts';

/** A cause of the airflow's method stands under its own name, as on its sheet. */
const causeName = (name: string): string => sureCauses[name] ?? causeNames[name.replace(/^airflow\./, '')] ?? name;

/** Every cause that has a share at all. */
export const causes = computed(() => {
  const { ratio } = assessment.value;
  if (!ratio.ok) return [];
  return ratio.value.shares.filter(({ u }) => u > 0).map((one) => ({ ...one, name: causeName(one.name) }));
});

/** The largest, and the rest together. */
export function largest(count: number): readonly { readonly name: string; readonly share: number }[] {
  const all = causes.value;
  const kept = all.length <= count + 1 ? all : all.slice(0, count);
  const rest = all.slice(kept.length).reduce((sum, { share }) => sum + share, 0);
  return rest > 0 ? [...kept, { name: sureFigures.rest, share: rest }] : kept;
}
