/**
 * What somebody typed into the page before its script was there. The fields are read when this module is first run, which is
 * before they are made alive (that empties them), and applied afterwards.
 */
import { typed } from '~/job/edit.ts';
import { quantities } from '~/job/quantities.ts';
import type { Edit, QuantityKey } from '~/job/types.ts';
import { edit, job } from './store.ts';

const prefix = 'field-';
const isQuantity = (key: string): key is QuantityKey => Object.hasOwn(quantities, key);

const found: readonly (readonly [QuantityKey, string])[] =
  typeof document === 'undefined'
    ? []
    : [...document.querySelectorAll<HTMLInputElement>(`input[id^="${prefix}"]`)].flatMap(({ id, value }) => {
        const key = id.slice(prefix.length);
        return value !== '' && isQuantity(key) ? [[key, value] as const] : [];
      });

/** Applies it, in the units that the page showed before it was alive. */
export function takeEarly(): void {
  const at = new Date().toISOString();
  const edits = found.map(([key, text]): Edit => typed(job.value, key, text, quantities[key].ip, at));
  if (edits.length > 0) edit(...edits);
}
