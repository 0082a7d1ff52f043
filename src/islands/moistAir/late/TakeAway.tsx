import { useState } from 'preact/hooks';
import { standalone } from '~/charts/moistAir/standalone.ts';
import { encodeStates } from '~/job/encodeStates.ts';
import { statesCsv } from '~/job/statesCsv.ts';
import { type CsvProblem, statesFromCsv } from '~/job/statesFromCsv.ts';
import { Check, Echo } from '~/parts/Echo.tsx';
import { jobLine } from '~/words/en/jobLine.ts';
import { pasteProblem, take } from '~/words/en/moistAirTake.ts';
import { CopyLink, longestLink } from '../../CopyLink.tsx';
import { edit, job, system } from '../../jobStore.ts';
import { regionText } from '../../regionText.ts';
import { textFile } from '../../saveFile.ts';
import { everything } from '../drawings.ts';
import { ownProcess } from '../own.ts';
import { chartJob, isInvented, points, pressure } from '../points.ts';
import { titleText } from '../Title.tsx';
import { families, frame, lines, usualFamilies } from '../view.ts';

/** The picture as a file, the points as a table and as a link; and a table brought in. */
export function TakeAway() {
  return (
    <div class="air-take">
      <p class="tools">
        <button type="button" class="plain-button" onClick={savePicture}>
          {take.svg}
        </button>
        <button type="button" class="plain-button" onClick={saveTable}>
          {take.csv}
        </button>
      </p>
      <Link />
      <Paste />
    </div>
  );
}

function savePicture(): void {
  const paper = frame.value;
  if (!paper) return;
  const hatched = ownProcess.value ? regionText() : null;
  const note = [isInvented.value && `${jobLine.demo}.`, hatched].filter(Boolean).join(' ');
  const text = standalone(paper, lines.value, everything(paper), { title: titleText(false), note });
  textFile(text, take.file, 'svg');
}

function saveTable(): void {
  textFile(statesCsv(points.value, system.value, pressure.value), take.file, 'csv');
}

function Link() {
  const usual =
    families.value.length === usualFamilies.length && usualFamilies.every((one) => families.value.includes(one));
  const query = encodeStates({ job: chartJob.value, system: system.value, families: usual ? null : families.value });
  const url = `${location.origin}${location.pathname}${query}`;
  if (url.length > longestLink) return <Check>{take.linkTooLong}</Check>;
  return <CopyLink id="air-link" label={take.linkField} url={url} hint={take.linkLess} />;
}

function Paste() {
  const [text, type] = useState('');
  const [said, say] = useState<{ readonly bad: boolean; readonly words: string } | null>(null);
  const put = () => {
    const read = statesFromCsv(job.value, text, system.value);
    if (!read.ok) return say({ bad: true, words: problemWords(read.problem) });
    if (!edit(...read.edits)) return;
    type('');
    say({ bad: false, words: take.pasted(read.count) + (read.leftOut > 0 ? take.leftOut(read.leftOut) : '') });
  };
  return (
    <div class="field field-text">
      <label for="air-paste">{take.paste}</label>
      <div class="field-box">
        <textarea
          id="air-paste"
          rows={4}
          value={text}
          aria-describedby="air-paste-hint air-paste-said"
          onInput={(event) => {
            type(event.currentTarget.value);
            say(null);
          }}
        />
      </div>
      <p class="hint" id="air-paste-hint">
        {take.pasteHint}
      </p>
      <div role="status" id="air-paste-said">
        {said && (said.bad ? <Check>{said.words}</Check> : <Echo>{said.words}</Echo>)}
      </div>
      <p class="tools">
        <button type="button" class="plain-button" onClick={put}>
          {take.pasteKey}
        </button>
      </p>
    </div>
  );
}

function problemWords(problem: CsvProblem): string {
  if (problem.code === 'tooMany') return pasteProblem.tooMany(problem.count, problem.room);
  if ('line' in problem) return pasteProblem.cell(problem.code, problem.line, problem.column, problem.text);
  return pasteProblem[problem.code];
}
