/** Words of the tables that exercises and lessons give. */
export const grids = {
  rating: { name: 'Corner of the rating table', corner: 'Wet bulb' },
  velocities: { name: 'Velocities', corner: 'Point' },
} as const;
