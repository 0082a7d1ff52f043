/** A pasted or opened sheet as a proposal that a person confirms, with what is odd about it and the rows that it comes to. */
import { carefulRemarks } from './careful.ts';
import { finding } from './finding.ts';
import { findingsOf } from './findings.ts';
import type { Imported } from './imported.ts';
import { joinedThousands } from './joined.ts';
import { layoutOf } from './layout.ts';
import { factorsIn } from './multipliers.ts';
import { previewOf } from './preview.ts';
import { interpret, meaningsSaid, tidyRows } from './rows.ts';
import { sheetTable } from './table.ts';
import { sheetOf } from './text.ts';
import { nothingSaid, type Said } from './types.ts';

export type { Found, Imported } from './imported.ts';
export * from './types.ts';

/** Rows kept of a sheet that is too large to be used: it is refused by its findings, and need not cross to the page. */
const mostRows = 2_000;
const mostRemarks = 200;

/**
 * Reads a text as a sheet, with what the person says of it. Pure; never throws, whatever the text. `parted` is told of how many
 * lines the text turned out to be, before they are looked at.
 */
export function importTable(text: string, said: Said = nothingSaid, parted?: (lines: number) => void): Imported {
  const parsed = sheetOf(text);
  if (!parsed.ok) return parsed;
  parted?.(parsed.sheet.length);
  const whole = joinedThousands(parsed.sheet, parsed.separator);
  const isTorn = whole !== null && !said.joined;
  const sheet = whole !== null && said.joined ? whole : parsed.sheet;
  const { factors, rest } = factorsIn(sheet);
  const layout = layoutOf(rest);
  if (layout === null || layout.groups.length === 0) return { ok: false, code: 'noFigures', count: sheet.length };
  const meanings = meaningsSaid(layout, said);
  const found = interpret(sheet, layout, meanings, said);
  const all = tidyRows(found.points, meanings);
  const rows = all
    .slice(0, mostRows)
    .filter((row) => row.outdoorDryBulb !== undefined && row.enteringWetBulb !== undefined);
  // Of torn figures nothing else is worth saying.
  const findings = isTorn
    ? [finding('splitThousands', 'doubt', { fix: { kind: 'join' } })]
    : findingsOf(layout, meanings, said, found, all);
  return {
    ok: true,
    proposal: { kind: layout.kind, meanings, basis: layout.basis, stages: found.stages, factors },
    findings,
    rows,
    preview: previewOf(sheet, layout, meanings),
    remarks: isTorn ? [] : carefulRemarks(sheetTable(rows, meanings)).slice(0, mostRemarks),
  };
}
