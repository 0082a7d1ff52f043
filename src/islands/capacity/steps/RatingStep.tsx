import { useEffect } from 'preact/hooks';
import { usesSheet } from '~/job/usesSheet.ts';
import { href } from '~/parts/href.ts';
import { quantityWords } from '~/words/en/quantities.ts';
import { ratingStep } from '~/words/en/steps.ts';
import { ChoiceField } from '../../ChoiceField.tsx';
import { lazy } from '../../lazy.tsx';
import { QuantityField } from '../../QuantityField.tsx';
import { assessment, edit, job } from '../../store.ts';
import { grid } from '../cells.ts';
import { Remarks } from '../Remarks.tsx';
import { StepFrame } from '../StepFrame.tsx';

const fetchFigures = () => import('../Figures.tsx').then((module) => module.Figures);
const Figures = lazy(fetchFigures);
const WholeTable = lazy(() => import('../../ratingTable/WholeTable.tsx').then((module) => module.WholeTable));

/** Step 5: the one to four figures of the maker's table that lie around this test. */
export function RatingStep() {
  const here = grid.value;
  const measured = assessment.value.measured.ok;
  const airflowStated =
    usesSheet(job.value) && job.value.tables.ratingSheet?.columns.some(({ key }) => key === 'airflow');
  // Fetched with the first answer, so that the cells are there before anybody comes to them.
  useEffect(() => {
    if (measured) void fetchFigures();
  }, [measured]);
  return (
    <StepFrame step="rating">
      <div class="field-row">
        <QuantityField of="nominalCapacity" />
        {!airflowStated && <QuantityField of="rating.airflow" />}
      </div>
      <WholeTable />
      {usesSheet(job.value) ? null : here.state === 'ready' ? (
        <Figures />
      ) : (
        <p class="step-say">
          {ratingStep.waiting(here.needs.map((key) => quantityWords[key].inSentence).join(ratingStep.and))}
        </p>
      )}
      <ChoiceField of="rating.basis" open />
      <Remarks about="rating" />
      <Beyond />
      <p class="tools">
        <a href={href('/worksheets/line-set/')}>{ratingStep.longLines}</a>
      </p>
      <details class="fold">
        <summary>{ratingStep.blowerFold}</summary>
        <div class="field-row">
          <QuantityField of="rating.blowerPower" />
          <QuantityField of="blower.power" />
        </div>
      </details>
    </StepFrame>
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
