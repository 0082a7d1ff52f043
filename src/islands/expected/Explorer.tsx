import { useEffect } from 'preact/hooks';
import { roomsFold } from '~/words/en/expected.ts';
import { LateFold } from '../LateFold.tsx';
import { lazy } from '../lazy.tsx';
import { followBands } from './bands.ts';
import { Controls, Quantity } from './Controls.tsx';
import { Figure } from './Figure.tsx';
import { SurfaceTable } from './Folds.tsx';
import { isSurface } from './model.ts';
import { Origin } from './Origin.tsx';
import { Reading } from './Reading.tsx';
import { SlicesBeside } from './Slices.tsx';
import { followPage, isPhone } from './view.ts';
import { Worth } from './Worth.tsx';

const Block = lazy(() => import('./Block.tsx').then((module) => module.Block));
const Derating = lazy(() => import('./derating/Derating.tsx').then((module) => module.Derating));

const Rooms = lazy(() => import('./rooms/Rooms.tsx').then((module) => module.Rooms));

export { followLack, shown } from './model.ts';

/** The table of the open job, drawn and moved; without one an invented table. */
export function Explorer() {
  useEffect(followPage, []);
  useEffect(followBands, []);
  return (
    <div class="expected">
      <div class="expected-main">
        <Origin />
        <Figure />
        {!isPhone.value && isSurface.value && <SlicesBeside />}
      </div>
      <div class="expected-side">
        <Quantity />
        <Reading />
        <Controls />
        <Worth />
      </div>
      <Derating />
      <section class="folds">
        <LateFold summary={roomsFold}>
          <Rooms />
        </LateFold>
        <SurfaceTable />
      </section>
      <Block />
    </div>
  );
}
