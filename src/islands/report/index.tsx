import { useEffect } from 'preact/hooks';
import { lazy } from '../lazy.tsx';
import { expectedHalf, loaded } from '../store.ts';
import { startReport } from './start.ts';

const Report = lazy(() => import('./Report.tsx').then((module) => module.Report));

/** The report of the open job: this device's, the demo's, or that of a link. */
export function ReportPage() {
  useEffect(startReport, []);
  return loaded.value && expectedHalf.value ? <Report /> : <p>{'\u00a0'}</p>;
}
