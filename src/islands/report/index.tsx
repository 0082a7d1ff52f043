import { useEffect } from 'preact/hooks';
import { lazy } from '../lazy.tsx';
import { follow, open } from '../opening.ts';
import { askExpectedHalf, expectedHalf, loaded } from '../store.ts';

const Report = lazy(() => import('./Report.tsx').then((module) => module.Report));

/** The report of the open job: this device's, the demo's, or that of a link. */
export function ReportPage() {
  useEffect(() => {
    askExpectedHalf();
    const unfollow = follow();
    void open(new URLSearchParams(location.search));
    return unfollow;
  }, []);
  return loaded.value && expectedHalf.value ? <Report /> : <p>{'\u00a0'}</p>;
}
