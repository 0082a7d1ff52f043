import { Drawn } from '~/charts/Drawn.tsx';
import { ledgerDrawing } from '~/charts/derating/ledger.ts';
import { aroundDucts } from '~/job/ducts/index.ts';
import { Caution } from '~/parts/Caution.tsx';
import { href } from '~/parts/href.ts';
import { Select } from '~/parts/Select.tsx';
import { choiceWords } from '~/words/en/choices.ts';
import { ductChoiceWords, ductNeeds, ductQuantityWords, rooms } from '~/words/en/ducts.ts';
import { quantityWords } from '~/words/en/quantities.ts';
import { ChoiceField } from '../../ChoiceField.tsx';
import { amountOf } from '../../fields.ts';
import { fine, fineText } from '../../fine.ts';
import { edit, job } from '../../jobStore.ts';
import { LateFold } from '../../LateFold.tsx';
import { lazy } from '../../lazy.tsx';
import { QuantityField } from '../../QuantityField.tsx';
import { capacityText, percent } from '../../show.ts';
import { useWidth } from '../../useWidth.ts';
import { unitName } from '../derating/rows.ts';
import { ducts, gain, isMeasured, made } from './model.ts';

Object.assign(quantityWords, ductQuantityWords);
Object.assign(choiceWords, ductChoiceWords);

const Working = lazy(() => import('./RoomsWorking.tsx').then((module) => module.RoomsWorking));

/** What the coil makes against what the rooms get: the ducts outside them, asked for here and nowhere else. */
export function Rooms() {
  const around = aroundDucts(job.value);
  const { where, insulation } = { where: ductChoiceWords['ducts.where'], insulation: 'ducts.insulation' } as const;
  const isAttic = !['other', undefined].includes(job.value.chosen['ducts.where']);
  return (
    <div class="rooms">
      <p>{rooms.lead}</p>
      <div class="rooms-fields">
        <Select
          id="choice-ducts.where"
          ask={where.ask}
          options={where.options}
          value={job.value.chosen['ducts.where']}
          open={rooms.choose}
          onChoose={(value, select) => {
            if (edit({ slot: 'chosen', key: 'ducts.where', to: value })) return;
            select.value = job.value.chosen['ducts.where'] ?? '';
          }}
        />
        <div class="field-row">
          <QuantityField
            of="ducts.around"
            hint={isAttic && around !== null ? rooms.around(amountOf('ducts.around', around)) : undefined}
          />
          <QuantityField of="ducts.dewPoint" />
        </div>
        <ChoiceField of={insulation} />
        <div class="field-row">
          <QuantityField of="ducts.supplyArea" />
          <QuantityField of="ducts.returnArea" />
        </div>
        <div class="field-row">
          <QuantityField of="ducts.supplyLeakage" />
          <QuantityField of="ducts.returnLeakage" />
        </div>
        <Caution of="heat-and-height">{rooms.caution}</Caution>
      </div>
      <div class="rooms-result">
        <Result />
      </div>
    </div>
  );
}

function Result() {
  const found = gain.value;
  const total = made.value;
  if (!isMeasured.value) {
    return (
      <p class="rooms-says">
        {rooms.measure} <a href={href('/worksheets/capacity/')}>{rooms.toSheet}</a>.
      </p>
    );
  }
  const { needs } = ducts.value;
  if (needs.length > 0) return <p class="rooms-says">{rooms.needs(needs.map((need) => ductNeeds[need]).join(', '))}</p>;
  if (found === null || total === null) return null;
  const isCool = found.delivered > 0;
  return (
    <>
      <p class="rooms-says" role="status">
        {isCool
          ? rooms.says(capacityText(total), capacityText(found.delivered), percent(found.effectiveness))
          : rooms.heated(capacityText(total))}
      </p>
      <Picture total={total} delivered={Math.max(0, found.delivered)} />
      <p class="note quiet">{rooms.estimate}</p>
      <LateFold summary={rooms.working}>
        <Working />
      </LateFold>
    </>
  );
}

/** The two figures on one scale, the loss as a dimension line, as in the steps above. */
function Picture({ total, delivered }: { total: number; delivered: number }) {
  const [box, width] = useWidth();
  const row = { note: null, tried: false };
  const [amount, got] = [fine(total).number, fine(delivered).number];
  const drawing =
    width > 0
      ? ledgerDrawing({
          rows: [
            { ...row, name: rooms.atCoil, amount, value: total, change: null },
            {
              ...row,
              name: rooms.inRooms,
              amount: got,
              value: delivered,
              change: `−${fine(total - delivered).number}`,
              isSum: true,
            },
          ],
          width: Math.min(width, 860),
          unit: unitName(),
          should: null,
          measured: null,
          range: null,
        })
      : null;
  return (
    <div ref={box} class="derating-room">
      {drawing && <Drawn of={drawing} name={rooms.ledger(fineText(total), fineText(delivered))} />}
    </div>
  );
}
