/** What the air chart does once it stands: it opens the job that the address asks for, a link as a visitor. */
import { signal } from '@preact/signals';
import type { LinkRefusal } from '~/job/decodeStates.ts';
import type { System } from '~/job/types.ts';
import { show, system } from '../jobStore.ts';
import { follow, open } from '../opening.ts';
import { fetchOwn } from './own.ts';
import { families, inClass, isFamily, view } from './view.ts';

/** Why the link of this page could not be read, and which part of it; `null` when it could, or when there was none. */
export const refusedLink = signal<{ readonly reason: LinkRefusal; readonly part: string } | null>(null);

/** Runs once after hydration. Returns what is to be undone when the page goes. */
export function start(): () => void {
  const unfollow = follow();
  if (matchMedia('(max-width: 48em)').matches) view.value = 'process';
  const asked = new URLSearchParams(location.search).get('class');
  if (asked !== null) inClass.value = Number(/^[1-9]\d{0,5}$/.exec(asked)?.[0] ?? 1);
  // Without the network a late part may not come; the chart is there all the same.
  void openChart(location.search)
    .then(fetchOwn)
    .catch(() => {});
  return unfollow;
}

async function openChart(query: string): Promise<void> {
  const link = new URLSearchParams(query).has('v') ? (await import('~/job/decodeStates.ts')).decodeStates(query) : null;
  if (link?.ok) {
    const { job, families: named, system: of } = link.chart;
    if (named) families.value = named.filter(isFamily);
    showIn(of);
    show(job, 'visitor');
    return;
  }
  if (link) refusedLink.value = { reason: link.reason, part: link.part };
  await open(new URLSearchParams(query));
}

/** A link comes in its own units. They hold for this page: the choice of the reader stays what it was. */
function showIn(of: System): void {
  system.value = of;
  document.documentElement.dataset['units'] = of;
  for (const radio of document.querySelectorAll<HTMLInputElement>('[name=frame-units]'))
    radio.checked = radio.value === of;
}
