/** Where to measure and what to do there, method by method: a name for the drawing, field steps, a caution. */
import type { AirflowMethod } from '../../calc/airflow/methods.ts';
import type { CautionPage } from './parts.ts';

/** What can hurt, and the article that says more of it. */
export interface CautionWords {
  readonly say: string;
  readonly of: CautionPage;
}

interface WhereWords {
  /** What the drawing shows, for those who do not see it. */
  readonly picture: string;
  /** What to see in it. */
  readonly say: string;
  readonly steps: readonly string[];
  readonly caution?: CautionWords;
}

export const whereFold = 'Where, and how';

const drilling: CautionWords = {
  say: 'Never drill where you cannot see behind, nor near coil, drain pan, heaters, refrigerant pipes, wiring, boards or gas parts.',
  of: 'drilling-and-duct-materials',
};

export const whereWords: Readonly<Record<Exclude<AirflowMethod, 'fanTable'>, WhereWords>> = {
  readout: {
    picture: 'The blower with its control: a wire carries the figure from the motor to the display of the control.',
    say: 'The control knows the motor’s speed and torque. Whether it works the airflow out from them, or only asks for one, its guide says.',
    steps: [
      'Hold the system in cooling at full stage, with the normal airflow profile.',
      'Wait until the blower has run at that for five minutes.',
      'Read the airflow on the control, and look in its guide whether it senses the flow or asks for it.',
    ],
  },
  flowGrid: {
    picture:
      'A metering plate in the filter slot; the supply static pressure is read at one and the same point before and after it goes in.',
    say: 'The plate resists more than the filter, or less: the pressure at one and the same point says by how much.',
    steps: [
      'Read the supply static with the filter in, on the cooling speed.',
      'Take the filter out, put the plate in, seal its edge, and read the same point again.',
      'Read the plate. With more than one filter, put a plate into every slot at the same time.',
    ],
  },
  hood: {
    picture: 'A hood held flat over a return grille, one grille after another; the flows are added.',
    say: 'What comes in behind the grille, through leaks in the return, the hood does not see.',
    steps: [
      'Registers open, filter in, cooling speed.',
      'Hold the hood flat over the whole grille, wait until it is steady, and read.',
      'Do this at every return, without changing anything between them.',
    ],
  },
  traverse: {
    picture:
      'A straight piece of duct with a row of holes across it; the probe goes to marked depths through each of them.',
    say: 'The section lies square to the stream. D: the diameter of the circle of the same area.',
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
    say: 'The supply probe stands where it cannot see what is hot, and where the air has mixed.',
    steps: [
      'Heat on, compressor off. Hold the blower on its cooling speed, if the control lets you.',
      'Return probe before the unit; supply probe past the first turn, shielded, at several points.',
      'Wait five minutes at least, ten are better, until both stand still.',
      'Read the power of the heater, or clock the gas at the meter with every other burner off; its supplier tells the heating value.',
    ],
  },
  pressureMatch: {
    picture:
      'The return is shut off; a calibrated fan at the cabinet takes its place and brings the supply static to what it was.',
    say: 'The calibrated fan blows into the cabinet; the system’s own blower runs on its cooling speed.',
    steps: [
      'Read the supply static by its own blower on the cooling speed.',
      'Switch off. Shut off the return, put the calibrated fan in its place on the cabinet, with a panel made for it, and seal it. Switch on.',
      'Turn the fan up until the same point shows the same pressure, and read its flow.',
      'When it cannot reach that, read both at the most that it can do.',
    ],
    caution: {
      say: 'Never bridge a door switch, not even for a reading. Where the fan can only be fitted with the switch open, take another way.',
      of: 'switches-that-protect',
    },
  },
  grille: {
    picture: 'A vane moved over the face of a return grille in even lines, at the distance that its maker says.',
    say: 'Even lines over the whole face, and the distance that the area factor was made for.',
    steps: [
      'Measure the face of the grille, and find the area factor for this grille, this vane and this way of holding it.',
      'Hold the vane at the stated distance and read evenly over the whole face.',
      'Do this at every return.',
    ],
  },
};

const inside =
  'The rated unit with filter, blower and coil in one cabinet. One hole in the return duct where the air enters it, one in the supply duct behind it, before the first branch. Crosses over the coil: never there.';

/** The fan table: what is external differs by what stands inside the rated unit. */
export const fanWhere = {
  steps: [
    'Wet coil, cooling speed, panels on, filter as in the table’s footnote.',
    'An add-on filter is duct, unless the footnote counts it: the return hole is behind it.',
    'Point the tip into the air, read both sides against the room, and plug the holes.',
  ],
  caution: drilling,
  kinds: {
    airHandler: {
      picture: inside,
      say: 'The coil is inside: what stands between the two holes is what the table counts. The supply hole comes before the first branch.',
    },
    furnaceCoil: {
      picture:
        'A furnace with its blower and heat exchanger, and behind it a coil in a case of its own. One hole where the air enters the furnace, one between furnace and coil. Crosses over the heat exchanger and over the coil: never there.',
      say: 'The supply hole is between furnace and coil: the table is the furnace’s, and the coil counts as duct.',
    },
    packaged: {
      picture:
        'A packaged unit, both ducts on one side of it. One hole in the return duct where the air enters the cabinet, one in the supply duct where it leaves. A cross over the coil: never there.',
      say: 'Coil and blower are inside. Both holes are in the ducts, close to the cabinet, before the first branch or bend.',
    },
    ductedMiniSplit: {
      picture: inside,
      say: 'The coil is inside. These blowers overcome little: read with a gauge that shows thousandths of an inch of water.',
    },
  },
} as const;
