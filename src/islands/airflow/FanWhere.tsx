import type { ComponentChildren } from 'preact';
import { FanTablePicture } from '~/charts/airflow/fanTable.tsx';
import { chosen } from '~/job/choices.ts';
import { Caution } from '~/parts/Caution.tsx';
import { methodWords } from '~/words/en/airflowSheet.ts';
import { fanWhere, whereFold } from '~/words/en/airflowWhere.ts';
import { ChoiceField } from '../ChoiceField.tsx';
import { job } from '../jobStore.ts';
import { LateFold } from '../LateFold.tsx';
import { Assumed } from './Assumed.tsx';
import { Steps } from './Steps.tsx';

/** Where to drill for the two pressures: what is external differs by what stands inside the rated unit. */
export function FanWhere({ assumed }: { assumed: ComponentChildren }) {
  const kind = chosen(job.value, 'equipment.kind') ?? 'airHandler';
  const { steps, caution, kinds } = fanWhere;
  const { picture, say } = kinds[kind];
  return (
    <>
      <div class="fold-pair">
        <LateFold summary={whereFold}>
          <p>{methodWords.fanTable.lead}</p>
          <ChoiceField of="equipment.kind" open />
          <figure class="airflow-where">
            <FanTablePicture kind={kind} name={picture} />
            <figcaption>{say}</figcaption>
          </figure>
          <Steps steps={steps} />
        </LateFold>
        <Assumed>{assumed}</Assumed>
      </div>
      <Caution of={caution.of}>{caution.say}</Caution>
    </>
  );
}
