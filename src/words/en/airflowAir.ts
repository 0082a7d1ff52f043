/** The air that an airflow was measured in. */
export const airWords = {
  fold: 'The air it was measured in',
  returnTemperature: 'Return temperature',
  returnHumidity: 'Return humidity',
  assumed:
    'Until the probes have read it: usual air, 75\u00a0°F and 50\u00a0% in the return, 56\u00a0°F and 90\u00a0% in the supply (common practice, no source).',
} as const;
