import type { NoteKey } from '~/job/types.ts';
import { href } from '~/parts/href.ts';
import { choiceWords } from '~/words/en/choices.ts';
import { identity } from '~/words/en/identity.ts';
import { identityChoiceWords } from '~/words/en/identityChoices.ts';
import { ChoiceField } from '../ChoiceField.tsx';
import { NoteField } from '../NoteField.tsx';
import { job } from '../store.ts';

Object.assign(choiceWords, identityChoiceWords);

const names = [
  ['address', identity.address],
  ['tester', identity.tester],
] as const satisfies readonly (readonly [NoteKey, string])[];

const models = [
  ['outdoor.model', identity.outdoorModel],
  ['outdoor.serial', identity.outdoorSerial],
  ['indoor.model', identity.indoorModel],
  ['indoor.serial', identity.indoorSerial],
] as const satisfies readonly (readonly [NoteKey, string])[];

/** Which job and which equipment: for the report, and to find the right table. */
export function Identity() {
  const kind = job.value.chosen['equipment.kind'];
  return (
    <div class="identity">
      <p class="label quiet">{identity.lead}</p>
      <Notes of={names} />
      <ChoiceField of="equipment.kind" />
      {kind === 'packaged' && (
        <p class="hint">
          {identity.damper.say}{' '}
          <a href={href('/method/return-probe/#a-unit-with-an-outdoor-air-damper')}>{identity.damper.more}</a>
        </p>
      )}
      <p class="hint">{identity.notCovered}</p>
      <div class="field-row">
        <Notes of={models} />
      </div>
      {kind === 'furnaceCoil' && <Notes of={[['furnace.model', identity.furnaceModel]]} />}
      <ChoiceField of="certifiedMatch" />
      <Notes of={[['certificate', identity.certificate]]} />
      <ChoiceField of="filter" />
      <ChoiceField of="coil" />
    </div>
  );
}

function Notes({ of }: { of: readonly (readonly [NoteKey, string])[] }) {
  return of.map(([key, name]) => <NoteField key={key} of={key} name={name} />);
}
