import { unitLabel } from '~/job/format.ts';
import { columnLetters } from '~/job/tableImport/cell.ts';
import type { Found } from '~/job/tableImport/imported.ts';
import { usualUnit } from '~/job/tableImport/proposed.ts';
import type { Factors, Meaning, Role } from '~/job/tableImport/types.ts';
import { unitsOf } from '~/job/tableImport/vocabulary.ts';
import type { UnitKey } from '~/job/types.ts';
import { Echo } from '~/parts/Echo.tsx';
import { Select } from '~/parts/Select.tsx';
import { roleNames, tablePaste, unitNames, wherePrinted } from '~/words/en/ratingTable.ts';
import { type About, about, said, say } from './model.ts';

/** What each part of the sheet is taken for, to be confirmed or put right. */
export function Meanings({ of: { proposal } }: { of: Found }) {
  const { meanings, basis, stages, factors } = proposal;
  const set = (more: Partial<About>) => {
    about.value = { ...about.value, ...more };
  };
  return (
    <fieldset class="meanings">
      <legend>{tablePaste.taken}</legend>
      <p class="hint">{tablePaste.takenLead}</p>
      {meanings
        .filter(({ id }) => id !== 'line:stage')
        .map((meaning) => (
          <One key={meaning.id} meaning={meaning} />
        ))}
      {stages.length > 1 && (
        <Select
          id="table-which-stage"
          ask={tablePaste.whichStage}
          options={Object.fromEntries(stages.map((stage) => [stage, stage]))}
          value={said.value.stage ?? undefined}
          open={tablePaste.open}
          onChoose={(stage) => say({ ...said.value, stage })}
        />
      )}
      <div class="field-row">
        <Select
          id="table-basis"
          ask={tablePaste.basis}
          options={tablePaste.bases}
          value={about.value.basis ?? basis ?? undefined}
          open={tablePaste.open}
          onChoose={(value) => set({ basis: value as About['basis'] })}
        />
        <Select
          id="table-stage"
          ask={tablePaste.stage}
          options={tablePaste.stages}
          value={about.value.stage}
          open={tablePaste.open}
          onChoose={(stage) => set({ stage })}
        />
      </div>
      {factors.map((one) => (
        <FactorsFound key={`${one.cause}/${one.spot.row}`} of={one} onChoose={set} />
      ))}
    </fieldset>
  );
}

function One({ meaning }: { meaning: Meaning }) {
  const { id, role, unit, unitSaid, samples } = meaning;
  const title = titleOf(meaning);
  const choose = (to: Role, in_: UnitKey) =>
    say({ ...said.value, meanings: { ...said.value.meanings, [id]: { role: to, unit: in_ } } });
  const units = unitsOf(role);
  return (
    <div class="field-row">
      <Select
        id={`table-role-${id}`}
        ask={tablePaste.role(title)}
        options={roleNames}
        value={role}
        open={tablePaste.open}
        onChoose={(to) => choose(to as Role, usualUnit(samples, to as Role))}
      />
      {units.length > 1 && (
        <Select
          id={`table-unit-${id}`}
          ask={unitSaid ? tablePaste.unit : tablePaste.assumedUnit}
          options={Object.fromEntries(units.map((one) => [one, unitNames[one] ?? unitLabel(one)]))}
          value={unit}
          open={tablePaste.open}
          onChoose={(to) => choose(role, to as UnitKey)}
        />
      )}
    </div>
  );
}

/** Where it stands and what the sheet calls it, or the first of its numbers. */
function titleOf({ id, where, title, samples }: Meaning): string {
  const name = where === 'column' ? wherePrinted.column(columnLetters(Number(id.split(':')[1]))) : wherePrinted[where];
  const words = title === '' ? samples.slice(0, 3).join(', ') : `“${title.slice(0, 40)}”`;
  return words === '' ? name : `${name} (${words})`;
}

function FactorsFound({ of: { cause, lines }, onChoose }: { of: Factors; onChoose: (more: Partial<About>) => void }) {
  if (cause === 'airflow') return <Echo>{tablePaste.factors.airflow(lines.length)}</Echo>;
  const options = Object.fromEntries(lines.map(({ of, total }) => [total, `${of}: ${total}`]));
  return (
    <Select
      id={`table-${cause}`}
      ask={tablePaste.factors[cause]}
      options={{ '': tablePaste.factors.none, ...options }}
      value={about.value[cause] ?? ''}
      open={tablePaste.open}
      onChoose={(text) => onChoose({ [cause]: text === '' ? undefined : text })}
    />
  );
}
