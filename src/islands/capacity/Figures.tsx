import { useState } from 'preact/hooks';
import type { Cell, Grid } from '~/job/ratingGrid.ts';
import { Echo } from '~/parts/Echo.tsx';
import { echoes } from '~/words/en/echoes.ts';
import { figureWords } from '~/words/en/figures.ts';
import { typing } from '../fields.ts';
import { lazy } from '../lazy.tsx';
import { QuantityField } from '../QuantityField.tsx';
import { capacityText, temperature } from '../show.ts';
import { assessment, edit, job } from '../store.ts';
import { Cells } from './Cells.tsx';
import { cellsSaid, grid } from './cells.ts';
import { isEqual } from './isEqual.ts';

const Heads = lazy(() => import('./Heads.tsx').then((module) => module.Heads));

/** The figures to copy from the maker's table, once the readings say which they are. */
export function Figures() {
  const [heads, setHeads] = useState(false);
  const here = grid.value;
  if (here.state !== 'ready') return null;
  return (
    <>
      <p class="step-say">
        {copySentence(here)} {figureWords.printed[here.unit as keyof typeof figureWords.printed]}
      </p>
      {here.airflows.map((_, block) => (
        <Block key={block} grid={here} block={block} onHead={() => setHeads(true)} />
      ))}
      <Understood grid={here} />
      <div class="tools">
        <Tools heads={heads} onHeads={() => setHeads(!heads)} />
      </div>
      {heads && <Heads />}
    </>
  );
}

function copySentence(here: Grid): string {
  const count = here.outdoors.length * here.wetBulbs.length * here.airflows.length;
  const word = figureWords.counts[count] ?? figureWords.many(count);
  return figureWords.copy(
    word,
    temperature(here.at.outdoorDryBulb),
    temperature(here.at.enteringWetBulb),
    cellsSaid.value,
  );
}

function Block({ grid: here, block, onHead }: { grid: Grid; block: number; onHead: () => void }) {
  return (
    <>
      {block === 1 && <QuantityField of="rating.airflowSecond" equal={isEqual('rating.airflowSecond')} />}
      <Cells grid={here} block={block} onHead={onHead} />
    </>
  );
}

/** How the last figure was read, and what the system should make. */
function Understood({ grid: here }: { grid: Grid }) {
  if (typing.value?.startsWith('cell')) return <Echo>{'\u00a0'}</Echo>;
  const { expected } = assessment.value;
  const last = here.cells.findLast(({ read }) => read.state === 'read' && !read.plain);
  const said = [
    expected.ok && echoes.should(capacityText(expected.value.total)),
    expected.ok && expected.value.outside.length > 0 && figureWords.extended,
    last && readSentence(last),
  ].filter(Boolean);
  return said.length === 0 ? null : <Echo>{said.join(' ')}</Echo>;
}

function readSentence({ text, quantity, read }: Cell): string {
  if (read.state !== 'read') return '';
  const share = quantity === 'sensible' && read.unit === 'fraction';
  return (share ? figureWords.shareOf : figureWords.readAs)(text.trim(), capacityText(read.si));
}

function Tools({ heads, onHeads }: { heads: boolean; onHeads: () => void }) {
  const { chosen } = job.value;
  const sensible = chosen['rating.withSensible'] === 'yes';
  const two = chosen['rating.blocks'] === 'two';
  return (
    <>
      <button type="button" class="plain-button" aria-expanded={heads ? 'true' : 'false'} onClick={onHeads}>
        {heads ? figureWords.lessRows : figureWords.otherRows}
      </button>
      <button
        type="button"
        class="plain-button"
        onClick={() => edit({ slot: 'chosen', key: 'rating.withSensible', to: sensible ? 'no' : 'yes' })}
      >
        {sensible ? figureWords.dropSensible : figureWords.addSensible}
      </button>
      <button
        type="button"
        class="plain-button"
        onClick={() => edit({ slot: 'chosen', key: 'rating.blocks', to: two ? 'one' : 'two' })}
      >
        {two ? figureWords.dropBlock : figureWords.addBlock}
      </button>
    </>
  );
}
