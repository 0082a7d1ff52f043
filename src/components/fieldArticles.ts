/** Which article explains a field: by the beginning of its key, so that no worksheet carries the addresses in its script. */

/** The longer beginning first. */
const families: readonly (readonly [start: string, article: string])[] = [
  ['entering', 'return-probe'],
  ['leaving', 'supply-probe'],
  ['airflow', 'airflow-per-ton'],
  ['altitude', 'altitude'],
  ['barometer', 'altitude'],
  ['outdoorDryBulb', 'can-it-be-tested'],
  ['nominalCapacity', 'what-capacity-is'],
  ['blower', 'blower-heat'],
  ['rating.blowerPower', 'blower-heat'],
  ['rating', 'rating-data'],
  ['line', 'the-verdict'],
  ['lineSet', 'long-lines'],
  ['sideBySide', 'side-by-side'],
  ['condensate', 'near-saturation'],
  ['state', 'the-calculation'],
  ['process', 'the-calculation'],
  ['ducts', 'coil-against-rooms'],
  ['readout', 'airflow-readout'],
  ['fanTable', 'airflow-fan-table'],
  ['traverse', 'airflow-traverse'],
  ['rise', 'airflow-temperature-rise'],
  ['flowGrid', 'airflow-flow-grid'],
  ['match', 'airflow-pressure-matching'],
  ['hood', 'airflow-hood'],
  ['grille', 'airflow-grille'],
];

/** The slug of the article on a field; `undefined` for a key of no family. */
export const articleOf = (key: string): string | undefined =>
  families.find(([start]) => key === start || key.startsWith(`${start}.`))?.[1];
