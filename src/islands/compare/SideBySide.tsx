import type { ComponentChildren } from 'preact';
import { ScrollRegion } from '~/parts/ScrollRegion.tsx';
import { compareWords as words } from '~/words/en/compare.ts';
import { capacityEnds, capacityText, clock, joined, ofKind, percent, temperature } from '../show.ts';
import { sides, type Tested } from './model.ts';

type Line = readonly [name: string, of: (side: Tested) => ComponentChildren];

const lines: readonly Line[] = [
  [words.read, ({ job }) => readAt(job.entered['leaving.dryBulb']?.at)],
  [words.returnAir, ({ assessment: { entering } }) => air(entering)],
  [words.supplyAir, ({ assessment: { leaving } }) => air(leaving)],
  [
    words.airflow,
    ({ test: { airflow } }) =>
      airflow.volumeFlow === null ? words.notRead : joined(ofKind('volumeFlow', airflow.volumeFlow)),
  ],
  [
    words.outdoors,
    ({ test: { outdoorDryBulb } }) => (outdoorDryBulb === null ? words.notRead : temperature(outdoorDryBulb)),
  ],
  [
    words.makes,
    ({ assessment: { measured, ranges } }) =>
      measured.ok
        ? ranged(capacityText(measured.value.total), ranges.total && capacityEnds(ranges.total.interval))
        : words.notRead,
  ],
  [words.should, ({ assessment: { expected } }) => (expected.ok ? capacityText(expected.value.total) : words.notRead)],
  [
    words.share,
    ({ assessment: { ratio } }) => {
      if (!ratio.ok) return words.notRead;
      const { low, high } = ratio.value.interval;
      const ends = [percent(Math.floor(low * 100 + 1e-9) / 100), percent(Math.ceil(high * 100 - 1e-9) / 100)] as const;
      return ranged(percent(ratio.value.value), ends);
    },
  ],
];

/** The two jobs line by line. */
export function SideBySide() {
  const [before, after] = [sides.before.value, sides.after.value];
  if (!before || !after) return null;
  return (
    <ScrollRegion label={words.ledger}>
      <table class="ledger">
        <caption>{words.ledger}</caption>
        <thead>
          <tr>
            <td />
            <Head of={before}>{words.before}</Head>
            <Head of={after}>{words.after}</Head>
          </tr>
        </thead>
        <tbody>
          {lines.map(([name, of]) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td class="number">{of(before)}</td>
              <td class="number">{of(after)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </ScrollRegion>
  );
}

/** Above the lists stand the names in full; paper has them here. */
function Head({ of: { job }, children }: { of: Tested; children: string }) {
  return (
    <th scope="col" class="number">
      {children}
      <small class="compare-name">{job.notes.address?.trim()}</small>
    </th>
  );
}

function ranged(value: string, ends: readonly [low: string, high: string] | null) {
  return (
    <>
      {value}
      {ends && <small class="compare-ends">{words.ends(...ends)}</small>}
    </>
  );
}

function air(state: Tested['assessment']['entering']): string {
  if (!state.ok) return words.notRead;
  return words.and(temperature(state.value.dryBulb), percent(state.value.relativeHumidity));
}

function readAt(iso: string | undefined): string {
  if (!iso) return words.notRead;
  const day = new Date(iso).toLocaleDateString('en', { day: 'numeric', month: 'short', year: 'numeric' });
  return words.and(day, clock(iso));
}
