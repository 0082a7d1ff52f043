/** The shelf of worksheets, in the order of a job. Every path leads to a page that exists. */
export const shelf = {
  title: 'On the job',
  description:
    'The worksheets of a job: measured cooling, and what it needs: airflow, probes, ratings, lines, the air chart.',
  say: 'All of them work on the same job. What is typed in one is there in the others.',
  heading: 'Worksheets',
} as const;

export const worksheets = [
  {
    path: '/worksheets/capacity/',
    name: 'Measured cooling',
    say: 'What it delivers now, and what it should deliver. Begin here.',
  },
  {
    path: '/worksheets/airflow/',
    name: 'Find the airflow',
    say: 'Eight ways, how good each of them is, and what to do when two of them differ.',
  },
  {
    path: '/worksheets/probes/',
    name: 'Check the probes',
    say: 'Both side by side, what they differ by and what that is worth; waiting until steady, with a logger’s record; the supply air point by point.',
  },
  {
    path: '/worksheets/expected/',
    name: 'What it should make',
    say: 'The maker’s table as a surface, and every step from the nameplate to the figure to expect.',
  },
  {
    path: '/worksheets/line-set/',
    name: 'Long lines',
    say: 'What a long, narrow or lifted refrigerant line leaves of the capacity, and of the subcooling.',
  },
  {
    path: '/worksheets/moist-air/',
    name: 'Air chart',
    say: 'The job’s own air on the moist-air (psychrometric) chart, with states and processes of your own.',
  },
  {
    path: '/jobs/',
    name: 'Jobs on this device',
    say: 'Every job that is kept here: open, copy, delete, save as a file, bring in from one.',
  },
] as const;
