/** Words of the blank sheet that is filled in with a pencil, in the order of the job. */

/** A text that names a unit, in both systems. */
export interface InUnits {
  readonly ip: string;
  readonly si: string;
}

const both = (text: string): InUnits => ({ ip: text, si: text });

export const fieldSheet = {
  title: 'Blank field sheet',
  description:
    'One page to print and fill in with a pencil: everything that a test of cooling needs, in the order of the job. Letter or A4.',
  say: 'Print this page: it fits Letter and A4. Its units are those chosen at the top of the page.',
  back: 'Jobs on this device',
  head: 'Measured cooling: field sheet',
  who: ['Job', 'System, tons', 'Read by', 'Date'],
  caution: 'Never drill where you cannot see behind. Keep clear of fans and wiring: that is licensed work.',
} as const;

/** Boxes to tick; `line`: with room for a word. */
export const ticks = {
  before: {
    head: '1 Before you start',
    lines: [
      { say: 'Outdoors and indoors lie inside the maker’s table' },
      { say: 'Nothing is frozen; power on for some hours' },
      { say: 'Filter and coil clean' },
      { say: 'Ratings of this very pair found, page', line: true },
    ],
  },
  set: {
    head: '2 Set it up, and write down what it was',
    lines: [
      { say: 'Full stage, or test mode; was', line: true },
      { say: 'Normal airflow profile; was', line: true },
      { say: 'Heat locked out, humidifier bypass shut; was', line: true },
      { say: 'Outdoor-air dampers shut, zones open; was', line: true },
      { say: 'Registers open, panels on' },
    ],
  },
  end: {
    head: '7 Before you leave',
    lines: [
      { say: 'Probes side by side once more, at', line: true },
      { say: 'Every hole plugged, every panel on' },
      { say: 'Every setting put back as it was' },
    ],
  },
} as const;

export const sideBySide = {
  head: '3 Both probes side by side, ten minutes in each',
  columns: ['Air', 'Time', 'Return probe', '% or wet bulb', 'Supply probe', '% or wet bulb'],
  rows: ['Return', 'Return', 'Supply', 'Supply'],
} as const;

export const airflowPart = {
  head: '4 Airflow, on the cooling speed, coil wet',
  fields: [
    both('How it was found'),
    { ip: 'Airflow, cfm', si: 'Airflow, L/s' },
    both('At the return / at the supply'),
    both('As it moves (actual) / as standard air'),
    { ip: 'Static supply / return, in. w.c.', si: 'Static supply / return, Pa' },
    { ip: 'Height above the sea, ft', si: 'Height above the sea, m' },
  ],
} as const;

export const readingsPart = {
  head: '5 Readings, all of them over the same ten minutes',
  since: 'Full speed and airflow since',
  notBefore: 'not before (+ 15\u00a0min)',
  speed: 'Known by',
  columns: [
    both('Time'),
    { ip: 'Return, °F', si: 'Return, °C' },
    { ip: 'humidity, % (or wet bulb, °F)', si: 'humidity, % (or wet bulb, °C)' },
    { ip: 'Supply, °F', si: 'Supply, °C' },
    { ip: 'humidity, % (or wet bulb, °F)', si: 'humidity, % (or wet bulb, °C)' },
    { ip: 'Outdoors, °F', si: 'Outdoors, °C' },
  ],
  rows: 4,
  mean: 'Mean',
} as const;

export const tablePart = {
  head: '6 The maker’s table (expanded ratings), around these conditions',
  fields: [
    both('Outdoor unit, model'),
    both('Indoor unit or coil, model'),
    { ip: 'The figures hold for airflow, cfm', si: 'The figures hold for airflow, L/s' },
    both('Blower’s heat taken off: yes / no / not said'),
    both('Blower: watts in the table / here'),
    { ip: 'The table’s return dry bulb, °F', si: 'The table’s return dry bulb, °C' },
  ],
  corner: { ip: 'Outdoors, °F, across; wet bulb, °F, down', si: 'Outdoors, °C, across; wet bulb, °C, down' },
  below: both('Total, and behind it the sensible part.'),
} as const;

export const notesHead = 'Notes';
