import { lazy } from '../lazy.tsx';

const TwoJobs = lazy(() => import('./TwoJobs.tsx').then((module) => module.TwoJobs));

/** Two jobs of this device. What reads and compares them is fetched once the page stands. */
export function Compare() {
  return <TwoJobs />;
}
