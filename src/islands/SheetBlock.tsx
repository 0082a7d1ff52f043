import { changesAfterLock, lockedOf } from '~/job/lockList.ts';
import { TitleBlock } from '~/parts/TitleBlock.tsx';
import { choiceWords } from '~/words/en/choices.ts';
import { titleBlock } from '~/words/en/results.ts';
import { amountOf } from './fields.ts';
import { clock, sizeText } from './show.ts';
import { interpreted, job, source, system } from './store.ts';

/** The title block: job, system, sheet; read, place, units; by, state, method. */
export function SheetBlock({ sheet, method }: { sheet: string; method: string }) {
  const { notes, chosen, entered } = job.value;
  const { test, assumed } = interpreted.value;
  const kind = chosen['equipment.kind'];
  const equipment = kind ? (choiceWords['equipment.kind'].options as Record<string, string>)[kind] : undefined;
  const size = test.nominalCapacity === null ? undefined : sizeText(test.nominalCapacity);
  const at = entered['leaving.dryBulb']?.at ?? entered['entering.dryBulb']?.at;
  const invented = job.value.invented === true;
  const lock = lockedOf(job.value);
  return (
    <TitleBlock
      rows={[
        { name: titleBlock.job, value: notes.address?.trim() || titleBlock.none, strong: true },
        {
          name: titleBlock.system,
          value: [size, equipment?.toLowerCase()].filter(Boolean).join(', ') || titleBlock.none,
          strong: true,
        },
        { name: titleBlock.sheet, value: sheet, strong: true },
        { name: titleBlock.read, value: at ? `${day(at)}, ${clock(at)}` : titleBlock.notRead },
        {
          name: titleBlock.place,
          value: test.altitude === null ? titleBlock.seaLevelAssumed : amountOf('altitude', test.altitude),
        },
        { name: titleBlock.units, value: system.value === 'ip' ? '°F, Btu/h' : '°C, kW' },
        { name: titleBlock.by, value: notes.tester?.trim() || titleBlock.none },
        {
          name: titleBlock.state,
          value: lock
            ? titleBlock.locked(clock(lock.at), changesAfterLock(job.value).length)
            : source.value === 'demo' || invented
              ? titleBlock.demo
              : titleBlock.open(assumed.length),
        },
        lock ? { name: titleBlock.code, value: lock.code, strong: true } : { name: titleBlock.method, value: method },
      ]}
    />
  );
}

function day(iso: string): string {
  const date = new Date(iso);
  return Number.isNaN(date.getTime()) ? '' : date.toLocaleDateString('en', { day: 'numeric', month: 'long' });
}
