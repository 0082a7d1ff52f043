import { useEffect, useMemo } from 'preact/hooks';
import { usesSheet } from '~/job/usesSheet.ts';
import { href } from '~/parts/href.ts';
import { figureWords } from '~/words/en/figures.ts';
import { tableInUse, tablePaste } from '~/words/en/ratingTable.ts';
import { capacitySteps } from '../capacity/model.ts';
import { more } from '../capacity/rating/more.ts';
import { LateFold } from '../LateFold.tsx';
import { lazy } from '../lazy.tsx';
import { edit, expectedHalf, job } from '../store.ts';
import { Earlier } from './Earlier.tsx';
import { InUse } from './InUse.tsx';
import { keepOwn } from './kept.ts';

const TakeIn = lazy(() => import('./TakeIn.tsx').then((module) => module.TakeIn));

/** A whole table of the maker: one from an earlier job, the one in use, or a new one from a spreadsheet. */
export function WholeTable() {
  useEffect(keepOwn, []);
  const { id, tables } = job.value;
  // Who typed the cells before is asked for no whole table any more; it is still there behind “More, or no table”.
  const settled = useMemo(() => (tables.rating?.rows.length ?? 0) > 0, [id]);
  if (settled && more.value === null && tables.ratingSheet === undefined) return null;
  // Once there are cells to type into, a phone has no room for it beside them.
  const hasRoom = capacitySteps.isDesk.value || expectedHalf.value === null || more.value !== null;
  const waits = !usesSheet(job.value) && job.value.tables.ratingSheet !== undefined;
  return (
    <>
      <Earlier />
      {usesSheet(job.value) && <InUse />}
      {waits && (
        <p class="tools">
          <button
            type="button"
            class="plain-button"
            onClick={() => edit({ slot: 'chosen', key: 'rating.from', to: 'sheet' })}
          >
            {tableInUse.again}
          </button>
        </p>
      )}
      {hasRoom && (
        <LateFold summary={tablePaste.fold} kind="table-fold">
          <TakeIn />
        </LateFold>
      )}
      {expectedHalf.value === null && (
        // Later it stands among the keys of the step, which come with the expectation.
        <p class="tools">
          <a href={href('/worksheets/line-set/')}>{figureWords.longLines}</a>
        </p>
      )}
    </>
  );
}
