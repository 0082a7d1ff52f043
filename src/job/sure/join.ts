import { joinChoices } from '../choices.ts';
import { joinQuantities } from '../quantities.ts';
import { sureChoices } from './choices.ts';
import { sureQuantities } from './quantities.ts';

/** Brings in the rows of what is asked about how sure the readings are. Every module that reads them calls it first. */
export function joinSure(): void {
  joinQuantities(sureQuantities);
  joinChoices(sureChoices);
}
