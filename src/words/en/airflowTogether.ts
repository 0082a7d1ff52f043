/** Several methods together: agreement, and what usually stands behind its absence. */
export const togetherWords = {
  head: 'Several ways together',
  mean: (flow: string, range: string) => `${flow} of standard air, ${range}: the mean that is least unsure.`,
  picture:
    'Each way as a dot with its range, as standard air; the thick line is the mean, hatched its range. An open dot does not count.',
  summary: (flow: string, range: string, count: number) =>
    `${count} ways on one scale, each with its range; the mean is ${flow}, ${range}. The table says the same.`,
  weights: 'What each way says, and how much it counts',
  weight: (share: string) => `counts ${share}`,
  leftOut: (method: string, why: string) => `${method} is left out: ${why}`,
  agree: (scatter: string, most: string) =>
    `They agree within what each of them admits: their scatter (χ²) is ${scatter}, and up to ${most} is expected.`,
  apart: (scatter: string, most: string) => `Their scatter (χ²) is ${scatter}, and no more than ${most} is expected.`,
  disagree: (times: string) =>
    `They do not agree. The range is made ${times} times as wide (Birge ratio), so that it covers them. A gauge or a vane that two of them share counts once.`,
  scatter: (times: string) =>
    `They scatter a little more than they admit; the range is ${times} times as wide for it (Birge ratio).`,
  pair: (high: string, low: string, gap: string) => `${high} finds ${gap} more than ${low}.`,
} as const;

export const leftOutWords = {
  setting: 'it is a setting, not a measurement.',
  partial: 'readings are missing.',
  otherSpeed: 'the blower ran on another speed.',
  speedUnsure: 'nobody knows whether the blower ran on the cooling speed.',
} as const;

/** Common practice, no source. */
export const disagreementWords = {
  areaFactor: 'Usually the area factor does not fit this grille, this vane or this hand.',
  readoutUnchecked: 'Usually the motor does not reach what it reports, or nobody ever checked its report.',
  leaksOrBackPressure: 'Usually air comes in behind the grilles, or the hood’s own resistance held some back.',
  probeTooHot: 'Usually the supply probe saw the heat, or stood in a hot streak.',
  dryCoilOrCoolStreak:
    'Usually the coil was dry, the heat less than thought, or the supply probe stood in a cool streak.',
  airPastPlate: 'Usually air went past the plate instead of through it.',
  returnNotShut: 'Usually the return was not shut off, so that air went past the fan.',
  blowerNotAsTable:
    'Usually the wheel or the filter is dirty, the voltage low, or the table does not count a part that is there.',
  wrongColumnOrHoles: 'Usually it is the wrong column, or the holes stand where the pressure is not that of the whole.',
  disturbedSection: 'Usually there was too little straight duct before the section.',
} as const;
