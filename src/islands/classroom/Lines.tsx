/** Names and figures, line by line. */
export function Lines({ name, of }: { name: string; of: readonly (readonly [string, string])[] }) {
  return (
    <table class="ledger exercise-figures">
      <caption>{name}</caption>
      <tbody>
        {of.map(([line, text]) => (
          <tr key={line}>
            <th scope="row">{line}</th>
            <td class="number">{text}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
