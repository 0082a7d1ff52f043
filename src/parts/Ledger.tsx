import type { ComponentChildren } from 'preact';

export interface LedgerLine {
  readonly name: ComponentChildren;
  readonly number: string;
  readonly unit: string;
  /** A line above it: this one is what the others come to. */
  readonly sum?: boolean;
  readonly source?: ComponentChildren;
}

/** Words left, numbers right in a column, their unit in a column of its own. */
export function Ledger({ caption, lines }: { caption: string; lines: readonly LedgerLine[] }) {
  const sourced = lines.some((line) => line.source !== undefined);
  return (
    <div class="ledger-box">
      <table class="ledger">
        <caption class="spoken">{caption}</caption>
        <tbody>
          {lines.map((line, index) => (
            // The order of a ledger is its meaning: a line has no other name.
            <tr key={index} class={line.sum ? 'sum' : undefined}>
              <th scope="row">{line.name}</th>
              <td class="number">{line.number}</td>
              <td class="unit">{line.unit}</td>
              {sourced && <td class="ledger-source">{line.source}</td>}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
