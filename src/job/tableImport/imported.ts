import type { Remark } from '../../calc/types.ts';
import type { Preview } from './preview.ts';
import type { TextRefusal } from './text.ts';
import type { Finding, Proposal, TidyRow } from './types.ts';

/** What was made of a sheet: a proposal to be confirmed. */
export interface Found {
  readonly ok: true;
  readonly proposal: Proposal;
  readonly findings: readonly Finding[];
  readonly rows: readonly TidyRow[];
  readonly preview: Preview;
  /** What a careful reader finds in the figures themselves. */
  readonly remarks: readonly Remark[];
}

/** Or why nothing could be made of it; `count` of what is too many. */
export type Imported = Found | { readonly ok: false; readonly code: TextRefusal | 'noFigures'; readonly count: number };
