import type { ComponentChildren } from 'preact';
import { airflowPictures } from '~/charts/airflow/pictures.tsx';
import { Caution } from '~/parts/Caution.tsx';
import { methodWords } from '~/words/en/airflowSheet.ts';
import { whereWords } from '~/words/en/airflowWhere.ts';
import type { Method } from './model.ts';
import { WhereFold } from './WhereFold.tsx';

/** Where to measure for a method, in a fold. */
export function Where({
  of: method,
  assumed,
  children,
}: {
  of: Exclude<Method, 'fanTable'>;
  assumed: ComponentChildren;
  /** What is drawn below the steps. */
  children?: ComponentChildren;
}) {
  const { picture, say, steps } = whereWords[method];
  const Picture = airflowPictures[method];
  return (
    <WhereFold
      lead={methodWords[method].lead}
      picture={<Picture name={picture} />}
      say={say}
      steps={steps}
      assumed={assumed}
      after={children}
    />
  );
}

/** What can hurt there, in the open. */
export function WhereCaution({ of: method }: { of: Exclude<Method, 'fanTable'> }) {
  const { caution } = whereWords[method];
  return caution ? <Caution of={caution.of}>{caution.say}</Caution> : null;
}
