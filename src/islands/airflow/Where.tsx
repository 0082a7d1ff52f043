import { airflowPictures } from '~/charts/airflow/pictures.tsx';
import { Caution } from '~/parts/Caution.tsx';
import { whereWords } from '~/words/en/airflowWhere.ts';
import type { Method } from './model.ts';

/** Where to measure, drawn, and what to do there, step by step. */
export function Where({ of: method }: { of: Method }) {
  const { picture, steps, caution } = whereWords[method];
  const Picture = airflowPictures[method];
  return (
    <>
      <figure class="airflow-where">
        <Picture name={picture} />
      </figure>
      <ol class="airflow-steps">
        {steps.map((step) => (
          <li key={step}>{step}</li>
        ))}
      </ol>
      {caution && <Caution>{caution}</Caution>}
    </>
  );
}
