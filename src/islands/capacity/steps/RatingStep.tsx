import { useEffect } from 'preact/hooks';
import { usesSheet } from '~/job/usesSheet.ts';
import { quantityWords } from '~/words/en/quantities.ts';
import { ratingStep } from '~/words/en/steps.ts';
import { ChoiceField } from '../../ChoiceField.tsx';
import { lazy } from '../../lazy.tsx';
import { QuantityField } from '../../QuantityField.tsx';
import { assessment, edit, expectedHalf, interpreted, job, loaded } from '../../store.ts';
import { grid, isGeneric } from '../cells.ts';
import { capacitySteps, needText } from '../model.ts';
import { Remarks } from '../Remarks.tsx';
import { drawn, isAside, useSettled } from '../rating/more.ts';
import { StepFrame } from '../StepFrame.tsx';

const fetchLate = () => import('../rating/late.ts');
const Figures = lazy(() => fetchLate().then((late) => late.Figures));
const Certified = lazy(() => fetchLate().then((late) => late.Certified));
const RatingTools = lazy(() => fetchLate().then((late) => late.RatingTools));
const WholeTable = lazy(() => import('../../ratingTable/WholeTable.tsx').then((module) => module.WholeTable));
const MorePanel = lazy(() => fetchLate().then((late) => late.MorePanel));

/** Step 5: the one to four figures of the maker's table that lie around this test, or what stands for them. */
export function RatingStep() {
  const generic = isGeneric.value;
  const sheet = usesSheet(job.value);
  const airflowStated = sheet && job.value.tables.ratingSheet?.columns.some(({ key }) => key === 'airflow');
  const half = expectedHalf.value !== null;
  // A whole table is asked for once somebody comes near it: nobody else waits for what reads it.
  const { entered, notes } = job.value;
  const isNamed = Boolean(notes['outdoor.model'] || notes['indoor.model']);
  // A step that the page opened by itself has its job still to come.
  const isOpen = loaded.value && (capacitySteps.allOpen.value || capacitySteps.openStep.value === 'rating');
  const isNear = half || sheet || isNamed || isOpen || entered.nominalCapacity !== undefined;
  // Fetched with the expected half, so that the cells are there before anybody comes to them.
  useEffect(() => {
    if (half) void fetchLate();
  }, [half]);
  // What was answered before stands in the line of the step; it is asked again behind “More, or no table”.
  const settled = useSettled();
  const aside = isAside.value;
  // Of a kept job the figures are still to come: nothing below the first fields is seen to move.
  const hasCells = !generic && !sheet && job.value.tables.rating !== undefined;
  const awaits = !loaded.value || (hasCells && !drawn.value && grid.value?.state !== 'waiting');
  return (
    <StepFrame step="rating" tools={half && <RatingTools />} panel={half && <MorePanel />}>
      <div class="step-face" hidden={aside} data-awaits={awaits ? '' : undefined}>
        <div class="field-row">
          <QuantityField of="nominalCapacity" />
          {!airflowStated && <QuantityField of={generic ? 'rating.certified' : 'rating.airflow'} />}
        </div>
        {!generic && isNear && !aside && <WholeTable />}
        {generic ? <Certified /> : sheet ? null : grid.value?.state === 'ready' ? <Figures /> : <Waiting />}
        {!generic && !settled && <ChoiceField of="rating.basis" open />}
        <Remarks about="rating" />
        <Beyond />
      </div>
    </StepFrame>
  );
}

/** Which readings the cells wait for. */
function Waiting() {
  const needs = stillNeeded();
  return <p class="step-say">{needs === '' ? '\u00a0' : ratingStep.waiting(needs)}</p>;
}

function stillNeeded(): string {
  const here = grid.value;
  if (here?.state === 'waiting') return here.needs.map((key) => quantityWords[key].inSentence).join(ratingStep.and);
  const { entering } = assessment.value;
  const outdoors = interpreted.value.test.outdoorDryBulb === null ? ['outdoorDryBulb'] : [];
  return needText([...(entering.ok ? [] : entering.waiting), ...outdoors]);
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
