import { useEffect, useMemo, useState } from 'preact/hooks';
import { chosen } from '~/job/choices.ts';
import type { Cell, Grid } from '~/job/ratingGrid.ts';
import { ratingSeries } from '~/job/ratingSeries.ts';
import { Echo } from '~/parts/Echo.tsx';
import { choiceWords } from '~/words/en/choices.ts';
import { echoes } from '~/words/en/echoes.ts';
import { figureWords } from '~/words/en/figures.ts';
import { parts } from '~/words/en/parts.ts';
import { typing } from '../../fields.ts';
import { lazy } from '../../lazy.tsx';
import { QuantityField } from '../../QuantityField.tsx';
import { capacityText } from '../../show.ts';
import { assessment, job } from '../../store.ts';
import { readyGrid } from '../cells.ts';
import { Cells } from './Cells.tsx';
import { isEqual } from './isEqual.ts';
import { drawn, hasBoth, more, useSettled } from './more.ts';
import { photo } from './photo.ts';
import { SeriesField } from './SeriesField.tsx';

const Photo = lazy(() => import('./Photo.tsx').then((module) => module.Photo));

/** The figures to copy from the maker's table, once the readings say which they are. */
export function Figures() {
  const here = readyGrid.value;
  const { id, chosen: answers, tables } = job.value;
  // Which rows are taken is said until somebody has said which they are; the line then stays while the step stands.
  const unsaid = useMemo(() => answers['rating.series'] === undefined, [id]);
  // Who typed the figures before knows what to copy.
  const typedBefore = useMemo(() => (tables.rating?.rows.length ?? 0) > 0, [id]);
  useEffect(() => {
    drawn.value = true;
  }, []);
  if (here === null) return null;
  return (
    <>
      {!typedBefore && !hasBoth() && <p class="step-say">{copySentence(here)}</p>}
      {unsaid && !hasBoth() && more.value === null && <Rows />}
      {photo.value && <Photo />}
      {here.airflows.map((_, block) => (
        <Block key={block} grid={here} block={block} />
      ))}
      <Understood grid={here} />
    </>
  );
}

/** The rows that the table is taken to have, and the others on request. */
function Rows() {
  const [asking, ask] = useState(false);
  const used = ratingSeries(job.value);
  // Rows of its own have no line to be said in.
  if (asking || used === 'other') return <SeriesField />;
  return (
    <Echo>
      {figureWords.rows(choiceWords['rating.series'].options[used])}{' '}
      {job.value.chosen['rating.series'] === undefined && parts.assumed}{' '}
      <button type="button" class="plain-button" onClick={() => ask(true)}>
        {figureWords.otherRows}
      </button>
    </Echo>
  );
}

function copySentence(here: Grid): string {
  const count = here.outdoors.length * here.wetBulbs.length * here.airflows.length;
  const printed = figureWords.printed[here.unit as keyof typeof figureWords.printed];
  return figureWords.copy(figureWords.counts[count] ?? figureWords.many(count), printed);
}

function Block({ grid: here, block }: { grid: Grid; block: number }) {
  return (
    <>
      {block === 1 && <QuantityField of="rating.airflowSecond" equal={isEqual('rating.airflowSecond')} />}
      <Cells grid={here} block={block} />
    </>
  );
}

/** How the last figure was read, and what the system should make. */
function Understood({ grid: here }: { grid: Grid }) {
  // Where the question stands below, its answer is not said twice.
  const settled = useSettled();
  if (typing.value?.startsWith('cell')) return <Echo>{''}</Echo>;
  const { expected } = assessment.value;
  const last = here.cells.findLast(({ read }) => read.state === 'read' && !read.plain);
  const said = [
    expected.ok && echoes.should(capacityText(expected.value.total)),
    expected.ok && settled && more.value === null && figureWords.basis[chosen(job.value, 'rating.basis') ?? 'unsure'],
    expected.ok && expected.value.outside.length > 0 && figureWords.extended,
    last && readSentence(last),
  ].filter(Boolean);
  return said.length === 0 ? null : <Echo>{said.join(' ')}</Echo>;
}

function readSentence({ text, read }: Cell): string {
  if (read.state !== 'read') return '';
  return (read.isShare ? figureWords.shareOf : figureWords.readAs)(text.trim(), capacityText(read.si));
}
