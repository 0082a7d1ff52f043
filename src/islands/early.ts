/**
 * What somebody types into the page before it is alive. Making the fields alive empties them, so their texts are read when
 * this module is first run and followed until they are taken over.
 */
import { typed } from '~/job/edit.ts';
import { quantities, quantityOf } from '~/job/quantities.ts';
import type { Edit, QuantityKey } from '~/job/types.ts';
import { edit, job } from './jobStore.ts';

const prefix = 'field-';
const isQuantity = (key: string): key is QuantityKey => Object.hasOwn(quantities, key);

const texts = new Map<QuantityKey, string>();

function note(field: EventTarget | null): void {
  if (!(field instanceof HTMLInputElement) || !field.id.startsWith(prefix)) return;
  const key = field.id.slice(prefix.length);
  if (isQuantity(key) && field.value !== '') texts.set(key, field.value);
}

const follow = (event: Event) => note(event.target);

if (typeof document !== 'undefined') {
  for (const field of document.querySelectorAll(`input[id^="${prefix}"]`)) note(field);
  document.addEventListener('input', follow, { capture: true });
}

/** Applies it, in the units that the page showed before it was alive. */
export function takeEarly(): void {
  document.removeEventListener('input', follow, { capture: true });
  const at = new Date().toISOString();
  const edits = [...texts].map(([key, text]): Edit => typed(job.value, key, text, quantityOf(key).ip, at));
  if (edits.length > 0) edit(...edits);
}
