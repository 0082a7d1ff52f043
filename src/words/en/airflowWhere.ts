/** Where to measure and what to do there, method by method: a name for the drawing, field steps, a caution. */
import type { AirflowMethod } from '../../calc/airflow/found.ts';

interface WhereWords {
  /** What the drawing shows, for those who do not see it. */
  readonly picture: string;
  readonly steps: readonly string[];
  readonly caution?: string;
}

const drilling =
  'Never drill where you cannot see behind: not over the coil, the drain pan, heaters, refrigerant pipes, wiring, boards or gas parts.';

export const whereWords: Readonly<Record<AirflowMethod, WhereWords>> = {
  readout: {
    picture: 'The blower with its control: a wire carries the figure from the motor to the display of the control.',
    steps: [
      'Hold the system in cooling at full stage, with the normal airflow profile.',
      'Wait until the blower has run at that for five minutes.',
      'Read the airflow on the control, and look in its guide whether it senses the flow or asks for it.',
    ],
  },
  fanTable: {
    picture:
      'The rated unit between return and supply duct: one static pressure is read where the air enters it, one where the air leaves it. What stands outside those two holes counts as duct.',
    steps: [
      'Wet coil, cooling speed, panels on, filter as in the table’s footnote.',
      'Return hole: where the air enters the rated unit, behind an add-on filter. Supply hole: behind its last part, before the first branch.',
      'Air handler and packaged unit: the coil is inside. Furnace with a cased coil: the supply hole is between furnace and coil, so that the coil counts as duct.',
      'Point the tip into the air, read both sides against the room, and plug the holes.',
    ],
    caution: drilling,
  },
  flowGrid: {
    picture:
      'A metering plate in the filter slot; the supply static pressure is read at one and the same point before and after it goes in.',
    steps: [
      'Read the supply static with the filter in, on the cooling speed.',
      'Take the filter out, put the plate in, seal its edge, and read the same point again.',
      'Read the plate. With more than one filter, put a plate into every slot at the same time.',
    ],
  },
  hood: {
    picture: 'A hood held flat over a return grille, one grille after another; the flows are added.',
    steps: [
      'Registers open, filter in, cooling speed.',
      'Hold the hood flat over the whole grille, wait until it is steady, and read.',
      'Do this at every return, without changing anything between them.',
    ],
  },
  traverse: {
    picture:
      'A straight piece of duct with a row of holes across it; the probe goes to marked depths through each of them.',
    steps: [
      'Choose the straightest piece: best are 7.5 diameters before it and two behind it. Homes seldom have that; say what there is.',
      'Drill the holes where the drawing below shows them, and mark the depths on the probe.',
      'Point it straight into the air. Read every point; read one point of each hole again at the end.',
      'Plug the holes at once.',
    ],
    caution: drilling,
  },
  temperatureRise: {
    picture:
      'Heat between two probes: return air before the unit; supply air after the first bend, out of sight of the heat, at several points.',
    steps: [
      'Heat on, compressor off. Hold the blower on its cooling speed, if the control lets you.',
      'Return probe before the unit; supply probe past the first turn, shielded, at several points.',
      'Wait five minutes at least, ten are better, until both stand still.',
      'Read the power of the heater, or clock the gas at the meter with every other burner off.',
    ],
  },
  pressureMatch: {
    picture:
      'The return is shut off; a calibrated fan at the cabinet’s door takes its place and brings the supply static to what it was.',
    steps: [
      'Read the supply static by its own blower on the cooling speed.',
      'Shut off the return, put the calibrated fan on the cabinet in its place, and seal it.',
      'Turn the fan up until the same point shows the same pressure, and read its flow.',
      'When it cannot reach that, read both at the most that it can do.',
    ],
    caution:
      'The door switch is bridged while the cabinet stands open to the fan: keep hands and cables away from the blower, and take the bridge out.',
  },
  grille: {
    picture: 'A vane moved over the face of a return grille in even lines, at the distance that its maker says.',
    steps: [
      'Measure the face of the grille, and find the area factor for this grille, this vane and this way of holding it.',
      'Hold the vane at the stated distance and read evenly over the whole face.',
      'Do this at every return.',
    ],
  },
};
