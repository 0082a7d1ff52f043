/**
 * What is read out of a pasted sheet, as plain data that can cross to a worker. A sheet is a grid of cells; a `Mention` is one
 * cell that says something; a `Meaning` is what all the cells of one kind are taken for, and can be corrected by the person.
 */
import type { UnitKey } from '../types.ts';

export type AxisRole = 'outdoorDryBulb' | 'enteringWetBulb' | 'enteringDryBulb' | 'airflow';
/** `ratio` is a sensible capacity printed as a share of the total. */
export type FigureRole = 'total' | 'sensible' | 'ratio' | 'power';
export type Role = AxisRole | FigureRole | 'stage' | 'none';

export type Sheet = readonly (readonly string[])[];

/** A cell by its row and column, from zero. */
export interface Spot {
  readonly row: number;
  readonly column: number;
}

export interface Mention extends Spot {
  /** Index into the meanings. */
  readonly meaning: number;
  /** The part of the cell that counts, where it is not all of it. */
  readonly part?: string;
  /** The row of the filled cell above an empty one: merged cells leave their text in the first. */
  readonly from?: number;
}

/** Where cells of one meaning stand: a column, the heads across, a line above a block, or the figures of a block. */
export type Where = 'column' | 'across' | 'under' | 'line' | 'figures';

export interface Meaning {
  readonly id: string;
  readonly where: Where;
  /** The words that the sheet has for it. */
  readonly title: string;
  readonly role: Role;
  readonly unit: UnitKey;
  /** Whether the sheet itself names the unit. */
  readonly unitSaid: boolean;
  readonly samples: readonly string[];
}

export type LayoutKind = 'tidy' | 'blocks';

/** Cells that belong together: the place of a figure and the figure, or a whole row of a tidy table. */
export type Group = readonly Mention[];

export interface Layout {
  readonly kind: LayoutKind;
  readonly meanings: readonly Meaning[];
  readonly groups: readonly Group[];
  /** Rows with something in them that were not understood. */
  readonly skipped: readonly Spot[];
  readonly basis: 'net' | 'gross' | null;
}

/** What the person says instead of the proposal. */
export interface Said {
  readonly meanings: Readonly<Record<string, { readonly role: Role; readonly unit: UnitKey }>>;
  /** Corrected cells, under 'row/column'. */
  readonly cells: Readonly<Record<string, string>>;
  /** The stage to be taken, of a sheet that has several. */
  readonly stage: string | null;
  /** Figures that a comma tore in two are put together again. */
  readonly joined: boolean;
}

export const nothingSaid: Said = { meanings: {}, cells: {}, stage: null, joined: false };

export type Fix =
  | { readonly kind: 'meaning'; readonly id: string; readonly role: Role; readonly unit: UnitKey }
  | { readonly kind: 'join' }
  | { readonly kind: 'cells'; readonly cells: readonly (Spot & { readonly text: string })[] };

/** `stop`: without it there is no table. `doubt`: look at it. `note`: how something was understood. */
export interface Finding {
  readonly code: FindingCode;
  readonly weight: 'stop' | 'doubt' | 'note';
  /** The first cell that it is about; `null` for the whole sheet. */
  readonly spot: Spot | null;
  /** What stands there, shortened. */
  readonly text: string;
  /** What it is read as, or would be after the fix. */
  readonly reading: string;
  readonly count: number;
  readonly fix: Fix | null;
}

export type FindingCode =
  | 'noFigures'
  | 'noOutdoors'
  | 'noWetBulb'
  | 'noTotal'
  | 'whichStage'
  | 'tooManyRows'
  | 'notAGrid'
  | 'roleTwice'
  | 'airflowOnSome'
  | 'dryBulbOnSome'
  | 'headMissing'
  | 'notANumber'
  | 'strayWord'
  | 'formula'
  | 'impossible'
  | 'otherUnit'
  | 'cellInOtherUnit'
  | 'inThousands'
  | 'splitThousands'
  | 'filled'
  | 'holes'
  | 'twice'
  | 'flat'
  | 'skipped';

/** One line of the table as it goes into the job: texts as they were pasted. */
export type TidyRow = Readonly<Partial<Record<AxisRole | 'total' | 'sensible' | 'power', string>>>;

/** Factors that the maker prints beside a base block; texts as pasted. */
export interface Factors {
  readonly cause: 'airflow' | 'indoorMatch' | 'lineLength';
  readonly title: string;
  readonly spot: Spot;
  /** The unit of the airflows, where the sheet names one. */
  readonly unit: UnitKey | null;
  /** `of`: the airflow, the model or the length that a line is for. */
  readonly lines: readonly { readonly of: string; readonly total: string; readonly sensible: string }[];
}

export interface Proposal {
  readonly kind: LayoutKind;
  readonly meanings: readonly Meaning[];
  readonly basis: 'net' | 'gross' | null;
  readonly stages: readonly string[];
  readonly factors: readonly Factors[];
}
