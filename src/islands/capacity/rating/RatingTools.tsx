import { useRef } from 'preact/hooks';
import type { ChoiceKey } from '~/job/types.ts';
import { usesSheet } from '~/job/usesSheet.ts';
import { href } from '~/parts/href.ts';
import { figureWords } from '~/words/en/figures.ts';
import { edit, interpreted, job } from '../../store.ts';
import { isGeneric, readyGrid } from '../cells.ts';
import { isAside, more } from './more.ts';
import { hold, photo } from './photo.ts';

/** What changes the figures leads back to them. */
function showFigures(): void {
  if (isAside.value) more.value = null;
}

/** The keys at the foot of step 5: one row on a phone. What is needed now and then stands in the panel. */
export function RatingTools() {
  return (
    <>
      {!isGeneric.value && !usesSheet(job.value) && readyGrid.value && !isAside.value && <PhotoKey />}
      <button
        type="button"
        class="plain-button"
        aria-expanded={more.value === null ? 'false' : 'true'}
        onClick={() => {
          more.value = more.value === null ? 'any' : null;
        }}
      >
        {more.value === null ? figureWords.more : isAside.value ? figureWords.back : figureWords.less}
      </button>
    </>
  );
}

/** The keys of the panel: another shape of the table, what stands for it, what comes off it. */
export function PanelTools() {
  const generic = isGeneric.value;
  return (
    <p class="tools">
      {!generic && !usesSheet(job.value) && readyGrid.value && <TableKeys />}
      <button
        type="button"
        class="plain-button"
        onClick={() => {
          edit({ slot: 'chosen', key: 'rating.from', to: generic ? 'cells' : 'generic' });
          showFigures();
        }}
      >
        {generic ? figureWords.haveTable : figureWords.certifiedOnly}
      </button>
      <a class="plain-button" href={href('/worksheets/line-set/')}>
        {figureWords.longLines}
      </a>
    </p>
  );
}

function TableKeys() {
  return (
    <>
      <Switch of="rating.turned" on="yes" off="no" names={[figureWords.turn, figureWords.turn]} />
      <Switch of="rating.withSensible" on="yes" off="no" names={[figureWords.addSensible, figureWords.dropSensible]} />
      {(betweenBlocks() || job.value.chosen['rating.blocks'] === 'two') && (
        <Switch of="rating.blocks" on="two" off="one" names={[figureWords.addBlock, figureWords.dropBlock]} />
      )}
    </>
  );
}

/** A key that switches a choice of two, named by what a press does. */
function Switch({
  of: key,
  on,
  off,
  names,
}: {
  of: ChoiceKey;
  on: string;
  off: string;
  names: readonly [string, string];
}) {
  const isOn = job.value.chosen[key] === on;
  return (
    <button
      type="button"
      class="plain-button"
      onClick={() => {
        edit({ slot: 'chosen', key, to: isOn ? off : on });
        showFigures();
      }}
    >
      {names[isOn ? 1 : 0]}
    </button>
  );
}

/** How far from the block's own airflow a second block serves better than the published flow curve. Our choice. */
const farFromBlock = 0.03;

/** Whether the airflow of the test is another one than that of the block, or may be. */
function betweenBlocks(): boolean {
  const measured = interpreted.value.test.airflow.volumeFlow;
  const block = readyGrid.value?.airflows[0];
  if (measured === null || block?.state !== 'read') return true;
  return Math.abs(measured / block.si - 1) > farFromBlock;
}

/** Holds a picture of the table above the cells. It never leaves the page, and the page forgets it. */
function PhotoKey() {
  const file = useRef<HTMLInputElement>(null);
  return (
    <>
      <button type="button" class="plain-button" onClick={() => file.current?.click()}>
        {photo.value ? figureWords.otherPhoto : figureWords.photo}
      </button>
      <input
        ref={file}
        type="file"
        accept="image/*"
        hidden
        onChange={(event) => {
          const input = event.currentTarget;
          if (input.files?.[0]) void hold(input.files[0]);
          input.value = '';
        }}
      />
    </>
  );
}
