import type { ComponentChildren } from 'preact';
import { useEffect } from 'preact/hooks';
import { lazy } from '../lazy.tsx';
import { expectedHalf, loaded } from '../store.ts';
import { startReport } from './start.ts';

const Report = lazy<{ children?: ComponentChildren }>(() => import('./Report.tsx').then((module) => module.Report));

/** The report of the open job: this device's, the demo's, or that of a link. */
export function ReportPage({ children }: { children?: ComponentChildren }) {
  useEffect(startReport, []);
  return loaded.value && expectedHalf.value ? <Report>{children}</Report> : <p class="to-come">{'\u00a0'}</p>;
}
