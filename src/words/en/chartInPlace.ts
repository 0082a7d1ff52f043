/** Words at a chart of moist air that stands in an article and can be moved there. */
export const chartInPlace = {
  move: 'Move the points here',
  back: 'Put the example back',
  caption: 'Drag a point, press arrow keys on it, or type below. Nothing of it is kept.',
  returnAir: 'Return air',
  supplyAir: 'Supply air',
  delivers: (total: string, sensible: string, latent: string) =>
    `${total} in all: ${sensible} of cooling (sensible), ${latent} of drying (latent).`,
  none: 'With these figures there is no cooling to work out.',
} as const;
