/** What a line between the figures says of those below it: "Airflow 1200 cfm", "Entering dry bulb: 80 °F", "High stage". */
import type { Book } from './book.ts';
import { bareNumber, kindOf } from './cell.ts';
import { readCell } from './reading.ts';
import type { Mention, Role } from './types.ts';
import { basisIn, isAxis, isFigure, roleIn, stageIn, unitIn, unitsOf } from './vocabulary.ts';

export interface Stated {
  /** The axes and the stage that hold from here on, by role. */
  readonly mentions: ReadonlyMap<Role, Mention>;
  /** The words of a line that names the figures below it. */
  readonly figures: string;
}

export const nothingStated: Stated = { mentions: new Map(), figures: '' };

/** Numbers with the words before them and what stands behind. */
const statement = /([^\d]*)(\d[\d.,' ]*\d|\d)\s*([^\d\s,;]*)/g;
/** More numbers than this are prose, or figures of another table. */
const mostStatements = 4;
const loneAirflow = 150;

/** What holds after a line: the same object where it says nothing that is known. */
export function afterLine(book: Book, cells: readonly string[], row: number, before: Stated): Stated {
  // Figures alone say nothing of others; most rows of a long sheet are such.
  if (kindOf(cells[0] ?? '') === 'number' && kindOf(cells[1] ?? '') === 'number') return before;
  const words = cells.filter((cell) => cell !== '').join(' ');
  const found = [...words.matchAll(statement)];
  const mentions = new Map(before.mentions);
  const column = Math.max(
    0,
    cells.findIndex((cell) => cell !== ''),
  );
  let lead = '';
  for (const [, ahead = '', number = '', behind = ''] of found.length > mostStatements ? [] : found) {
    lead = ahead.trim() === '' ? lead : ahead;
    const role = stageIn(words) === null || found.length > 1 ? roleOf(lead, number, behind, words) : 'none';
    if (!isAxis(role)) continue;
    const text = unitsOf(role).some((unit) => unitIn(behind, role) === unit) ? `${number} ${behind}` : number;
    if (!unitsOf(role).some((unit) => readCell(text, role, unit).state === 'read')) continue;
    const title = `${lead} ${behind}`.trim();
    const meaning = book.note(`line:${role}`, 'line', title, text, role);
    const at = cells.findIndex((cell) => cell.includes(number));
    mentions.set(role, { meaning, row, column: at < 0 ? column : at, part: text });
  }
  const stage = stageIn(words);
  if (stage !== null) {
    const meaning = book.note('line:stage', 'line', words, stage, 'stage');
    mentions.set('stage', { meaning, row, column, part: stage });
  }
  const names = isFigure(roleIn(words)) && !cells.some((cell) => kindOf(cell) === 'number');
  const changed =
    names ||
    stage !== null ||
    mentions.size !== before.mentions.size ||
    [...mentions].some(([role, one]) => before.mentions.get(role) !== one);
  return changed ? { mentions, figures: names ? words : before.figures } : before;
}

/** A number alone in its line is an airflow when it is large enough for one. */
function roleOf(lead: string, number: string, behind: string, words: string): Role {
  const role = roleIn(`${lead} ${behind}`);
  if (role !== 'none') return role;
  // "80 °F dry bulb": the words may follow the only number.
  if (words.match(/\d[\d.,' ]*/g)?.length === 1 && isAxis(roleIn(words))) return roleIn(words);
  const alone = words.trim() === number && (bareNumber(number) ?? 0) >= loneAirflow;
  return alone ? 'airflow' : 'none';
}

export const saysSomething = (words: string) =>
  basisIn(words) !== null || stageIn(words) !== null || roleIn(words) !== 'none';
