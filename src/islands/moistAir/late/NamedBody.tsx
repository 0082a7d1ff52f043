import { signal } from '@preact/signals';
import { giveAs, removeState, type StateColumn, setState } from '~/job/stateEdits.ts';
import { type Cell, type HumidityMeasure, humidityMeasures, type NamedState, type StateKey } from '~/job/states.ts';
import type { System } from '~/job/types.ts';
import { Echo } from '~/parts/Echo.tsx';
import { Select } from '~/parts/Select.tsx';
import { TextField } from '~/parts/TextField.tsx';
import { pointWords } from '~/words/en/moistAirSteps.ts';
import { CellField } from '../../CellField.tsx';
import { shownUnit, typing } from '../../fields.ts';
import { edit, job, system } from '../../jobStore.ts';
import { nameOfState } from '../points.ts';
import { AirProblem } from './AirProblem.tsx';

/** The measure that somebody wants to give, while its field is still empty. */
const wanted = signal<Readonly<Partial<Record<StateKey, HumidityMeasure>>>>({});

/** A named state: its name and its two figures. */
export function NamedBody({ state }: { state: NamedState }) {
  const { key, air } = state;
  const measure = state.measure ?? wanted.value[key] ?? 'relativeHumidity';
  const name = nameOfState(state);
  const write = (column: StateColumn) => (text: string, of: System) =>
    edit(...setState(job.value, key, { ...(isHumidity(column) ? noHumidity : {}), [column]: text }, of));
  const choose = (to: HumidityMeasure) => {
    if (air.ok) edit(...giveAs(job.value, key, to, air.value, system.value));
    else edit(...setState(job.value, key, noHumidity, system.value));
    wanted.value = { ...wanted.value, [key]: to };
  };
  return (
    <>
      <TextField
        id={`state-${key}-name`}
        name={pointWords.name}
        value={state.name}
        onInput={(text, field) => {
          if (!write('name')(text.slice(0, 40), system.value)) field.value = state.name;
        }}
      />
      <div class="field-row">
        <CellField
          id={`state-${key}-dryBulb`}
          of="state.dryBulb"
          cell={cellAt(state.dryBulb, 'dryBulb')}
          onText={write('dryBulb')}
        />
        <CellField
          id={`state-${key}-humidity`}
          of={`state.${measure}`}
          cell={cellAt(state.humidity, measure)}
          onText={write(measure)}
        />
      </div>
      {typing.value?.startsWith(`state-${key}`) ? null : <AirProblem outcome={air} />}
      {air.ok && <Echo>{pointWords.move}</Echo>}
      <Select
        id={`state-${key}-measure`}
        ask={pointWords.giveAs}
        options={pointWords.measures}
        value={measure}
        open=""
        onChoose={(value, select) => {
          if (isHumidity(value)) choose(value);
          select.value = measure;
        }}
      />
      <div class="tools">
        <button type="button" class="plain-button" onClick={() => edit(...removeState(job.value, key))}>
          {pointWords.remove(name)}
        </button>
      </div>
    </>
  );
}

const noHumidity = { relativeHumidity: '', wetBulb: '', dewPoint: '', humidityRatio: '' } as const;
const isHumidity = (text: string): text is HumidityMeasure => (humidityMeasures as readonly string[]).includes(text);

/** A column that the table does not have yet counts in the unit that is shown. */
const cellAt = (cell: Cell, what: 'dryBulb' | HumidityMeasure): Cell =>
  cell.text === '' ? { ...cell, unit: shownUnit(`state.${what}`) } : cell;
