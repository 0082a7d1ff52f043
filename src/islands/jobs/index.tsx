import { lazy } from '../lazy.tsx';

const List = lazy(() => import('./List.tsx').then((module) => module.List));

/** The jobs of this device. What reads them is fetched once the page stands: before that there is nothing to show. */
export function Jobs() {
  return <List />;
}
