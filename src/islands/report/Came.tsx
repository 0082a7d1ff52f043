import { signal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { report } from '~/words/en/report.ts';
import type { WorkingGroup } from '~/words/en/working.ts';
import { lazy } from '../lazy.tsx';

const CameAbout = lazy(() => import('./CameAbout.tsx').then((module) => module.CameAbout));

/** Which figure somebody touched: where it stands, and the part of the working that it is the end of. */
const asked = signal<{ readonly at: string; readonly group: WorkingGroup } | null>(null);

interface FigureProps {
  /** The place of the page in which the working opens. */
  readonly at: string;
  readonly group: WorkingGroup;
  readonly children: string;
}

/** A number that may be touched to see how it came about. On paper it is a number. */
export function Figure({ at, group, children }: FigureProps) {
  const open = asked.value?.at === at && asked.value.group === group;
  return (
    <button
      type="button"
      class="plain-button report-figure"
      aria-expanded={open}
      aria-controls={open ? `came-${at}` : undefined}
      aria-label={report.came(children)}
      onClick={() => {
        asked.value = open ? null : { at, group };
      }}
    >
      {children}
    </button>
  );
}

/** Where the working of the figures before it opens. */
export function CamePlace({ at, children }: { at: string; children?: ComponentChildren }) {
  const open = asked.value?.at === at ? asked.value.group : null;
  return (
    <>
      {children}
      {open && (
        <div class="report-came" id={`came-${at}`}>
          <CameAbout key={open} group={open} />
        </div>
      )}
    </>
  );
}
