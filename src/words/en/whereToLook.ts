/** Where to look when it is short: the places in their order, what each comes to, and why these figures point there or not. */
export const whereToLook = {
  lead: 'From what costs nothing to what costs most. The figures below point to places; none of them is a diagnosis.',
  licensed:
    'Gauges, the refrigerant circuit and live parts behind panels are work for licensed people, under local codes. Refrigerant burns skin and eyes, and live parts kill.',
  groups: {
    measurement: 'First the measurement itself',
    leaks: 'Then leaks and dampers at the unit',
    mechanical: 'Then what can be seen and cleaned',
    refrigerant: 'Last the refrigerant side, for licensed people',
  },
  supports: 'These figures point here:',
  against: 'These figures speak against it:',
  unseen: 'Too little for this test to see.',
  high: (share: string, reads: string) => `${share} of the air reads ${reads} high.`,
  low: (share: string, reads: string) => `${share} of the air reads ${reads} low.`,
  less: (what: string, band: string) => `${what}: ${band} less cooling.`,
  more: (what: string, band: string) => `${what}: ${band} more cooling.`,
  band: (low: string, high: string) => (low === high.replace(/\D+$/, '') ? high : `${low} to ${high}`),
  and: '; ',
} as const;

interface PlaceWords {
  readonly name: string;
  readonly say: string;
  /** What a fault of a size is, where one has been published. */
  readonly size?: (share: string) => string;
}

export const placesToLook: Readonly<Record<string, PlaceWords>> = {
  sideBySide: {
    name: 'The two probes against each other',
    say: 'Both in the same moving return air for ten to fifteen minutes, then in the supply air.',
  },
  probePlace: {
    name: 'Where the probes stand',
    say: 'Return after everything has joined and mixed, supply after the first turn and before the first branch, several points.',
  },
  wetProbe: {
    name: 'A wet probe',
    say: 'Water carried off the coil wets a probe that stands near it. Dry it, move it on.',
  },
  airflowFigure: {
    name: 'The airflow figure',
    say: 'Actual or standard, return or supply, and by a second way: the whole result goes with it.',
  },
  wrongRow: {
    name: 'The row of the table',
    say: 'This outdoor unit with this indoor unit, this wet bulb and outdoor temperature, net or gross.',
  },
  stage: { name: 'The stage', say: 'Full stage and full airflow, held in test mode where there is one.' },
  notSteady: {
    name: 'Steady air',
    say: 'Fifteen minutes after anything was changed, and no slope left in the readings.',
  },
  bypass: {
    name: 'Supply air let back into the return',
    say: 'A zone bypass, a humidifier’s bypass, an unsealed gap between the two plenums, behind the return probe.',
  },
  cabinet: {
    name: 'Attic air drawn into the cabinet',
    say: 'Panels, line and wire holes, drain openings: the air between coil and blower is under suction.',
  },
  returnLeak: {
    name: 'Attic air drawn into the return',
    say: 'Joints, building cavities used as ducts, the filter’s door, behind the return probe.',
  },
  indoorAirflow: {
    name: 'Too little air over the coil',
    say: 'Filter, closed registers, blower wheel, a dirty coil, blower speed.',
    size: (share) => `${share} less air`,
  },
  outdoorAirflow: {
    name: 'Too little air over the outdoor coil',
    say: 'Dirt, cottonwood, plants, a fence, hot air blown back. Switch it off before you clean it.',
    size: (share) => `${share} less air`,
  },
  undercharge: {
    name: 'Too little refrigerant',
    say: 'Weighed, or by superheat or subcooling as its maker says. A system that lost some has a leak.',
    size: (share) => `${share} of it missing`,
  },
  restriction: {
    name: 'A restriction in the liquid line',
    say: 'A temperature step across the drier, a clogged screen, a kinked line.',
    size: (share) => `${share} more pressure drop on that side`,
  },
  nonCondensables: {
    name: 'Air or nitrogen in the circuit',
    say: 'A line set that was not evacuated. It costs power more than capacity.',
    size: (share) => `${share} of what the circuit holds at the pressure of the air`,
  },
};

/** Why, under the codes of remarks and of figures that lie wholly beyond the usual. */
export const evidenceWords: Readonly<Record<string, string>> = {
  probesApart: 'the probes differ in temperature by more than is common',
  probeHumiditiesApart: 'the probes differ in humidity by more than is common',
  probesDrifted: 'the probes have drifted since they were compared',
  supplyUneven: 'the supply air differs from point to point',
  swapped: 'the supply air reads warmer than the return air',
  noTemperatureDrop: 'there is no temperature drop',
  supplyWetProbe: 'the supply air reads as damp as a wetted probe does',
  leavingWetter: 'the supply air reads wetter than the return air',
  airflowPerTon: 'the airflow for each ton is unusual',
  airflowPlaceUnsure: 'nobody said where the airflow was measured',
  airflowKindUnsure: 'nobody said whether the airflow is actual or standard',
  airflowPlaceAndKindUnsure: 'nobody said of which place and kind the airflow is',
  seaLevelPressure: 'the barometer does not fit the height',
  nominalMismatch: 'the table does not fit the nameplate',
  basisUnknown: 'nobody said whether the table is net or gross',
  totalFallsWithWetBulb: 'the table falls with the wet bulb',
  totalRisesWithOutdoor: 'the table rises with the outdoor temperature',
  notFullSpeed: 'it may not run at full speed',
  supplyDry: 'the supply air is dry for air behind a wet coil',
  'bypassFactor.high': 'much air misses the coil',
  'bypassFactor.low': 'little air misses the coil',
  'supplyHumidity.low': 'the supply air is drier than is usual',
  'airflowPerCapacity.low': 'there is little air for each ton',
  'airflowPerCapacity.high': 'there is much air for each ton',
  'temperatureDrop.high': 'the temperature drop is large',
  'temperatureDrop.low': 'the temperature drop is small',
  'apparatusDewPoint.low': 'the coil is colder than is usual',
  'apparatusDewPoint.high': 'the coil is warmer than is usual',
  frost: 'the coil may be freezing',
};
