import { useLayoutEffect } from 'preact/hooks';
import type { StorageTrouble } from '~/job/storage.ts';
import { Check } from '~/parts/Echo.tsx';
import { demoNotices, storageKeys, storageWords } from '~/words/en/notices.ts';
import { linkNotices, unreadLinks } from '~/words/en/sendLink.ts';
import { job, source } from './jobStore.ts';
import { keeping } from './keep.ts';
import { leavePlace } from './noticePlace.ts';
import { stale, unread } from './opening.ts';
import { takeCopy } from './ownJob.ts';
import { ReadAgain } from './ReadAgain.tsx';
import { saveThisJob } from './saveJob.ts';

/** What has to be known before the first field: that figures are invented, or that nothing can be kept. */
export function Notices() {
  useLayoutEffect(leavePlace, []);
  const kept = keeping.value === 'not yet' || keeping.value === 'kept';
  const trouble = kept ? null : storageWords[keeping.value as StorageTrouble];
  const broken = unread.value && { ...storageWords, ...unreadLinks }[unread.value];
  const invented = job.value.invented === true;
  const linked = source.value === 'linked';
  if (!trouble && !invented && !broken && !linked && !stale.value) return null;
  return (
    <div class="notices">
      {invented && <p class="invented">{source.value === 'demo' ? demoNotices.banner : demoNotices.copyBanner}</p>}
      {linked && (
        <>
          <p class="invented">{linkNotices.banner}</p>
          <p class="tools">
            <button type="button" class="plain-button" onClick={takeCopy}>
              {linkNotices.keep}
            </button>
            <span class="hint">{linkNotices.keepSay}</span>
          </p>
        </>
      )}
      {broken && <Check>{broken}</Check>}
      {trouble && (
        <>
          <Check>{trouble}</Check>
          <p class="tools">
            <button type="button" class="plain-button" onClick={() => void saveThisJob()}>
              {storageKeys.save}
            </button>
          </p>
        </>
      )}
      <ReadAgain />
    </div>
  );
}
