import { jobsPage as words } from '~/words/en/jobs.ts';
import { isLasting, kept } from './model.ts';

/** How long the browser keeps what stands here, and what to do where that is not long. */
export function Keeping() {
  if (isLasting.value === null || kept.value?.length === 0) return null;
  return (
    <p class="hint">
      {isLasting.value ? words.lasting : words.notLasting} {isInBrowserOfIos() && words.homeScreen}
    </p>
  );
}

/** A tablet of that kind calls itself a desk computer, and has more than one touch point. */
function isInBrowserOfIos(): boolean {
  const { userAgent, maxTouchPoints } = navigator;
  const isIos = /iPhone|iPad/.test(userAgent) || (userAgent.includes('Macintosh') && maxTouchPoints > 1);
  return isIos && !matchMedia('(display-mode: standalone)').matches;
}
