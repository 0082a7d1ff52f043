/** The airflow that the airflow sheet finds, by each method and by several together. */
import { type CombinedAirflow, combineAirflows } from '../../calc/airflow/combine.ts';
import type { AirflowFound } from '../../calc/airflow/found.ts';
import { type AirflowMethod, airflowMethods } from '../../calc/airflow/methods.ts';
import { attempt, waitingFor } from '../../calc/outcome.ts';
import type { Outcome, Trace } from '../../calc/types.ts';
import { said } from '../choices.ts';
import type { Job } from '../types.ts';
import { fromFanTable } from './fanTable.ts';
import { fromFlowGrid } from './flowGrid.ts';
import type { Found } from './found.ts';
import { fromGrille } from './grille.ts';
import { fromHood } from './hood.ts';
import { fromPressureMatch } from './pressureMatch.ts';
import { fromReadout } from './readout.ts';
import { fromTemperatureRise } from './temperatureRise.ts';
import { fromTraverse } from './traverse.ts';

const finders: Readonly<Record<AirflowMethod, (job: Job, t?: Trace) => Found>> = {
  readout: fromReadout,
  fanTable: fromFanTable,
  traverse: fromTraverse,
  temperatureRise: fromTemperatureRise,
  flowGrid: fromFlowGrid,
  pressureMatch: fromPressureMatch,
  hood: fromHood,
  grille: fromGrille,
};

/** The airflow by one method. */
export function findBy(job: Job, method: AirflowMethod, t?: Trace): Found {
  return finders[method](job, t);
}

/** Every answer that there is. */
function answersOf(job: Job): readonly AirflowFound[] {
  return airflowMethods.flatMap((method) => {
    const found = findBy(job, method);
    return found.ok ? [found.value] : [];
  });
}

/** All methods that are evidence as one. Waits while there are fewer than two answers. */
export function findTogether(job: Job, t?: Trace): Outcome<CombinedAirflow> {
  const answers = answersOf(job);
  if (answers.length < 2) return waitingFor('airflow.use');
  return attempt(() => combineAirflows(answers, t));
}

/** The airflow found: by the method that was chosen, by several together, or by the only one that has an answer. */
export function findAirflow(job: Job, t?: Trace): Outcome<AirflowFound | CombinedAirflow> {
  const use = said(job, 'airflow.use');
  if (use === 'together') return findTogether(job, t);
  if (use !== null) return findBy(job, use, t);
  const answers = answersOf(job);
  const [only] = answers;
  return only && answers.length === 1 ? findBy(job, only.method, t) : waitingFor('airflow.use');
}
