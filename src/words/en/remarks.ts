/**
 * What is said of a remark, under its code: what is seen, and what to do. `amounts` are its numbers as text, in the order
 * in which `calc` gives them, and last the part of the test that it is about. `short` stands in the answer bar of a remark that withholds the verdict.
 */
export interface RemarkWords {
  readonly say: (...amounts: readonly string[]) => string;
  readonly short?: (...amounts: readonly string[]) => string;
  readonly next?: string;
}

const air: Readonly<Record<string, RemarkWords>> = {
  swapped: {
    say: (entering, leaving) =>
      `The supply air (${leaving}) is warmer than the return air (${entering}). Are the two readings exchanged, or is it heating?`,
    short: () => 'supply warmer than return',
    next: 'Look which probe stands where, and that the system is cooling.',
  },
  noTemperatureDrop: {
    say: (entering, leaving) =>
      `Return ${entering} and supply ${leaving} are too close to tell apart. It does not cool, or both probes stand in the same air.`,
    short: () => 'no drop that the probes can tell',
    next: 'Look that the outdoor unit runs, and that each probe stands in its own air.',
  },
  leavingWetter: {
    say: () =>
      'The supply air holds more water than the return air, by more than these probes can err. A coil cannot add water: look for a wet probe, air drawn in after the return probe, or a humidifier.',
    next: 'Dry the supply probe, and look where damp air could come in between the probes.',
  },
  latentUnseen: {
    say: () => 'Drying (latent): none that these probes can see.',
  },
  dryCoil: {
    say: () =>
      'The coil looks dry: it cools and takes out no water. The total then moves with the dry bulb, and a table read by wet bulb says too little.',
  },
  supplyDry: {
    say: (humidity) =>
      `${humidity} is low for the air behind a wet coil (usual 85 to 98\u00a0%). A dry coil, heat that is on, air that misses the coil, or the probe itself.`,
    next: 'Look that no heat is on and no damper stands open, then check the supply probe.',
  },
  supplyWetProbe: {
    say: (humidity) =>
      `${humidity} is what a wetted probe reads, whatever the air is. Move it out of the spray and let it dry.`,
    next: 'Move the supply probe out of the spray, let it dry, and read again.',
  },
  frost: {
    say: (surface) =>
      `A coil near ${surface} may be freezing, and ice moves every figure. Stop, let it thaw, and find out why: low airflow first, then the refrigerant side, which is work for licensed people.`,
    short: (surface) => `coil near ${surface}: frost`,
    next: 'Stop the cooling, run the blower until the coil is thawed, and find out why it froze.',
  },
};

const airflow: Readonly<Record<string, RemarkWords>> = {
  airflowPlaceUnsure: {
    say: (price) => `Return or supply? The middle is taken; knowing would settle ${price} either way.`,
  },
  airflowKindUnsure: {
    say: (price) => `Actual or standard air? The middle is taken; knowing would settle ${price} either way.`,
  },
  airflowPlaceAndKindUnsure: {
    say: (price) =>
      `Neither place nor kind is known. The middle is taken; knowing both would settle ${price} either way.`,
  },
  airflowPerTon: {
    say: (each, low, high) =>
      `${each} for each ton is outside ${low} to ${high}. A slip of the pen, the wrong unit, or the wrong size.`,
    next: 'Look at the airflow and the nameplate size again.',
  },
  seaLevelPressure: {
    say: (barometer, standard) =>
      `The barometer (${barometer}) and the height (about ${standard}) disagree by more than 3\u00a0%. Station pressure is wanted, not the forecast’s sea-level figure.`,
    next: 'Empty the barometer, or type the station pressure of an instrument on the spot.',
  },
};

/** What the table is entered with, by the part of the test that a remark is about. */
const axes: Readonly<Record<string, string>> = { outdoors: 'Outdoors', entering: 'Return air', airflow: 'Airflow' };
const axis = (about = '') => axes[about] ?? '';

