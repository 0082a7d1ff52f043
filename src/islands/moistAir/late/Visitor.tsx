import { useLayoutEffect } from 'preact/hooks';
import { Check } from '~/parts/Echo.tsx';
import { linkProblems, visitor } from '~/words/en/moistAirTake.ts';
import { source } from '../../jobStore.ts';
import { leavePlace } from '../../noticePlace.ts';
import { takeCopy } from '../../ownJob.ts';
import { refusedLink } from '../start.ts';

/** What came with a link: that it is not kept yet, or why it could not be read. */
export function Visitor() {
  useLayoutEffect(leavePlace, []);
  const refused = refusedLink.value;
  if (refused) {
    const { reason, part } = refused;
    return <Check>{reason === 'broken' ? linkProblems.broken(part) : linkProblems[reason]}</Check>;
  }
  if (source.value !== 'visitor') return null;
  return (
    <div class="notices air-visitor">
      <p class="invented">{visitor.banner}</p>
      <p class="tools">
        <button type="button" class="plain-button" onClick={takeCopy}>
          {visitor.keep}
        </button>
        <span class="hint">{visitor.keepSay}</span>
      </p>
    </div>
  );
}
