import type { ComponentChildren } from 'preact';
import { FanTablePicture } from '~/charts/airflow/fanTable.tsx';
import { chosen } from '~/job/choices.ts';
import { Caution } from '~/parts/Caution.tsx';
import { methodWords } from '~/words/en/airflowSheet.ts';
import { fanWhere } from '~/words/en/airflowWhere.ts';
import { ChoiceField } from '../ChoiceField.tsx';
import { job } from '../jobStore.ts';
import { WhereFold } from './WhereFold.tsx';

/** Where to drill for the two pressures: what is external differs by what stands inside the rated unit. */
export function FanWhere({ assumed }: { assumed: ComponentChildren }) {
  const kind = chosen(job.value, 'equipment.kind') ?? 'airHandler';
  const { steps, caution, kinds } = fanWhere;
  const { picture, say } = kinds[kind];
  return (
    <>
      <WhereFold
        lead={methodWords.fanTable.lead}
        picture={<FanTablePicture kind={kind} name={picture} />}
        say={say}
        steps={steps}
        assumed={assumed}
      >
        <ChoiceField of="equipment.kind" open />
      </WhereFold>
      <Caution of={caution.of}>{caution.say}</Caution>
    </>
  );
}
