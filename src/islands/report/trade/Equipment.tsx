import { said } from '~/job/choices.ts';
import { identity } from '~/words/en/identity.ts';
import { trade } from '~/words/en/reportTrade.ts';
import { job } from '../../store.ts';
import { note } from '../facts.ts';

/** Which units were tested, and how filter and coil were found; nothing where nobody has said. */
export function Equipment() {
  const filter = said(job.value, 'filter');
  const coil = said(job.value, 'coil');
  const parts = [
    unit(identity.outdoorModel, 'outdoor'),
    unit(identity.indoorModel, 'indoor'),
    note('furnace.model') && `${identity.furnaceModel} ${note('furnace.model')}`,
    note('certificate') && trade.certificate(note('certificate')),
    filter && trade.filter[filter],
    coil && trade.coil[coil],
  ].filter(Boolean);
  return parts.length === 0 ? null : <p>{`${parts.join('; ')}.`}</p>;
}

function unit(name: string, place: 'outdoor' | 'indoor'): string {
  const model = note(`${place}.model`);
  const serial = note(`${place}.serial`);
  return model === '' && serial === ''
    ? ''
    : `${name} ${[model, serial && trade.serial(serial)].filter(Boolean).join(', ')}`;
}
