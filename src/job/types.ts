/** The job record: what a person entered, as they entered it. Flat, so that new work adds keys and never shapes. */
import type { Kind } from '../calc/types.ts';
import type { ChoiceKey } from './choices.ts';
import type { NoteKey } from './notes.ts';
import type { QuantityKey } from './quantities.ts';
import type { TableKey } from './tables.ts';
import type { UnitKey } from './units.ts';

export type { ChoiceKey, NoteKey, QuantityKey, TableKey, UnitKey };

export type System = 'ip' | 'si';
export type Shape = 'normal' | 'rectangular' | 'triangular';
export type Origin = 'typed' | 'from sheet' | 'assumed';

/** A unit by exact definition: SI value = (number + offset) × factor. */
export interface Unit {
  readonly kind: Kind;
  readonly factor: number;
  readonly offset: number;
  /** What a person may type behind the number; case, dots and spaces do not count. The first is the label. */
  readonly suffixes: readonly string[];
}

/** One row per field; name and hint stand in `words/` under the same key. */
export interface Quantity {
  readonly kind: Kind;
  readonly symbol: string;
  readonly ip: UnitKey;
  readonly si: UnitKey;
  readonly decimals: { readonly ip: number; readonly si: number };
  /** SI; outside it: a remark. */
  readonly usual: readonly [number, number];
  /** SI; outside it: refused. */
  readonly possible: readonly [number, number];
  /** Slug of the article that explains it, where that is not the one of its family (`components/fieldArticles.ts`). */
  readonly article?: string;
}

/** A measurement: never rounded, never converted, never thrown away. */
export interface Entered {
  /** Exactly as typed, nonsense too. */
  readonly text: string;
  /** What a bare number meant when it was typed; a unit in the text wins. */
  readonly unit: UnitKey;
  readonly origin: Origin;
  /** When it was committed, ISO 8601. */
  readonly at?: string;
  /** ± as typed, a difference in the same unit. */
  readonly limit?: string;
  readonly shape?: Shape;
}

export interface TypedTable {
  readonly columns: readonly { readonly key: string; readonly unit: UnitKey }[];
  readonly rows: readonly (readonly string[])[];
}

export interface Job {
  readonly version: 1;
  readonly id: string;
  readonly invented?: true;
  readonly entered: Readonly<Partial<Record<QuantityKey, Entered>>>;
  readonly chosen: Readonly<Partial<Record<ChoiceKey, string>>>;
  readonly tables: Readonly<Partial<Record<TableKey, TypedTable>>>;
  readonly notes: Readonly<Partial<Record<NoteKey, string>>>;
}

/**
 * One change of one key; `undefined` clears it. A table may say what it was when it was changed: then rows that the change
 * leaves alone stay as another page has them.
 */
export type Edit =
  | { readonly slot: 'entered'; readonly key: QuantityKey; readonly to: Entered | undefined }
  | { readonly slot: 'chosen'; readonly key: ChoiceKey; readonly to: string | undefined }
  | {
      readonly slot: 'tables';
      readonly key: TableKey;
      readonly to: TypedTable | undefined;
      readonly was?: TypedTable | undefined;
    }
  | { readonly slot: 'notes'; readonly key: NoteKey; readonly to: string | undefined };
