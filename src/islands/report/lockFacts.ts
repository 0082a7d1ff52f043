/** The code of the sheet, and whether the record is locked: for the title blocks of both pages. */
import { computed } from '@preact/signals';
import { changesAfterLock, lockedOf } from '~/job/lockList.ts';
import { sheetCode } from '~/job/sheetCode.ts';
import { report, reportBlock } from '~/words/en/report.ts';
import { titleBlock } from '~/words/en/results.ts';
import { clock } from '../show.ts';
import { interpreted, job } from '../store.ts';
import { day } from './facts.ts';

/** The code by which this sheet and the record are known to be the same: in two halves, to be read aloud. */
export const codeText = computed((): string => sheetCode(job.value).replace(/^.../, '$& '));

/** Whether the record is locked, what was changed since, and how much is taken for granted. */
export const stateText = computed((): string => {
  if (job.value.invented) return titleBlock.demo;
  const { state } = reportBlock;
  const lock = lockedOf(job.value);
  const changes = changesAfterLock(job.value).length;
  const { assumed } = interpreted.value;
  return [
    lock ? state.locked(report.onDay(day(lock.at), clock(lock.at))) : state.open,
    changes > 0 && state.changes(changes),
    assumed.length > 0 && state.assumed(assumed.length),
  ]
    .filter(Boolean)
    .join(', ');
});
