import { type ReadonlySignal, signal } from '@preact/signals';
import type { ComponentChildren, ComponentType } from 'preact';
import { useEffect } from 'preact/hooks';
import { refused } from '../jobStore.ts';
import { lazy } from '../lazy.tsx';
import { follow, noticed, open } from '../opening.ts';
import { followNeed } from './standIn.ts';

const AskCopy = lazy(() => import('../AskCopy.tsx').then((module) => module.AskCopy));
const Notices = lazy(() => import('../Notices.tsx').then((module) => module.Notices));

/** What moves comes after the page: it is fetched beside the job, and stands when there is a table to draw. */
const explorer = signal<Late | null>(null);
interface Late {
  readonly Explorer: ComponentType;
  readonly shown: ReadonlySignal<unknown>;
  readonly followLack: () => () => void;
}

/** What a system should make: until the job is there, the picture that the page came with. */
export function Expected({ children }: { children?: ComponentChildren }) {
  useEffect(start, []);
  const late = explorer.value;
  return (
    <>
      {noticed.value && <Notices />}
      {late?.shown.value ? <late.Explorer /> : children}
      {refused.value && <AskCopy />}
    </>
  );
}

/** Runs once after hydration. Returns what is to be undone when the page goes. */
function start(): () => void {
  const stops = [follow(), followNeed()];
  void open(new URLSearchParams(location.search));
  // Without the network it may not come; the picture is there all the same.
  void import('./Explorer.tsx')
    .then((module) => {
      explorer.value = module;
      stops.push(module.followLack());
    })
    .catch(() => {});
  return () => {
    for (const stop of stops) stop();
  };
}
