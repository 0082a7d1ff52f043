import { useEffect } from 'preact/hooks';
import { writeJobFile } from '~/job/jobFile.ts';
import { type KeptJob, lastTyped } from '~/job/jobShelf.ts';
import { lockedOf } from '~/job/lockList.ts';
import { Check } from '~/parts/Echo.tsx';
import { href } from '~/parts/href.ts';
import { shelfProblems, jobsPage as words } from '~/words/en/jobs.ts';
import { textFile } from '../saveFile.ts';
import { BringIn } from './BringIn.tsx';
import { Keeping } from './Keeping.tsx';
import {
  atOnce,
  copy,
  deleted,
  isDrawing,
  kept,
  look,
  nameOf,
  putBack,
  readable,
  remove,
  renaming,
  saveResults,
  shown,
  startRename,
  trouble,
} from './model.ts';
import { Rename, renameKeyId } from './Rename.tsx';

/** The jobs of this device: a line each, what may be done with it, and files of them. */
export function List() {
  useEffect(() => void look(), []);
  const list = kept.value;
  if (list === null) return <p class="to-come">{'\u00a0'}</p>;
  return (
    <>
      {trouble.value && <Check>{shelfProblems[trouble.value]}</Check>}
      <div role="status">
        {deleted.value.map(({ record, name }) => (
          <p key={record.id} class="tools">
            <span>{words.deleted(name)}</span>
            <button type="button" class="plain-button" onClick={() => void putBack(record)}>
              {words.putBack}
            </button>
          </p>
        ))}
      </div>
      {list.length === 0 ? (
        <p>{words.none}</p>
      ) : (
        <ul>
          {list.slice(0, shown.value).map((one) => (
            <Line key={one.record.id} of={one} />
          ))}
        </ul>
      )}
      {list.length > shown.value && (
        <p class="tools">
          <button
            type="button"
            class="plain-button"
            onClick={() => {
              shown.value += atOnce;
            }}
          >
            {words.showMore(list.length - shown.value)}
          </button>
        </p>
      )}
      <p class="tools">
        <a class="action" href={href('/worksheets/capacity/?new')}>
          {words.start}
        </a>
        {list.length > 0 && (
          <button
            type="button"
            class="plain-button"
            onClick={() => textFile(writeJobFile(readable()), words.fileName, 'json')}
          >
            {words.saveAll}
          </button>
        )}
        {list.length > 0 && (
          <button type="button" class="plain-button" disabled={isDrawing.value} onClick={() => void saveResults()}>
            {words.saveResults}
          </button>
        )}
        {list.length > 1 && <a href={href('/jobs/compare/')}>{words.compare}</a>}
      </p>
      <p role="status">{isDrawing.value && words.drawing}</p>
      <BringIn />
      <Keeping />
    </>
  );
}

function Line({ of: one }: { of: KeptJob }) {
  const { record, job } = one;
  const name = nameOf(job);
  return (
    <li>
      <h2>{name}</h2>
      <p class="label quiet">{job ? factsOf(one) : words.unreadSay}</p>
      {renaming.value === record.id && <Rename id={record.id} />}
      <p class="tools">
        {job && (
          <>
            <a href={href(`/worksheets/capacity/?job=${record.id}`)} aria-label={words.openName(name)}>
              {words.openKey}
            </a>
            <a href={href(`/reports/view/?job=${record.id}`)} aria-label={words.reportName(name)}>
              {words.reportKey}
            </a>
            <Key id={renameKeyId(record.id)} name={words.renameName(name)} act={() => startRename(one)}>
              {words.renameKey}
            </Key>
            <Key name={words.copyName(name)} act={() => void copy(job)}>
              {words.copyKey}
            </Key>
            <Key name={words.saveName(name)} act={() => textFile(writeJobFile([job]), words.fileName, 'json')}>
              {words.saveOne}
            </Key>
          </>
        )}
        <Key name={words.deleteName(name)} act={() => void remove(one)}>
          {words.deleteKey}
        </Key>
      </p>
    </li>
  );
}

interface KeyProps {
  readonly id?: string;
  readonly name: string;
  readonly act: () => void;
  readonly children: string;
}

function Key({ id, name, act, children }: KeyProps) {
  return (
    <button id={id} type="button" class="plain-button" aria-label={name} onClick={act}>
      {children}
    </button>
  );
}

function factsOf({ job, isOpen }: KeptJob): string {
  if (!job) return '';
  const at = lastTyped(job);
  const day = at && new Date(at).toLocaleDateString('en', { day: 'numeric', month: 'long', year: 'numeric' });
  return [
    isOpen && words.open,
    lockedOf(job) && words.locked(lockedOf(job)?.code ?? ''),
    job.invented && words.invented,
    job.notes.system?.trim(),
    day && words.read(day),
    words.figures(Object.keys(job.entered).length),
  ]
    .filter(Boolean)
    .join(' · ');
}
