import { useEffect } from 'preact/hooks';
import { type SameCause, sameCauses } from '~/calc/confidence/difference.ts';
import { lastTyped } from '~/job/jobShelf.ts';
import type { Job } from '~/job/types.ts';
import { Check } from '~/parts/Echo.tsx';
import { href } from '~/parts/href.ts';
import { Select } from '~/parts/Select.tsx';
import { sameWords, compareWords as words } from '~/words/en/compare.ts';
import { jobsPage, shelfProblems } from '~/words/en/jobs.ts';
import { followUnits } from '../opening.ts';
import { clock } from '../show.ts';
import { Differs } from './Differs.tsx';
import { checksDiffer, choose, chosen, jobs, look, same, toggle, trouble, type Which } from './model.ts';
import { SideBySide } from './SideBySide.tsx';

/** Two jobs side by side: which they are, what they share, what they come to, and whether that is a difference. */
export function TwoJobs() {
  useEffect(() => {
    void look();
    return followUnits();
  }, []);
  const list = jobs.value;
  if (list === null) return <p>{'\u00a0'}</p>;
  return (
    <>
      {trouble.value && <Check>{shelfProblems[trouble.value]}</Check>}
      {list.length < 2 ? (
        <p>{words.tooFew}</p>
      ) : (
        <>
          <div class="field-row">
            <Side which="before" jobs={list} />
            <Side which="after" jobs={list} />
          </div>
          <Same />
          <Differs />
          <SideBySide />
        </>
      )}
      <p class="tools">
        <a href={href('/jobs/')}>{words.toJobs}</a>
      </p>
    </>
  );
}

function Side({ which, jobs: list }: { which: Which; jobs: readonly Job[] }) {
  return (
    <Select
      id={`compare-${which}`}
      ask={words[which]}
      options={Object.fromEntries(list.map((job) => [job.id, nameIn(job)]))}
      value={chosen[which].value}
      open={words.choose}
      onChoose={(id) => choose(which, id)}
    />
  );
}

function nameIn(job: Job): string {
  const at = lastTyped(job);
  const day = at && new Date(at).toLocaleDateString('en', { day: 'numeric', month: 'short', year: 'numeric' });
  return [job.notes.address?.trim() || jobsPage.unnamed, day && `${day} ${clock(at)}`].filter(Boolean).join(' · ');
}

function Same() {
  const causes = Object.keys(sameCauses) as readonly SameCause[];
  return (
    <fieldset class="choices">
      <legend>{words.sameAsk}</legend>
      <p class="hint">{words.sameLead}</p>
      <ul class="ticks">
        {causes.map((cause) => (
          <li key={cause}>
            <label>
              <input type="checkbox" checked={same.value.includes(cause)} onChange={() => toggle(cause)} />
              <span>{sameWords[cause]}</span>
            </label>
          </li>
        ))}
      </ul>
      {checksDiffer.value && same.value.includes('probes') && <p class="hint">{words.probesDiffer}</p>}
    </fieldset>
  );
}
