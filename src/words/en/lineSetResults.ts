/** Words that the sheet on long lines needs once there is an answer. */
import type { LineCaution } from '../../calc/lineSetTypes.ts';

export const lineResults = {
  drawing: 'The lines',
  ledger: 'What the lines take',
  vapor: 'The vapour line (suction)',
  liquid: 'The liquid line',
  oil: 'Oil return',
  working: 'The working, step by step',
  workingLead: 'As the calculation package works it out, in SI; results in your units too.',
  table: 'The drawing as a table',
  sources: 'Notes and sources',
  friction: 'Pressure drop',
  dewDrop: 'The same as a fall of the dew point',
  ratedDewDrop: 'In the line of the rating',
  velocity: 'Velocity of the vapour',
  liquidFriction: 'Drop by friction',
  lifted: 'Lost by lifting the liquid',
  fallen: 'Gained as the liquid falls',
  subcooling: 'Subcooling at the outdoor unit',
  subcoolingLeft: 'Subcooling left at the metering device',
  flow: 'Refrigerant in circulation',
  left: 'Capacity left',
  scale: (share: string, low: string, high: string) =>
    `A scale of the capacity that is left: ${share}, between ${low} and ${high}; 100\u00a0% is the line of the rating.`,
  asRated: 'as rated',
  noLiquid: 'Nothing is said of the liquid line.',
  flashes: 'The liquid boils before it reaches the metering device.',
  holds: 'The liquid arrives as liquid.',
} as const;

export const oilWords = {
  carried: 'Fast enough to bring the oil back at full load (4.5 to 20\u00a0m/s, 900 to 4,000\u00a0fpm).',
  slow: 'Slower than the 4.5\u00a0m/s (900\u00a0fpm) recommended for suction lines: oil may stay in the line. A wider tube loses less and carries less oil.',
  slowInRiser:
    'The vapour has to climb, and is slower than the 1,000\u00a0fpm (5\u00a0m/s) that carries oil up (common practice). Ask the maker about the riser, and about traps.',
  fast: 'Faster than the 20\u00a0m/s (4,000\u00a0fpm) recommended for suction lines: noise, and a loss that no charge puts right.',
} as const;

/** Of a mixture whose viscosity nobody has measured well. */
export const viscosityEstimated =
  'The viscosity of R-454B is an estimate, within 10\u00a0%: it moves a drop by about 2\u00a0%.';

export const lowLoad = 'At part load the vapour is slower than this.';

export const lineCautions: Readonly<Partial<Record<LineCaution, string>>> = {
  otherVaporTube:
    'The vapour tube is not the one that the rating names: a narrower one costs capacity even at the length of the rating.',
  liquidFlashes:
    'No subcooling is left: the metering device gets bubbles, and the capacity falls by more than any figure here. More charge is not the cure for a line that is too thin or lifts too far.',
  littleSubcooling:
    'Less than 2\u00a0°F (1.1\u00a0°C) of subcooling is left: a dirty filter drier, which is not in these figures, would use it up.',
};

export const lineCautionsOfWork = [
  'Only licensed people attach hoses to the circuit or open it; what is in it may not be let out.',
  'R-32 and R-454B burn (class A2L). No flame, no spark and no brazing near a circuit that holds any; purge with nitrogen, and air the place.',
  'Brazing means fire and hot work: an extinguisher at hand, insulation and leaves out of the way, and eyes on it for a while after.',
] as const;

export const lineNotes = [
  {
    say: 'The capacity of a compressor goes with the density of the vapour that it draws: 1.8\u00a0% for each °F (3.2\u00a0% for each K) that the dew point falls. A coil that is drawn less runs warmer and gives a part back: two thirds to three quarters of the loss is a fair estimate. The band shows both.',
    source: 'suctionLoss',
  },
  { say: 'Friction in smooth copper, without heat through the insulation.', source: 'colebrook' },
  { say: 'Properties of the refrigerants, drawn smoothly through rows 5\u00a0K apart.', source: 'refrigerants' },
  { say: 'Inside diameters of the tubes.', source: 'copperTube' },
  { say: 'Split systems are rated with 25\u00a0ft (7.6\u00a0m) of tubing.', source: 'ratedLine' },
  { say: 'Velocity in suction lines.', source: 'gasVelocity' },
  {
    say: '1,000\u00a0fpm in risers, 2\u00a0°F of subcooling, what is assumed while nobody has read it.',
    source: 'commonPractice',
  },
] as const;

export const lineDrawing = {
  outdoor: 'outdoor unit',
  indoor: 'indoor coil',
  vapor: (tube: string) => `vapour ${tube}`,
  liquid: (tube: string) => `liquid ${tube}`,
  notToScale: 'lift in proportion to the length, the rest not to scale',
  summary: (length: string, vapor: string, liquid: string, lift: string) =>
    `The outdoor unit and the indoor coil, joined by ${length} of lines: vapour ${vapor}, liquid ${liquid}; ${lift}.`,
  level: 'both on one level',
  up: (height: string) => `the coil ${height} above the outdoor unit`,
  down: (height: string) => `the coil ${height} below the outdoor unit`,
  rows: {
    length: 'Length',
    fittings: 'Fittings, as length',
    lift: 'Lift',
    vapor: 'Vapour tube',
    liquid: 'Liquid tube',
  },
} as const;
