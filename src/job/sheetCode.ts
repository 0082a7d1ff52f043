/** Six characters by which a sheet of paper and a record are known to be the same. A name, not a seal: anybody can work it out. */
import { inOrder } from './canonical.ts';
import { forLink } from './forLink.ts';
import { isOutsideLock } from './notes.ts';
import type { Job } from './types.ts';

/** Letters and digits of which none is taken for another: no 0 O, 1 I L, 2 Z, 5 S, 6 G, 8 B, U V. */
const letters = 'ACDEFHJKMNPQRTWXY3479';
const length = 6;

/**
 * The code of what a job says: every reading with its unit and time, every choice, table and note on the system. Who, where and what is
 * written around the figures do not count, nor does the name of the record, so that a link, a copy and the record have the same code.
 */
export function sheetCode(job: Job): string {
  const { entered, chosen, tables, notes } = forLink(job);
  const { 'locked.changes': _, ...figures } = tables;
  const said = Object.entries(notes).filter(([key]) => !isOutsideLock(key));
  const text = JSON.stringify(inOrder({ entered, chosen, tables: figures, notes: Object.fromEntries(said) }));
  let rest = hash64(text);
  let code = '';
  for (let place = 0; place < length; place++) {
    code += letters[Number(rest % BigInt(letters.length))];
    rest /= BigInt(letters.length);
  }
  return code;
}

/** FNV-1a of 64 bits over the bytes of a text in UTF-8. */
export function hash64(text: string): bigint {
  let hash = 0xcbf29ce484222325n;
  for (const byte of new TextEncoder().encode(text)) hash = BigInt.asUintN(64, (hash ^ BigInt(byte)) * 0x100000001b3n);
  return hash;
}
