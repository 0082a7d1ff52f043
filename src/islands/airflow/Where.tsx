import type { ComponentChildren } from 'preact';
import { airflowPictures } from '~/charts/airflow/pictures.tsx';
import { Caution } from '~/parts/Caution.tsx';
import { methodWords } from '~/words/en/airflowSheet.ts';
import { type CautionWords, whereFold, whereWords } from '~/words/en/airflowWhere.ts';
import { LateFold } from '../LateFold.tsx';
import { Assumed } from './Assumed.tsx';
import type { Method } from './model.ts';
import { Steps } from './Steps.tsx';

/** Where to measure, drawn, and what to do there, step by step, in a fold; beside it what is taken for granted; the caution in the open. */
export function Where({
  of: method,
  assumed,
  cautions = [],
}: {
  of: Exclude<Method, 'fanTable'>;
  assumed: ComponentChildren;
  cautions?: readonly CautionWords[];
}) {
  const { picture, say, steps, caution } = whereWords[method];
  const Picture = airflowPictures[method];
  return (
    <>
      <div class="fold-pair">
        <LateFold summary={whereFold}>
          <p>{methodWords[method].lead}</p>
          <figure class="airflow-where">
            <Picture name={picture} />
            <figcaption>{say}</figcaption>
          </figure>
          <Steps steps={steps} />
        </LateFold>
        <Assumed>{assumed}</Assumed>
      </div>
      {(caution ? [caution, ...cautions] : cautions).map((words) => (
        <Caution key={words.say} of={words.of}>
          {words.say}
        </Caution>
      ))}
    </>
  );
}
