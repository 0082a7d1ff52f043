/** What a single cell of a sheet looks like, before anybody knows what it is for. */
import { numberAtHead, spelled } from '../number.ts';

/** `none`: a sign that the printed table has no figure there. */
export type CellKind = 'empty' | 'none' | 'number' | 'word';

const noFigure = /^([-\u2010-\u2015\u2212.*]+|n\/?a|none|nil|x+)$/i;
/** What may stand behind a number without making a word of it: a unit of temperature, per cent, marks of footnotes. */
const behind = /^(°? ?[fc]?|%|[*†‡§#^]+|\(?[a-e1-9]\)?[*†‡]*)$/;

export function kindOf(text: string): CellKind {
  if (text === '') return 'empty';
  const first = text.charCodeAt(0);
  // Most cells are plain numbers: no need to spell them.
  if (first >= 48 && first <= 57 && /^\d+([.,]\d+)?$/.test(text)) return 'number';
  if (noFigure.test(text)) return 'none';
  const head = numberAtHead(spelled(text));
  return head !== null && behind.test(head.rest) ? 'number' : 'word';
}

/** The likeliest number of a cell, not knowing its unit; `null` for words. */
export function bareNumber(text: string): number | null {
  return numberAtHead(spelled(text))?.numerals[0]?.number ?? null;
}

export const isFormula = (text: string) => text.startsWith('=');

/** The columns of a spreadsheet have letters. */
export function columnLetters(column: number): string {
  const rest = Math.floor(column / 26) - 1;
  return (rest >= 0 ? columnLetters(rest) : '') + String.fromCharCode(65 + (column % 26));
}
