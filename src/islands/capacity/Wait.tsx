import { useEffect, useState } from 'preact/hooks';
import { steadyRule } from '~/calc/confidence/steadyRule.ts';
import { steadyClock } from '~/job/sure/steadyClock.ts';
import { Echo } from '~/parts/Echo.tsx';
import { href } from '~/parts/href.ts';
import { waitWords as words } from '~/words/en/wait.ts';
import { clock } from '../show.ts';
import { job } from '../store.ts';

const clockOf = (seconds: number) => clock(new Date(seconds * 1000).toISOString());
/** ms. */
const look = 10_000;

/** The wait that was begun on the probe sheet, while it lasts: until when it is too early, and until when readings are taken. */
export function Wait() {
  const { notBefore } = steadyClock(job.value);
  const [now, setNow] = useState(() => Date.now() / 1000);
  const ends = notBefore === null ? -Infinity : notBefore + steadyRule.window;
  const isOver = now >= ends;
  useEffect(() => {
    if (isOver) return;
    const timer = setInterval(() => setNow(Date.now() / 1000), look);
    return () => clearInterval(timer);
  }, [isOver]);
  if (notBefore === null || isOver) return null;
  const to = clockOf(ends);
  return (
    <Echo>
      {now < notBefore ? words.notBefore(clockOf(notBefore), to) : words.reading(to)}{' '}
      <a href={href('/worksheets/probes/')}>{words.way}</a>
    </Echo>
  );
}
