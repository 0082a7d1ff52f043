/** The meanings found while a sheet is looked through: one entry for all the cells of a kind. */
import { proposed } from './proposed.ts';
import type { Meaning, Role, Sheet, Spot, Where } from './types.ts';

/** How many cells of a kind are looked at to tell what they are. */
const samples = 400;

interface Draft {
  readonly id: string;
  readonly where: Where;
  title: string;
  readonly role: Role;
  readonly texts: string[];
}

export interface Book {
  /** The index of a meaning, a new one where the id is not known; notes the text as a sample of it. */
  readonly note: (id: string, where: Where, title: string, text: string, role?: Role) => number;
  /** What everything is taken for, told by titles, contents and the lines between blocks together. */
  readonly close: (lines: string) => readonly Meaning[];
}

export function newBook(): Book {
  const drafts: Draft[] = [];
  const known = new Map<string, number>();
  return {
    note(id, where, title, text, role = 'none') {
      let index = known.get(id);
      if (index === undefined) {
        index = drafts.length;
        known.set(id, index);
        drafts.push({ id, where, title, role, texts: [] });
      }
      const draft = drafts[index];
      if (draft && draft.texts.length < samples && text !== '') draft.texts.push(text);
      return index;
    },
    close: (lines) => proposed(drafts, lines),
  };
}

/** The row of the filled cell at or above a spot, not above `first`; merged cells leave their text in the uppermost. */
export function filledRow(sheet: Sheet, { row, column }: Spot, first: number): number | null {
  for (let at = row; at >= first; at--) if ((sheet[at]?.[column] ?? '') !== '') return at;
  return null;
}
