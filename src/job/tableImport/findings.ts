/** What is said of a sheet before it is used: what is missing, what was understood how, and what is obvious to put right. */
import { tableLimits } from '../tables.ts';
import { cellFindings } from './cellFindings.ts';
import { finding, quoted } from './finding.ts';
import type { Interpreted, Point } from './rows.ts';
import type { AxisRole, Finding, Layout, Meaning, Said, Spot, TidyRow } from './types.ts';
import { unitFindings } from './unitFindings.ts';
import { isAxis, isFigure } from './vocabulary.ts';

/** A grid with so many more places than figures is none: some head was read as what it is not. */
const sparsest = 8;
const rank = { stop: 0, doubt: 1, note: 2 } as const;

export function findingsOf(
  layout: Layout,
  meanings: readonly Meaning[],
  said: Said,
  found: Interpreted,
  rows: readonly TidyRow[],
): readonly Finding[] {
  const units = unitFindings(meanings, found.cells);
  // Cells in a doubtful unit are not judged one by one: the unit is the matter.
  const doubted = new Set(
    units.flatMap(({ code, fix }) => (code === 'otherUnit' && fix?.kind === 'meaning' ? [fix.id] : [])),
  );
  const all = [
    ...missing(meanings, found, said),
    ...gridFindings(found.points, rows),
    ...units,
    ...cellFindings(found.cells.filter(({ meaning }) => !doubted.has(meaning.id))),
    ...repeated(found),
    ...twoOfAKind(meanings),
    ...skippedRows(layout),
  ];
  return all.sort((a, b) => rank[a.weight] - rank[b.weight]);
}

function missing(meanings: readonly Meaning[], { stages }: Interpreted, said: Said): Finding[] {
  const has = (role: Meaning['role']) => meanings.some((meaning) => meaning.role === role);
  return [
    ...(has('outdoorDryBulb') ? [] : [finding('noOutdoors', 'stop')]),
    ...(has('enteringWetBulb') ? [] : [finding('noWetBulb', 'stop')]),
    ...(has('total') ? [] : [finding('noTotal', 'stop')]),
    ...(stages.length > 1 && !(said.stage !== null && stages.includes(said.stage))
      ? [finding('whichStage', 'stop', { reading: stages.join(', ') })]
      : []),
  ];
}

/** What keeps the points from being the grid of a table. */
function gridFindings(points: readonly Point[], rows: readonly TidyRow[]): Finding[] {
  const most = tableLimits.sheetRows;
  const different = (axis: AxisRole) => Math.max(1, new Set(rows.map((row) => row[axis] ?? '')).size);
  const places =
    different('outdoorDryBulb') * different('enteringWetBulb') * different('enteringDryBulb') * different('airflow');
  const some = (axis: AxisRole) => {
    const having = rows.filter((row) => row[axis] !== undefined);
    if (having.length === 0 || having.length === rows.length) return null;
    const without = points.find(({ axes }) => !axes.has(axis));
    return { count: rows.length - having.length, spot: spotOf(without) };
  };
  const airflow = some('airflow');
  const dryBulb = some('enteringDryBulb');
  return [
    ...(rows.length > most ? [finding('tooManyRows', 'stop', { count: rows.length, reading: String(most) })] : []),
    ...(rows.length > 0 && rows.length <= most && places > rows.length * sparsest && places > 200
      ? [finding('notAGrid', 'stop', { count: places })]
      : []),
    ...(airflow ? [finding('airflowOnSome', 'stop', airflow)] : []),
    ...(dryBulb ? [finding('dryBulbOnSome', 'stop', dryBulb)] : []),
  ];
}

function spotOf(point: Point | undefined): Spot | null {
  const [first] = point?.figures.values() ?? [];
  return first ? { row: first.row, column: first.column } : null;
}

function repeated({ twice }: Interpreted): Finding[] {
  const [first] = twice;
  if (!first) return [];
  return [finding('twice', 'doubt', { spot: first, ...quoted(first.text), count: twice.length })];
}

/** Two columns that are taken for the same. */
function twoOfAKind(meanings: readonly Meaning[]): Finding[] {
  const columns = meanings.filter(({ where, role }) => where === 'column' && (isAxis(role) || isFigure(role)));
  const double = columns.find(({ role }, at) => columns.findIndex((one) => one.role === role) < at);
  return double ? [finding('roleTwice', 'doubt', { ...quoted(double.title || double.id), reading: double.role })] : [];
}

function skippedRows({ skipped }: Layout): Finding[] {
  const [first] = skipped;
  return first ? [finding('skipped', 'note', { spot: first, count: skipped.length })] : [];
}
