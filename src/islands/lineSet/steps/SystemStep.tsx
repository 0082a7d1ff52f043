import { chosen } from '~/job/choices.ts';
import { meteringOf } from '~/job/lineSet.ts';
import { Check, Echo } from '~/parts/Echo.tsx';
import { lineAnswer, lineSheet } from '~/words/en/lineSet.ts';
import { ChoiceField } from '../../ChoiceField.tsx';
import { job } from '../../jobStore.ts';
import { QuantityField } from '../../QuantityField.tsx';
import { isPackaged, refusal } from '../model.ts';
import { StepOf } from '../StepOf.tsx';

/** Step 1: which machine, what is in it, and where its pressure falls. */
export function SystemStep() {
  const said = chosen(job.value, 'lineSet.meteringAt');
  const unsure = said === undefined || said === 'unsure';
  return (
    <StepOf step="lineSystem">
      <ChoiceField of="equipment.kind" />
      {!isPackaged.value && (
        <>
          <ChoiceField of="lineSet.meteringAt" />
          <Echo>{unsure ? lineSheet.meteringAssumed[meteringOf(job.value)] : ''}</Echo>
        </>
      )}
      {refusal.value && <Check>{lineAnswer[refusal.value]}</Check>}
      <ChoiceField of="refrigerant" />
      <QuantityField of="nominalCapacity" />
    </StepOf>
  );
}
