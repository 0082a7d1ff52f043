import type { ComponentChildren } from 'preact';
import { airflowPictures } from '~/charts/airflow/pictures.tsx';
import { Caution } from '~/parts/Caution.tsx';
import { methodWords } from '~/words/en/airflowSheet.ts';
import { type CautionWords, whereWords } from '~/words/en/airflowWhere.ts';
import type { Method } from './model.ts';
import { WhereFold } from './WhereFold.tsx';

/** Where to measure for a method, in its fold; its cautions in the open. */
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
      <WhereFold
        lead={methodWords[method].lead}
        picture={<Picture name={picture} />}
        say={say}
        steps={steps}
        assumed={assumed}
      />
      {(caution ? [caution, ...cautions] : cautions).map((words) => (
        <Caution key={words.say} of={words.of}>
          {words.say}
        </Caution>
      ))}
    </>
  );
}
