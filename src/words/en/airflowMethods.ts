/** What stands at the grids of the methods, and the cautions at what can hurt. */
const numbered = (name: string) => (index: number) => `${name} ${index + 1}`;

export const airflowMethods = {
  assumed: 'Taken for granted',
  choose: 'Choose one',
  fanTable: {
    table: 'The maker’s table',
    static: 'Static pressure',
    speed: numbered('Speed'),
    row: (index: number) => String(index + 1),
    column: 'Which speed does it run on?',
    another: 'Another speed of the table',
  },
  traverse: {
    duct: 'The duct',
    across: (width: string, height: string) => `${width} by ${height}`,
    read: (done: number, all: number) => `${done} of ${all}`,
    readings: 'Readings, hole by hole',
    line: numbered('Hole'),
    point: (index: number) => String(index + 1),
    piece: (row: number, first: number, last: number) => `Hole ${row + 1}: ${first} to ${last}`,
    again: 'Read again',
    againSay: (point: number) =>
      `Read point ${point} of each hole once more. Where it comes out more than a tenth different, the traverse is repeated.`,
    readAgain: (point: number) => `Point ${point}`,
  },
  flowGrid: { plates: 'What each plate shows', plate: numbered('Plate') },
  hood: { returns: 'What the hood shows', grille: numbered('Grille') },
  grille: {
    readings: (index: number) => `Velocities over grille ${index + 1}, as they lie on its face`,
    face: 'Its face',
    read: (count: number) => `${count} read`,
    third: (first: number) => (first === 1 ? 'Top' : first === 4 ? 'Middle' : 'Bottom'),
    width: (unit: string) => `Width, ${unit}`,
    height: (unit: string) => `Height, ${unit}`,
    areaFactor: 'Area factor',
    grille: numbered('Grille'),
    reading: (index: number) => `Velocity ${index + 1}`,
  },
  temperatureRise: {
    heat: 'The heat',
    rise: 'The rise',
    between: (low: string, high: string) => `${low} to ${high}`,
    liveCaution: {
      say: 'Heater terminals are live. A licensed person reads voltage and current; everyone else a meter that is fitted.',
      of: 'electricity',
    },
    gasCaution: {
      say: 'Combustion is work for licensed people. Smell gas, or read carbon monoxide above 35 ppm in the room: stop and leave.',
      of: 'flames-and-carbon-monoxide',
    },
  },
} as const;
