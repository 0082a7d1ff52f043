/** The picture of what the airflow does to the capacity. */
export const tryPerTon = {
  caption:
    'An invented three-ton coil on one day, the blower left out. Dashed: what it should make. Dotted: the part that dries. Thin: what it would be if the capacity went with the air.',
  flow: 'Airflow for each ton',
  flowAxis: (unit: string) => `airflow, ${unit}`,
  share: 'capacity, % of that at the printed airflow',
  cooling: 'cooling (sensible)',
  drying: 'drying (latent)',
  likeAir: 'in step with the air',
  table: 'What the coil makes at this airflow',
  total: 'Total',
  sensible: 'Cooling (sensible)',
  latent: 'Drying (latent)',
  said: (flow: string, air: string, total: string, drop: string) =>
    `At ${flow} it has ${air} of the printed air and makes ${total} of the cooling; the air comes out ${drop} cooler.`,
} as const;
