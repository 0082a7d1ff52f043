/** What the audit reads out of a report of Lighthouse. */
interface Audit {
  readonly id: string;
  readonly title: string;
  readonly score: number | null;
  readonly numericValue?: number;
  readonly details?: { readonly items?: readonly { readonly node?: { readonly snippet: string } }[] };
}

export interface Audited {
  readonly categories: Readonly<
    Record<
      string,
      { readonly score: number | null; readonly auditRefs: readonly { readonly id: string; readonly weight: number }[] }
    >
  >;
  readonly audits: Readonly<Record<string, Audit>>;
  readonly environment: { readonly benchmarkIndex: number };
}

export const median = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[values.length >> 1] ?? Number.NaN;

/** The categories of a report in one line, whether all are whole, and what falls short in them. */
export function summary({ categories, audits }: Audited): {
  readonly good: boolean;
  readonly line: string;
  readonly faults: readonly string[];
} {
  const scores = Object.entries(categories).map(([name, { score }]) => [name, Math.round((score ?? 0) * 100)] as const);
  const counting = Object.values(categories).flatMap(({ auditRefs }) => auditRefs.filter(({ weight }) => weight > 0));
  const faults = counting.flatMap(({ id }) => {
    const audit = audits[id];
    if (!audit || audit.score === null || audit.score >= 1) return [];
    return `${id}: ${audit.title} ${audit.details?.items?.[0]?.node?.snippet ?? ''}`;
  });
  return {
    good: scores.every(([, score]) => score === 100),
    line: scores.map(([name, score]) => `${name} ${score}`).join(', '),
    faults,
  };
}
