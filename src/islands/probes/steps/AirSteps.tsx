import { Echo } from '~/parts/Echo.tsx';
import { probeWords as words } from '~/words/en/probes.ts';
import { ChoiceField } from '../../ChoiceField.tsx';
import { LateFold } from '../../LateFold.tsx';
import { lazy } from '../../lazy.tsx';
import { apartIn, compared, isSwapped } from '../model.ts';
import { PairCells } from '../PairCells.tsx';
import { StepOf } from '../StepOf.tsx';

const OpenPairs = lazy(() => import('../pairs/OpenPairs.tsx').then((module) => module.OpenPairs));

/** Step 1: both in the return air. */
export function ReturnStep() {
  return (
    <StepOf step="probesReturn">
      {isSwapped.value && <p class="hint">{words.swap}</p>}
      <PairCells air={isSwapped.value ? 'swap' : 'return'} />
      <Found air="return" />
      <div class="fold-pair">
        <details class="fold">
          <summary>{words.otherWays}</summary>
          <ChoiceField of="humidityAs" />
          <ChoiceField of="probes.how" />
        </details>
        {!isSwapped.value && <Records air="return" />}
      </div>
    </StepOf>
  );
}

/** Step 2: both in the supply air. */
export function SupplyStep() {
  return (
    <StepOf step="probesSupply">
      {isSwapped.value ? (
        <p class="hint">{words.swapHere}</p>
      ) : (
        <>
          <PairCells air="supply" />
          <Records air="supply" />
        </>
      )}
      <Found air="supply" />
    </StepOf>
  );
}

/** The last step: both in the return air again. */
export function EndStep() {
  return (
    <StepOf step="probesEnd">
      <PairCells air="end" />
      <Records air="end" />
      <Found air="end" />
    </StepOf>
  );
}

/** What the probes' own records say of this air, for whoever has them. */
function Records({ air }: { air: keyof typeof compared }) {
  return (
    <LateFold summary={words.records}>
      <OpenPairs air={air} />
    </LateFold>
  );
}

function Found({ air }: { air: keyof typeof compared }) {
  const found = compared[air].value;
  if (!found) return null;
  const { temperature, humidity } = apartIn(found.difference);
  const said = humidity === null ? temperature : words.differ(temperature, humidity);
  return (
    <Echo>
      {words.count(found.pairs)}: {said}
    </Echo>
  );
}
