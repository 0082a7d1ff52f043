import type { CoilLoad } from '~/calc/types.ts';
import type { Process } from '~/job/processes.ts';
import { processWords } from '~/words/en/moistAir.ts';
import { tableWords } from '~/words/en/moistAirSteps.ts';
import { joined } from '../../show.ts';
import { ownProcess } from '../own.ts';
import { nameOfPoint, processes, processNumber } from '../points.ts';
import { heat, none, water } from './Loads.tsx';

interface Row {
  readonly code: string;
  readonly name: string;
  readonly way: string;
  /** Absent while no airflow is stated, and of a mixing. */
  readonly load: CoilLoad | null;
  /** −1 where heat goes in: the name of the process says so, and its figures are positive. */
  readonly sign: 1 | -1;
}

const columns = ['total', 'sensible', 'latent', 'condensate'] as const;

/** The processes in figures, each from where to where. */
export function ProcessTable() {
  const rows = [...own(), ...processes.value.flatMap(listed)];
  if (rows.length === 0) return null;
  return (
    <table class="ledger">
      <caption>{tableWords.processes}</caption>
      <thead>
        <tr>
          <th scope="col">{tableWords.process}</th>
          {columns.map((column) => (
            <th scope="col" class="number" key={column}>
              {tableWords.loads[column]}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(({ code, name, way, load, sign }) => (
          <tr key={code}>
            <th scope="row">
              <b>{code}</b> {name}
              {way && <small> {way}</small>}
            </th>
            {columns.map((column) => (
              <td class="number" key={column}>
                {amount(column, sign, load)}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function amount(column: (typeof columns)[number], sign: 1 | -1, load: CoilLoad | null): string {
  if (!load) return none.number;
  return joined(column === 'condensate' ? water(load.condensate) : heat(sign * load[column], load.total));
}

function own(): Row[] {
  const load = ownProcess.value?.load;
  return load ? [{ code: 'R', name: processWords.job, way: '', load, sign: 1 }] : [];
}

function listed({ key, kind, from, with: other, to, outcome }: Process): Row[] {
  if (!outcome.ok || !from) return [];
  const end = kind === 'drying' && to ? to : key;
  const starts = [from, ...(kind === 'mixing' && other ? [other] : [])].map(nameOfPoint);
  return [
    {
      code: processNumber(key),
      name: processWords.kinds[kind],
      way: tableWords.way(starts, nameOfPoint(end)),
      load: outcome.value.load,
      sign: kind === 'heating' ? -1 : 1,
    },
  ];
}
