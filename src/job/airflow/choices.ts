/** What is chosen where the airflow is found. */
import { airflowMethods } from '../../calc/airflow/methods.ts';

const shownAs = { values: ['actual', 'standard', 'uncorrected'] } as const;
const yesOrNo = { values: ['yes', 'no'] } as const;
/** The speed that the blower ran on while the air was measured. */
const speed = { values: ['cooling', 'other', 'unsure'], assumed: 'cooling' } as const;

export const airflowChoices = {
  /** The method whose figure is the one found; `together`: all that are evidence. */
  'airflow.use': { values: [...airflowMethods, 'together'] },
  'readout.shows': { values: ['sensed', 'demanded', 'unsure'], assumed: 'unsure' },
  'readout.speed': speed,
  'fanTable.motor': { values: ['fixedSpeed', 'constantAirflow', 'unsure'], assumed: 'unsure' },
  /** The column of the table that stands for the speed it runs on. */
  'fanTable.column': { values: ['1', '2', '3', '4', '5'], assumed: '1' },
  'traverse.shape': { values: ['rectangular', 'round'], assumed: 'rectangular' },
  'traverse.instrument': { values: ['pitot', 'vane', 'thermal', 'thermalActual'], assumed: 'pitot' },
  'traverse.place': { values: ['entering', 'leaving'], assumed: 'entering' },
  /** Holes and points of a traverse; unanswered: as many as the rule has for the size. */
  'traverse.lines': { values: ['2', '3', '5', '6', '7'] },
  'traverse.points': { values: ['5', '6', '7', '8', '10'] },
  'traverse.behind': { values: ['fan', 'other', 'unsure'], assumed: 'unsure' },
  'rise.heat': { values: ['single', 'three', 'power', 'fuel'], assumed: 'single' },
  'rise.efficiencyFrom': { values: ['measured', 'annual', 'guessed'], assumed: 'guessed' },
  'rise.probes': { values: ['several', 'one', 'inSight'], assumed: 'one' },
  'rise.blowerBetween': { ...yesOrNo, assumed: 'yes' },
  'rise.speed': { ...speed, assumed: 'unsure' },
  'fanTable.speed': speed,
  'traverse.speed': speed,
  'flowGrid.speed': speed,
  'match.speed': speed,
  'hood.speed': speed,
  'grille.speed': speed,
  'flowGrid.shownAs': { ...shownAs, assumed: 'uncorrected' },
  'match.shownAs': { ...shownAs, assumed: 'uncorrected' },
  'hood.shownAs': { ...shownAs, assumed: 'actual' },
  'hood.kind': { values: ['powered', 'compensated', 'plain'], assumed: 'plain' },
  'hood.covers': { ...yesOrNo, assumed: 'yes' },
  'hood.tight': { ...yesOrNo, assumed: 'no' },
  'grille.factorFrom': { values: ['maker', 'traverse', 'guess'], assumed: 'guess' },
} as const;
