import { formatNumber } from '~/job/format.ts';
import type { ColumnsSaid } from '~/job/log/readColumns.ts';
import type { LogRole } from '~/job/log/roles.ts';
import { Select } from '~/parts/Select.tsx';
import { recordWords as words } from '~/words/en/probeRecords.ts';
import type { LogOpened } from '../../workers/log.ts';

export interface OpenedRecord extends LogOpened {
  readonly name: string;
}

interface Props {
  readonly id: string;
  readonly of: OpenedRecord;
  readonly said: ColumnsSaid;
  /** What a column may be here. */
  readonly roles: readonly LogRole[];
  readonly onSay: (said: ColumnsSaid) => void;
}

/** What each column of a record is taken for, to be put right by whoever knows better. */
export function RecordColumns({ id, of: record, said, roles, onSay }: Props) {
  const options = Object.fromEntries(roles.map((role) => [role, words.roles[role]]));
  const choose = (index: number, role: LogRole) => {
    const others = said.roles.map((one) => (one === role && role !== 'none' ? 'none' : one));
    onSay({ ...said, roles: others.map((one, at) => (at === index ? role : one)) });
  };
  return (
    <div class="record-columns">
      <p class="label">{words.is(formatNumber(record.rows, 0), record.name)}</p>
      {record.heads.map(({ title, sample }, index) => (
        <div key={index} class="record-column">
          <Select
            id={`${id}-column-${index}`}
            ask={title}
            options={options}
            value={said.roles[index] ?? 'none'}
            open={words.roles.none}
            onChoose={(role) => choose(index, role as LogRole)}
          />
          <p class="hint">{sample}</p>
        </div>
      ))}
      <Select
        id={`${id}-unit`}
        ask={words.unit}
        options={words.units}
        value={said.temperatures}
        open={words.units.degF}
        onChoose={(unit) => onSay({ ...said, temperatures: unit as ColumnsSaid['temperatures'] })}
      />
      {record.ownUnits && <p class="hint">{words.ownUnits}</p>}
      {said.roles.includes('supplyStatic') && (
        <Select
          id={`${id}-pressure`}
          ask={words.pressure}
          options={words.pressures}
          value={said.pressures}
          open={words.pressures.inwcDuct}
          onChoose={(unit) => onSay({ ...said, pressures: unit as ColumnsSaid['pressures'] })}
        />
      )}
    </div>
  );
}
