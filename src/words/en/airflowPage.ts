/** The airflow sheet for those who look for it. */
export const description =
  'Find the airflow of a ducted system by whichever way the job allows: readout, fan table, flow grid, hood, traverse, temperature rise, pressure matching. Each says how good it is.';