const rating: Readonly<Record<string, RemarkWords>> = {
  blockAirflow: {
    say: (_here, _block, ratio) =>
      `Your airflow is ${ratio} of the block’s. A published curve bridges that; a second block of the table would do it better.`,
  },
  outsideTable: {
    say: (at, low, high, about) =>
      `${axis(about)} ${at} is not in the table, which runs from ${low} to ${high}. No expectation is given beyond it.`,
    short: (at, _low, _high, about) => `${axis(about).toLowerCase()} ${at} is beyond your table`,
    next: 'Come back on a day that the table covers, or take more rows of it. Step 5 also lets you carry it on, marked.',
  },
  outsideTableExtended: {
    say: (at, low, high, about) =>
      `${axis(about)} ${at} is not in the table, which runs from ${low} to ${high}. The expectation is carried on beyond it: an estimate, without a verdict.`,
    short: (at, _low, _high, about) => `${axis(about).toLowerCase()} ${at} is beyond your table`,
    next: 'Take more rows of the table, or come back on a day that it covers.',
  },
  nominalMismatch: {
    say: (total, nominal) =>
      `At 95\u00a0°F outdoors and 67\u00a0°F wet bulb the table says ${total}, more than 15\u00a0% off the nameplate’s ${nominal}. The wrong row, unit or machine.`,
    next: 'Compare the models on the nameplates with those at the head of the table.',
  },
  basisUnknown: {
    say: (price) => `Net or gross is not known. The middle is taken; knowing would settle ${price} either way.`,
  },
  genericUsed: {
    say: (band) =>
      `Published curves stand for the table: this is an estimate, and open sources differ by ${band} either way here. The expanded ratings of this pair would settle it.`,
  },
  lowStageTable: {
    say: () =>
      'This table is for the low stage, and the test is made at full speed: what it says is not what the machine should make.',
    short: () => 'the table is for the low stage',
    next: 'Take the table of the high stage in step 5.',
  },
  shouldBeDry: {
    say: (wetBulb) =>
      `In so dry a return the coil should take out no water: it turns dry at a wet bulb of ${wetBulb}. All of the total is then cooling, and it moves with the temperature and no longer with the wet bulb.`,
  },
  altitudeBand: {
    say: (band) =>
      `The outdoor coil has thinner air too. Nobody has found for sure what that costs, so it widens the range by ${band} either way.`,
  },
  blowerAssumed: {
    say: (power) => `This blower’s power is not known: ${power} is assumed, the rating’s default for this airflow.`,
  },
  ratingBlowerAssumed: {
    say: (power) =>
      `The blower inside the rating is not known: ${power} is assumed, the rating’s default for this airflow.`,
  },
  blowersByKind: {
    say: (here, inside) => `Blower by kind: ${here}; in the rating ${inside}.`,
  },
  blowersTakenEqual: {
    say: () => 'Neither blower’s power is known: taken alike.',
  },
  linesBeyondMaker: {
    say: () =>
      'The refrigerant lines are longer, or lifted further, than the maker allows: the maker’s table does not hold.',
    short: () => 'lines beyond the maker’s limits',
    next: 'Look at the length and the lift on the sheet on long lines, and ask the maker.',
  },
  notFullSpeed: {
    say: () => 'This system may be choosing to deliver less. What it makes now still stands.',
    short: () => 'it may be choosing to make less',
    next: 'Hold it at full speed, by the thermostat or the installer’s test mode, wait fifteen minutes and read again.',
  },
  probesApart: {
    say: (difference) =>
      `The two thermometers stood ${difference} apart in the same air: more than two probes within their limits can. One of them is out.`,
    next: 'Hold both against an ice bath, and take the one that reads it right as the reference.',
  },
  probeHumiditiesApart: {
    say: (difference) =>
      `The two humidities stood ${difference} apart in the same air: more than two probes within their limits can. One of them is out.`,
    next: 'Hold both against a saturated salt or a wet-bulb thermometer, and take the right one as the reference.',
  },
  probesDrifted: {
    say: (temperature, humidity) =>
      `Since the side-by-side check the probes have moved apart by ${temperature} and ${humidity}. The range is widened by it.`,
    next: 'Put them side by side again, and give them longer.',
  },
  supplyUneven: {
    say: (spread, most) =>
      `The supply air differs by ${spread} from point to point; a laboratory allows ${most}. One reading cannot stand for it.`,
    next: 'Read where the air is mixed, past the first elbow, or take more points.',
  },
  higherThanItCanMake: {
    say: (ratio) =>
      `${ratio} is higher than this system can make. Airflow overstated, a cold spot at the supply probe, or the wrong row or stage come first.`,
    next: 'Look at the airflow first, then move the supply probe to where the air is mixed, then look at the row of the table.',
  },
  dryCell: {
    say: () => 'A figure of the table is for a dry coil: sensible is all of the total.',
  },
  sensibleAboveTotal: {
    say: () =>
      'In the table a sensible figure is more than 1\u00a0% above its total. Look whether the two changed places; until then no sensible is read there.',
  },
  totalFallsWithWetBulb: {
    say: () => 'In the table a total falls as the wet bulb rises. Look whether two figures changed places.',
  },
  totalRisesWithOutdoor: {
    say: () => 'In the table a total rises as it gets hotter outdoors. Look whether two figures changed places.',
  },
};

export const remarkWords: Readonly<Record<string, RemarkWords>> = { ...air, ...airflow, ...rating };

/** Readings that are numbers each, and cannot be together: under the code of the calculation. */
export const outcomeWords: Readonly<Record<string, string>> = {
  wetBulbAboveDryBulb: 'A wet bulb cannot stand above the dry bulb. Look whether the two are exchanged.',
  wetBulbTooLow: 'So low a wet bulb is lower than that of perfectly dry air. Read it again.',
  aboveSaturation: 'That is more water than air can hold at this temperature. Read it again.',
  beyondEquations: 'That is more water than these equations cover. Read it again.',
  outOfRange: 'Together these are beyond what the equations cover. Read them again.',
  notPositive:
    'The blower’s heat would eat all of the cooling. Look at the blower’s power and at the figures of the table.',
  repeatedRow: 'Two rows or columns of the table are the same. Change one.',
  variableSpeed:
    'Published curves do not cover machines that choose their own speed. Only the maker’s table says what such a one should make.',
  noSurface: 'No coil has this share of cooling at this airflow. Look at the airflow of the rating.',
  hole: 'A figure that is needed is missing in the table.',
  missing: 'The table varies with the airflow, and the airflow is not known.',
};
