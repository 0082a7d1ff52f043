/** A pasted or opened sheet as a proposal that a person confirms, with what is odd about it and the rows that it comes to. */
import { findingsOf } from './findings.ts';
import { joinedThousands } from './joined.ts';
import { layoutOf } from './layout.ts';
import { factorsIn } from './multipliers.ts';
import { type Preview, previewOf } from './preview.ts';
import { interpret, meaningsSaid, tidyRows } from './rows.ts';
import { sheetOf, type TextRefusal } from './text.ts';
import { type Finding, nothingSaid, type Proposal, type Said, type TidyRow } from './types.ts';

export type { Preview } from './preview.ts';
export type { TextRefusal } from './text.ts';
export * from './types.ts';

export type Imported =
  | {
      readonly ok: true;
      readonly proposal: Proposal;
      readonly findings: readonly Finding[];
      readonly rows: readonly TidyRow[];
      readonly preview: Preview;
    }
  | { readonly ok: false; readonly code: TextRefusal | 'noFigures'; readonly count: number };

/** Rows kept of a sheet that is too large to be used: it is refused by its findings, and need not cross to the page. */
const mostRows = 2_000;

/** Reads a text as a sheet, with what the person says of it. Pure; never throws, whatever the text. */
export function importTable(text: string, said: Said = nothingSaid): Imported {
  const parsed = sheetOf(text);
  if (!parsed.ok) return parsed;
  const whole = joinedThousands(parsed.sheet, parsed.separator);
  const sheet = said.joined && whole ? whole : parsed.sheet;
  const { factors, rest } = factorsIn(sheet);
  const layout = layoutOf(rest);
  if (layout === null || layout.groups.length === 0) return { ok: false, code: 'noFigures', count: sheet.length };
  const meanings = meaningsSaid(layout, said);
  const found = interpret(sheet, layout, meanings, said);
  const all = tidyRows(found.points, meanings);
  const torn: readonly Finding[] =
    whole && !said.joined
      ? [
          {
            code: 'splitThousands',
            weight: 'doubt',
            spot: null,
            text: '',
            reading: '',
            count: 1,
            fix: { kind: 'join' },
          },
        ]
      : [];
  return {
    ok: true,
    proposal: { kind: layout.kind, meanings, basis: layout.basis, stages: found.stages, factors },
    findings: torn.length > 0 ? torn : findingsOf(layout, meanings, said, found, all),
    rows: all.slice(0, mostRows).filter((row) => row.outdoorDryBulb !== undefined && row.enteringWetBulb !== undefined),
    preview: previewOf(sheet, layout, meanings),
  };
}
