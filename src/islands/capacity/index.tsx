import { useEffect } from 'preact/hooks';
import { sheet } from '~/words/en/sheet.ts';
import { AskCopy } from '../AskCopy.tsx';
import { Notices } from '../Notices.tsx';
import { Answer } from './Answer.tsx';
import { Bar } from './Bar.tsx';
import { Identity } from './Identity.tsx';
import { Margin } from './Margin.tsx';
import { allOpen, isDesk } from './model.ts';
import { SheetBlock } from './SheetBlock.tsx';
import { start } from './start.ts';
import { AirflowStep } from './steps/AirflowStep.tsx';
import { AirStep } from './steps/AirStep.tsx';
import { OutdoorsStep } from './steps/OutdoorsStep.tsx';
import { RatingStep } from './steps/RatingStep.tsx';
import { SureStep } from './steps/SureStep.tsx';

/** The capacity sheet: six steps, the answer, what stands behind it, and the bar that is always in view. */
export function CapacitySheet() {
  useEffect(start, []);
  return (
    <div class="sheet">
      <div class="sheet-steps">
        <Notices />
        <details class="fold sheet-identity">
          <summary>{sheet.identity}</summary>
          <Identity />
        </details>
        <AirStep side="entering" />
        <AirStep side="leaving" />
        <AirflowStep />
        <OutdoorsStep />
        <RatingStep />
        <SureStep />
        {!isDesk.value && (
          <p class="tools">
            <button
              type="button"
              class="plain-button"
              onClick={() => {
                allOpen.value = !allOpen.value;
              }}
            >
              {allOpen.value ? sheet.closeAll : sheet.openAll}
            </button>
          </p>
        )}
      </div>
      <Answer />
      <Margin />
      <SheetBlock />
      <Bar />
      <AskCopy />
    </div>
  );
}
