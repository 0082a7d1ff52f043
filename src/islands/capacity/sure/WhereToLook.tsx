import { type Explanation, explanations } from '~/calc/confidence/explanations.ts';
import { sourceLabels } from '~/calc/sourceLabels.ts';
import { formatNumber } from '~/job/format.ts';
import { Caution } from '~/parts/Caution.tsx';
import { evidenceWords, placesToLook, whereToLook as words } from '~/words/en/whereToLook.ts';
import { percent } from '../../show.ts';
import { assessment } from '../../store.ts';

const groups = ['measurement', 'leaks', 'mechanical', 'refrigerant'] as const;

/** Where to look when it is short: an ordered check that begins with the measurement, each place with its price. */
export function WhereToLook() {
  const places = explanations(assessment.value);
  return (
    <div class="where-to-look">
      <p>{words.lead}</p>
      {groups.map((group) => (
        <section key={group}>
          <h3>{words.groups[group]}</h3>
          {group === 'refrigerant' && <Caution of="refrigerants">{words.licensed}</Caution>}
          <ul>
            {byCode(places.filter((place) => place.group === group)).map((sizes) => (
              <Place key={sizes[0].code} sizes={sizes} />
            ))}
          </ul>
        </section>
      ))}
    </div>
  );
}

type Sizes = readonly [Explanation, ...Explanation[]];

/** A place that is priced at several sizes is one place. */
function byCode(places: readonly Explanation[]): readonly Sizes[] {
  const found = new Map<string, Sizes>();
  for (const place of places) found.set(place.code, [...(found.get(place.code) ?? []), place] as unknown as Sizes);
  return [...found.values()];
}

function Place({ sizes }: { sizes: Sizes }) {
  const [{ code, evidence, by, source }] = sizes;
  const place = placesToLook[code];
  const reasons = by.map((sign) => evidenceWords[sign] ?? sign).join(words.and);
  return (
    <li>
      <b>{place?.name ?? code}</b>
      <p>{place?.say}</p>
      {sizes.map((one) => (
        <Price key={one.size} of={one} />
      ))}
      {evidence !== 'silent' && (
        <p class="evidence" data-evidence={evidence}>
          <b>{words[evidence]}</b> {reasons}.
        </p>
      )}
      {sizes[0].size !== null && <p class="note quiet">{sourceLabels[source]}</p>}
    </li>
  );
}

/** What a fault of one size comes to, and whether this test could see it. */
function Price({ of: { code, group, size, reads, isVisible } }: { of: Explanation }) {
  if (size === null || reads === null) return null;
  return (
    <p class="note">
      {group === 'leaks' ? leak(size, reads.low) : fault(code, size, reads)} {isVisible === false && words.unseen}
    </p>
  );
}

const leak = (size: number, reads: number) =>
  (reads > 0 ? words.high : words.low)(percent(size), percent(Math.abs(reads)));

function fault(code: string, size: number, { low, high }: { readonly low: number; readonly high: number }): string {
  const what = placesToLook[code]?.size?.(percent(size)) ?? percent(size);
  const ends = [Math.abs(low), Math.abs(high)].sort((a, b) => a - b);
  const band = words.band(formatNumber(ends[0]! * 100, 0), percent(ends[1]!));
  return (high > 0 ? words.more : words.less)(what, band);
}
