/** Words around the figures to copy from the maker's table. */
export const figureWords = {
  copy: (count: string, outdoors: string, wetBulb: string, heads: string) =>
    `Copy ${count} around ${outdoors} outdoors and ${wetBulb} entering wet bulb: ${heads}.`,
  printed: { btuh: 'In Btu/h or in thousands (MBh).', kw: 'In kW.', ton: 'In tons.' },
  counts: ['no figure', 'one figure', 'two figures', 'three figures', 'four figures'],
  many: (count: number) => `${count} figures`,
  otherRows: 'Other rows and columns',
  lessRows: 'Hide rows and columns',
  addSensible: 'Add sensible',
  dropSensible: 'Totals only',
  addBlock: 'My airflow is between two blocks',
  dropBlock: 'One block only',
  readAs: (typed: string, value: string) => `${typed} is read as ${value}.`,
  shareOf: (typed: string, value: string) => `${typed} is read as a share of the total: ${value}.`,
  headName: (what: string, value: string) => `${what} ${value}: change this head`,
  extended: 'Carried on beyond the table: an estimate.',
  seen: { total: 'total', sensible: 'sensible' },
} as const;
