/** What to do where it is measured, in order. */
export function Steps({ steps }: { steps: readonly string[] }) {
  return (
    <ol class="airflow-steps">
      {steps.map((step) => (
        <li key={step}>{step}</li>
      ))}
    </ol>
  );
}
