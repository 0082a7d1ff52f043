/** Words at the drawing of a duct's section. */
export const sectionWords = {
  name: (lines: number, points: number, round: boolean) =>
    round
      ? `A round duct seen along the stream, with ${lines} diameters and ${points} points on each.`
      : `A rectangular duct seen along the stream, with ${lines} holes along the top and ${points} points down from each.`,
  rectangular: 'To scale, seen along the stream; holes at the top. Log-Tchebycheff points (ISO 3966).',
  round: 'To scale, seen along the stream. Log-linear points (ISO 3966).',
  dots: 'The larger the dot, the faster the air.',
  depths: 'Depths to mark on the probe',
  depthsIn: (unit: string) => `Mark the probe, ${unit} from the inside of the wall`,
  point: 'Point',
  depth: 'Depth',
  hole: 'Hole at',
} as const;

/** Words at the picture of the profile. */
export const profileWords = {
  fold: 'How the air runs',
  name: (shares: readonly string[]) =>
    `Velocity at each depth over the mean of the section, from the hole inward: ${shares.join(', ')}.`,
  none: 'not read',
  caption:
    'Velocity over the mean of the section, from the hole to the far wall. Thin: each hole. Thick: the mean of all of them.',
  near: 'hole',
  far: 'far wall',
  acceptance: (share: string, passes: boolean) =>
    `${share} of the velocity pressures exceed a tenth of the greatest: ${passes ? 'the section will do' : 'take another section'} (at least 75\u00a0%).`,
} as const;
