import { useState } from 'preact/hooks';
import type { Cell, Grid } from '~/job/ratingGrid.ts';
import { Echo } from '~/parts/Echo.tsx';
import { echoes } from '~/words/en/echoes.ts';
import { quantityWords } from '~/words/en/quantities.ts';
import { ratingStep } from '~/words/en/steps.ts';
import { ChoiceField } from '../../ChoiceField.tsx';
import { typing } from '../../fields.ts';
import { lazy } from '../../lazy.tsx';
import { QuantityField } from '../../QuantityField.tsx';
import { capacityText, temperature } from '../../show.ts';
import { assessment, edit, job } from '../../store.ts';
import { Cells } from '../Cells.tsx';
import { cellsSaid, grid } from '../cells.ts';
import { Remarks } from '../Remarks.tsx';
import { StepFrame } from '../StepFrame.tsx';

const Heads = lazy(() => import('../Heads.tsx').then((module) => module.Heads));

/** Step 5: the one to four figures of the maker's table that lie around this test. */
export function RatingStep() {
  const [heads, setHeads] = useState(false);
  const here = grid.value;
  return (
    <StepFrame
      step="rating"
      tools={here.state === 'ready' ? <Tools heads={heads} onHeads={() => setHeads(!heads)} /> : null}
    >
      <div class="field-row">
        <QuantityField of="nominalCapacity" />
        <QuantityField of="rating.airflow" />
      </div>
      {here.state === 'ready' ? (
        <>
          <p class="step-say">
            {copySentence(here)} {ratingStep.printed[here.unit as keyof typeof ratingStep.printed]}
          </p>
          {here.airflows.map((_, block) => (
            <Block key={block} grid={here} block={block} onHead={() => setHeads(true)} />
          ))}
          <Understood grid={here} />
          {heads && <Heads />}
        </>
      ) : (
        <p class="step-say">
          {ratingStep.waiting(here.needs.map((key) => quantityWords[key].inSentence).join(ratingStep.and))}
        </p>
      )}
      <ChoiceField of="rating.basis" open />
      <Remarks about="rating" />
      <Beyond />
      <details class="fold">
        <summary>{ratingStep.blowerFold}</summary>
        <QuantityField of="rating.blowerPower" />
      </details>
    </StepFrame>
  );
}

function copySentence(here: Grid): string {
  const count = here.outdoors.length * here.wetBulbs.length * here.airflows.length;
  const word = ratingStep.counts[count] ?? ratingStep.many(count);
  return ratingStep.copy(
    word,
    temperature(here.at.outdoorDryBulb),
    temperature(here.at.enteringWetBulb),
    cellsSaid.value,
  );
}

function Block({ grid: here, block, onHead }: { grid: Grid; block: number; onHead: () => void }) {
  return (
    <>
      {block === 1 && <QuantityField of="rating.airflowSecond" />}
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
    expected.ok && expected.value.outside.length > 0 && ratingStep.extended,
    last && readSentence(last),
  ].filter(Boolean);
  return said.length === 0 ? null : <Echo>{said.join(' ')}</Echo>;
}

function readSentence({ text, quantity, read }: Cell): string {
  if (read.state !== 'read') return '';
  const share = quantity === 'sensible' && read.unit === 'fraction';
  return (share ? ratingStep.shareOf : ratingStep.readAs)(text.trim(), capacityText(read.si));
}

function Tools({ heads, onHeads }: { heads: boolean; onHeads: () => void }) {
  const { chosen } = job.value;
  const sensible = chosen['rating.withSensible'] === 'yes';
  const two = chosen['rating.blocks'] === 'two';
  return (
    <>
      <button type="button" class="plain-button" aria-expanded={heads ? 'true' : 'false'} onClick={onHeads}>
        {heads ? ratingStep.lessRows : ratingStep.otherRows}
      </button>
      <button
        type="button"
        class="plain-button"
        onClick={() => edit({ slot: 'chosen', key: 'rating.withSensible', to: sensible ? 'no' : 'yes' })}
      >
        {sensible ? ratingStep.dropSensible : ratingStep.addSensible}
      </button>
      <button
        type="button"
        class="plain-button"
        onClick={() => edit({ slot: 'chosen', key: 'rating.blocks', to: two ? 'one' : 'two' })}
      >
        {two ? ratingStep.dropBlock : ratingStep.addBlock}
      </button>
    </>
  );
}

/** Asked only where it matters: whether to carry the table on beyond its ends. */
function Beyond() {
  const outside = assessment.value.remarks.some(({ code }) => code === 'outsideTable');
  const extend = job.value.chosen['rating.beyond'] === 'extend';
  if (!outside && !extend) return null;
  return (
    <p class="tools">
      <button
        type="button"
        class="plain-button"
        onClick={() => edit({ slot: 'chosen', key: 'rating.beyond', to: extend ? 'refuse' : 'extend' })}
      >
        {extend ? ratingStep.refuse : ratingStep.extend}
      </button>
    </p>
  );
}
