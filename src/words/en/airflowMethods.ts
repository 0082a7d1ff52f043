/** What stands at the grids of the methods, and the cautions at what can hurt. */
const numbered = (name: string) => (index: number) => `${name} ${index + 1}`;

export const airflowMethods = {
  fanTable: {
    table: 'The maker’s table',
    static: 'Static pressure',
    speed: numbered('Speed'),
    row: (index: number) => String(index + 1),
    column: 'Which speed does it run on?',
  },
  traverse: { readings: 'Readings, hole by hole', line: numbered('Hole'), point: (index: number) => String(index + 1) },
  flowGrid: { plates: 'What each plate shows', plate: numbered('Plate') },
  hood: { returns: 'What the hood shows', grille: numbered('Grille') },
  grille: {
    sizes: 'Faces of the grilles',
    readings: 'Velocities over each face',
    width: 'Width',
    height: 'Height',
    areaFactor: 'Area factor',
    grille: numbered('Grille'),
    reading: (index: number) => String(index + 1),
  },
  temperatureRise: {
    liveCaution:
      'Heater terminals are live. Voltage and current are read by a licensed person; everyone else reads them from a meter that is fitted.',
    gasCaution:
      'Combustion is work for licensed people. Smell gas, or read carbon monoxide above 35 ppm in the room: stop and leave.',
  },
} as const;
