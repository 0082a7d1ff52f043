/** Cells of a record as numbers, and what they say of their unit. */

export const numberPattern = /^\s*[-−+]?\d+(?:[.,]\d+)?\s*(?:°?\s*[CF]|%|%?\s*RH)?\s*$/i;

/** Nearly every cell of nearly every record. */
const bareNumber = /^-?\d+(?:\.\d+)?$/;

/** A cell as a number; not a number where it is none. */
export function numberOf(text: string, comma: boolean): number {
  if (bareNumber.test(text)) return Number(text);
  if (!numberPattern.test(text)) return Number.NaN;
  const digits = /[-−+]?\d+(?:[.,]\d+)?/.exec(text)?.[0] ?? '';
  return Number(digits.replace('−', '-').replace(',', comma ? '.' : ''));
}

/** The unit that a cell with more than a number in it says for its temperature; `null` for one that says none. */
export function unitInCell(text: string): TemperatureUnit | null {
  // Nearly every cell ends in a digit.
  const last = text.charCodeAt(text.length - 1);
  if (last >= 48 && last <= 57) return null;
  const said = /\d\s*°?\s*([CF])\s*$/i.exec(text)?.[1];
  return said ? unitNamed(said) : null;
}

export type TemperatureUnit = 'degF' | 'degC';
export const unitNamed = (letter: string): TemperatureUnit => (/c/i.test(letter) ? 'degC' : 'degF');

/** Whether a comma is the decimal mark in most of these cells. */
export function usesComma(cells: readonly string[]): boolean {
  const decimals = (mark: string) =>
    cells.filter((cell) => new RegExp(`^\\s*[-−]?\\d+\\${mark}\\d+\\D*$`).test(cell)).length;
  return decimals(',') > decimals('.');
}
