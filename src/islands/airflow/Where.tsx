import { airflowPictures } from '~/charts/airflow/pictures.tsx';
import { Caution } from '~/parts/Caution.tsx';
import { methodWords } from '~/words/en/airflowSheet.ts';
import { type CautionWords, whereFold, whereWords } from '~/words/en/airflowWhere.ts';
import { LateFold } from '../LateFold.tsx';
import type { Method } from './model.ts';
import { Steps } from './Steps.tsx';

/** Where to measure, drawn, and what to do there, step by step, in a fold; the caution in the open. */
export function Where({
  of: method,
  cautions = [],
}: {
  of: Exclude<Method, 'fanTable'>;
  cautions?: readonly CautionWords[];
}) {
  const { picture, say, steps, caution } = whereWords[method];
  const Picture = airflowPictures[method];
  return (
    <>
      <LateFold summary={whereFold}>
        <p>{methodWords[method].lead}</p>
        <figure class="airflow-where">
          <Picture name={picture} />
          <figcaption>{say}</figcaption>
        </figure>
        <Steps steps={steps} />
      </LateFold>
      {(caution ? [caution, ...cautions] : cautions).map((words) => (
        <Caution key={words.say} of={words.of}>
          {words.say}
        </Caution>
      ))}
    </>
  );
}
