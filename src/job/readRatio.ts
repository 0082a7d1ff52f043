import { numberAtHead, spelled } from './number.ts';
import type { Read } from './read.ts';
import { toSi, type UnitKey } from './units.ts';

/** Shares of the total that a sensible capacity can be, the last by rounding, and the least that is usual. */
const shares = { least: 0.2, most: 1.05, usualFrom: 0.4 } as const;

/** Reads a sensible capacity printed as a share of the total; a bare number is in `unit`, a fraction or per cent. */
export function readRatio(text: string, unit: UnitKey): Read {
  const range = { min: shares.least, max: shares.most };
  const clean = spelled(text);
  if (clean === '') return { state: 'empty' };
  const head = numberAtHead(clean);
  if (head === null || !['', '%'].includes(head.rest)) return { state: 'bad', code: 'notANumber', ...range };
  const own: UnitKey = head.rest === '%' ? 'percent' : unit;
  const found = head.numerals
    .map((numeral) => ({ ...numeral, si: toSi(numeral.number, own) }))
    .find(({ si }) => si >= shares.least && si <= shares.most);
  if (found) return { state: 'read', ...found, unit: own, usual: found.si >= shares.usualFrom };
  return { state: 'bad', code: toSi(head.numerals[0]?.number ?? 0, own) < shares.least ? 'below' : 'above', ...range };
}
