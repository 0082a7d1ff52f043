/** Words of the list of a visit. */
import type { VisitItem } from '../../job/visit.ts';

export const visitWords = {
  lead: 'A tick notes the time. Nothing here changes a figure; the clock of “running” is the one of the probe sheet.',
  notBefore: (time: string) => `, not before ${time}`,
} as const;

export const visitNames: Readonly<Record<VisitItem, string>> = {
  rating: 'Rating page found',
  running: 'Running at full speed and airflow',
  probes: 'Probes checked side by side',
  airflow: 'Airflow found',
  placed: 'Probes in place',
  steady: 'Steady',
  read: 'Both airs read',
  outdoors: 'Outdoors read',
};
