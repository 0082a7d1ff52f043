/** From the cells of a sheet and what they are taken for to the rows of one rating table. */
import { withOwnUnit } from '../edit.ts';
import { headKey } from '../ratingHeads.ts';
import type { Read } from '../read.ts';
import type { UnitKey } from '../types.ts';
import { readCell } from './reading.ts';
import type { AxisRole, Group, Layout, Meaning, Mention, Role, Said, Sheet, Spot, TidyRow } from './types.ts';
import { isAxis, isFigure } from './vocabulary.ts';

/** A cell read as what it is taken for. */
export interface CellRead extends Spot {
  readonly meaning: Meaning;
  readonly text: string;
  readonly read: Read;
  /** Read from the filled cell above. */
  readonly filled: boolean;
}

/** The figures of one point, and where its axes and figures stand in the sheet. */
export interface Point {
  readonly axes: ReadonlyMap<AxisRole, CellRead>;
  readonly figures: ReadonlyMap<string, CellRead>;
}

export interface Interpreted {
  readonly points: readonly Point[];
  /** Every cell that counts, once. */
  readonly cells: readonly CellRead[];
  /** Figures that stand twice in one place, the later ones. */
  readonly twice: readonly CellRead[];
  readonly stages: readonly string[];
}

/** The meanings with what the person says of them. */
export function meaningsSaid(layout: Layout, said: Said): readonly Meaning[] {
  return layout.meanings.map((meaning) => {
    const own = said.meanings[meaning.id];
    return own === undefined ? meaning : { ...meaning, ...own, unitSaid: true };
  });
}

/** Reads every cell that counts and gathers the figures of each point. Later mentions of an axis outrank earlier ones. */
export function interpret(sheet: Sheet, layout: Layout, meanings: readonly Meaning[], said: Said): Interpreted {
  const cells = new Map<string, CellRead>();
  const points = new Map<string, { axes: Map<AxisRole, CellRead>; figures: Map<string, CellRead> }>();
  const twice: CellRead[] = [];
  const stages = stagesIn(layout, meanings, sheet);
  const stage = stages.length > 1 ? said.stage : null;
  for (const group of layout.groups) {
    if (stage !== null && stageOf(group) !== stage) continue;
    const reads = group.flatMap((mention) => cellOf(mention) ?? []);
    const axes = new Map<AxisRole, CellRead>();
    for (const one of reads) if (isAxis(one.meaning.role)) axes.set(one.meaning.role, one);
    const figures = reads.filter((one) => isFigure(one.meaning.role));
    if (figures.length === 0) continue;
    const key = placeKey([...axes]);
    const point = points.get(key) ?? { axes, figures: new Map<string, CellRead>() };
    points.set(key, point);
    for (const figure of figures) {
      const role = figure.meaning.role;
      if (point.figures.has(role) && figure.text !== '') twice.push(figure);
      else if (!point.figures.has(role)) point.figures.set(role, figure);
    }
  }
  return { points: [...points.values()], cells: [...cells.values()], twice, stages };

  function cellOf(mention: Mention): CellRead | null {
    const meaning = meanings[mention.meaning];
    if (!meaning || meaning.role === 'none' || meaning.role === 'stage') return null;
    const filled = isAxis(meaning.role) && mention.from !== undefined;
    const row = filled ? (mention.from ?? mention.row) : mention.row;
    const key = `${mention.meaning} ${mention.row}/${mention.column}`;
    const known = cells.get(key);
    if (known) return known;
    const text = said.cells[`${row}/${mention.column}`] ?? mention.part ?? sheet[row]?.[mention.column] ?? '';
    const one = {
      row: mention.row,
      column: mention.column,
      meaning,
      text,
      filled,
      read: readCell(text, meaning.role, meaning.unit),
    };
    cells.set(key, one);
    return one;
  }

  function stageOf(group: Group): string | null {
    return stageText(group, meanings, sheet);
  }
}

/** A place in the table by its axes, whatever their order. */
function placeKey(axes: readonly (readonly [AxisRole, CellRead])[]): string {
  return axes
    .map(([role, one]) => `${role} ${valueKey(one)}`)
    .sort()
    .join('|');
}

const valueKey = ({ read, text }: CellRead) => (read.state === 'read' ? headKey(read.si) : `“${text}”`);

function stageText(group: Group, meanings: readonly Meaning[], sheet: Sheet): string | null {
  const at = group.findLast((mention) => meanings[mention.meaning]?.role === 'stage');
  if (!at) return null;
  const text = at.part ?? sheet[at.from ?? at.row]?.[at.column] ?? '';
  return text === '' ? null : text.toLowerCase();
}

function stagesIn(layout: Layout, meanings: readonly Meaning[], sheet: Sheet): string[] {
  if (!meanings.some(({ role }) => role === 'stage')) return [];
  const found = layout.groups.flatMap((group) => stageText(group, meanings, sheet) ?? []);
  return [...new Set(found)].slice(0, 6);
}

/** The unit of each column of the table in the job: that of the first of its meanings. */
export function columnUnits(meanings: readonly Meaning[]): ReadonlyMap<Role, UnitKey> {
  const found = new Map<Role, UnitKey>();
  for (const { role, unit } of meanings) if (!found.has(role)) found.set(role, unit);
  return found;
}

/**
 * The rows for the job: each point with the texts as pasted, a number in another unit than its column's with that behind it. A
 * total or a power printed once for several dry bulbs stands in each of their rows.
 */
export function tidyRows(points: readonly Point[], meanings: readonly Meaning[]): readonly TidyRow[] {
  const inColumns = columnUnits(meanings);
  const places = new Map<string, { alone: Point | null; withDryBulb: Point[] }>();
  for (const point of points) {
    const rest = [...point.axes].filter(([role]) => role !== 'enteringDryBulb');
    const key = placeKey(rest);
    const place = places.get(key) ?? { alone: null, withDryBulb: [] };
    places.set(key, place);
    if (point.axes.has('enteringDryBulb')) place.withDryBulb.push(point);
    else place.alone = point;
  }
  return [...places.values()].flatMap(({ alone, withDryBulb }) => {
    if (withDryBulb.length === 0) return alone ? [rowOf(alone, null, inColumns)] : [];
    const printed = alone ?? withDryBulb.find(({ figures }) => (figures.get('total')?.text ?? '') !== '') ?? null;
    return withDryBulb.map((point) => rowOf(point, printed, inColumns));
  });
}

function rowOf({ axes, figures }: Point, shared: Point | null, inColumns: ReadonlyMap<Role, UnitKey>): TidyRow {
  const texts = [...axes].map(([role, cell]) => [role, textIn(cell, inColumns)] as const);
  const figure = (role: Role) => {
    const own = figures.get(role);
    const spare = role === 'total' || role === 'power' ? shared?.figures.get(role) : undefined;
    const cell = own === undefined || own.text === '' ? (spare ?? own) : own;
    return cell === undefined ? '' : textIn(cell, inColumns);
  };
  return {
    ...Object.fromEntries(texts),
    total: figure('total'),
    sensible: figure('sensible') || figure('ratio'),
    power: figure('power'),
  };
}

function textIn({ text, meaning }: CellRead, inColumns: ReadonlyMap<Role, UnitKey>): string {
  const { role, unit } = meaning;
  // A ratio stands in the column of the sensible, where a bare share is known by its size.
  const column = role === 'ratio' ? (inColumns.get('sensible') ?? inColumns.get('ratio')) : inColumns.get(role);
  return column === unit || column === undefined || text === '' ? text : withOwnUnit(text, unit).trim();
}
