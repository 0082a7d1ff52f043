/** The limits of the instruments of a job: what was typed, else what is usual for the class of the probe. */
import { probeClasses } from '../../calc/confidence/probeClasses.ts';
import type { Test } from '../../calc/types.ts';
import { chosen } from '../choices.ts';
import { entered } from '../entered.ts';
import { readProbeLimits } from '../probeLimits.ts';
import type { Measured } from '../readings.ts';
import type { Job } from '../types.ts';
import { joinSure } from './join.ts';

joinSure();

/** The half-width that holds for both probes, SI: the wider of the two, that of their class where none was typed. */
export function limitOf(job: Job, what: Measured): number {
  const typed = readProbeLimits(job, what).flatMap(({ read }) => (read.state === 'read' ? [read.si] : []));
  return Math.max(...typed, ...(typed.length < 2 ? [classLimit(job, what)] : []));
}

/** What the class of the probes stands for. Common practice, no source: the data sheet outranks it. */
export const classLimit = (job: Job, what: Measured): number =>
  probeClasses[chosen(job, 'probes.class') ?? 'ordinary'][what];

/** The limits of a test: probes and airflow. */
export function limitsOf(job: Job, test: Test): Pick<Test, 'probeLimits' | 'airflow'> {
  return {
    probeLimits: {
      dryBulb: limitOf(job, 'dryBulb'),
      relativeHumidity: limitOf(job, 'relativeHumidity'),
      wetBulb: limitOf(job, 'wetBulb'),
    },
    airflow: test.airflow.sources
      ? test.airflow
      : { ...test.airflow, limit: entered(job, 'airflow.limit') ?? test.airflow.limit },
  };
}
