import type { Remark } from '~/calc/types.ts';
import { Check, Echo } from '~/parts/Echo.tsx';
import { parts } from '~/words/en/parts.ts';
import { typing } from '../fields.ts';
import { saidAbout } from './remarks.ts';

/** What is odd about a step, or good to know. It holds back while somebody types. */
export function Remarks({ about }: { about: Remark['about'] }) {
  if (typing.value !== null) return null;
  return (
    <>
      {saidAbout(about).map(({ code, weight, text }) =>
        weight === 'note' ? (
          <Echo key={code}>{text}</Echo>
        ) : (
          <Check key={code} lead={weight === 'stop' ? parts.noVerdict : parts.check}>
            {text}
          </Check>
        ),
      )}
    </>
  );
}
