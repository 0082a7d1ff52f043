/** Words of the blank grids for a traverse. */

export const title = 'Blank grids for a traverse';
export const description =
  'Grids to print and write velocities into, for rectangular and round ducts, with the places of the points by the log-Tchebycheff and the log-linear rule.';
export const say =
  'Lines and points stand in per cent of the duct’s inside width, height or diameter, from the wall where the probe enters. Multiply with your own duct, and mark the tube before you begin.';
export const caution =
  'Drill only where you know what is behind the wall: no coil, drain pan, wiring, refrigerant line or rated plenum. Plug every hole after.';
export const rectangular = (lines: number) => `Rectangular: ${lines} lines of ${lines} points`;
export const round = (points: number) => `Round: two diameters of ${points} points`;
export const down = 'Depth';
export const diameters = ['First diameter', 'Second diameter'] as const;
export const mean = 'Mean of all';
export const area = 'Area';
export const airflow = 'Mean × area';
