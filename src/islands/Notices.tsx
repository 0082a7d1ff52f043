import type { StorageTrouble } from '~/job/storage.ts';
import { Check } from '~/parts/Echo.tsx';
import { demoNotices, storageWords } from '~/words/en/notices.ts';
import { job, source } from './jobStore.ts';
import { keeping } from './keep.ts';
import { unread } from './opening.ts';

/** What has to be known before the first field: that figures are invented, or that nothing can be kept. */
export function Notices() {
  const kept = keeping.value === 'not yet' || keeping.value === 'kept';
  const trouble = kept ? null : storageWords[keeping.value as StorageTrouble];
  const broken = unread.value && storageWords[unread.value];
  const invented = job.value.invented === true;
  if (!trouble && !invented && !broken) return null;
  return (
    <div class="notices">
      {invented && <p class="invented">{source.value === 'demo' ? demoNotices.banner : demoNotices.copyBanner}</p>}
      {broken && <Check>{broken}</Check>}
      {trouble && <Check>{trouble}</Check>}
    </div>
  );
}
