/** Where the two pressures of a fan table are read, by the kind of unit: what stands between the holes is what the table counts. */
import type { ComponentType } from 'preact';
import { pictureWords as words } from '../../words/en/airflowPictures.ts';
import { Air, Blower, Callout, Coil, cabinet, Dimension, duct, Heat, Never, Sheet, Slot, System } from './kit.tsx';

export type UnitKind = 'airHandler' | 'furnaceCoil' | 'packaged' | 'ductedMiniSplit';

type Picture = ComponentType<{ readonly name: string }>;

/** Coil and blower in one cabinet: both are inside. */
const AirHandler: Picture = ({ name }) => (
  <Sheet name={name}>
    <System />
    <Air x={48} />
    <Slot />
    <Blower />
    <Coil />
    <Air x={326} />
    <Never x={206} y={cabinet.top} />
    <Never x={206} y={cabinet.bottom} />
    <text class="middle" x="206" y="28">
      {words.never}
    </text>
    <Callout at={[72, duct.top]} to={[60, 24]} anchor="middle">
      {words.returnHole}
    </Callout>
    <Callout at={[262, duct.top]} to={[290, 24]} anchor="middle">
      {words.supplyHole}
    </Callout>
    <Dimension from={72} to={262} y={140}>
      {words.ratedUnit}
    </Dimension>
  </Sheet>
);

/** A furnace, and a coil in a case of its own behind it: the coil is part of the ducts. */
const FurnaceCoil: Picture = ({ name }) => (
  <Sheet name={name}>
    <path class="outline" d="M0 54H66V42H196V54H216V42H276V54H344" />
    <path class="outline" d="M0 98H66V110H196V98H216V110H276V98H344" />
    <Air x={40} />
    <Slot x={74} />
    <Blower x={110} />
    <Heat x={160} />
    <Coil x={228} />
    <Air x={330} />
    <Never x={168} y={cabinet.bottom} />
    <Never x={246} y={cabinet.bottom} />
    <text class="middle" x="246" y="134">
      {words.never}
    </text>
    <Callout at={[56, duct.top]} to={[48, 24]} anchor="middle">
      {words.returnHole}
    </Callout>
    <Callout at={[206, duct.top]} to={[176, 24]} anchor="middle">
      {words.supplyHole}
    </Callout>
    <text class="middle" x="282" y="24">
      {words.coilIsDuct}
    </text>
    <Dimension from={56} to={206} y={140}>
      {words.ratedUnit}
    </Dimension>
  </Sheet>
);

/** All of it in one cabinet outdoors, both ducts on one side. */
const Packaged: Picture = ({ name }) => (
  <Sheet name={name}>
    <path class="outline" d="M0 34H150V14H330V134H150V114H0M0 62H150V86H0" />
    <path class="line-step" d="M174 122L206 76M182 126L214 80" />
    <Blower x={262} />
    <Air x={60} y={100} />
    <path class="line-scale" d="M94 48H128" />
    <path class="arrow" d="M86 48l10 -4v8z" />
    <Never x={194} y={134} />
    <text x="206" y="148">
      {words.never}
    </text>
    <Callout at={[136, 34]} to={[112, 20]} anchor="end">
      {words.supplyHole}
    </Callout>
    <Callout at={[136, 114]} to={[112, 128]} anchor="end">
      {words.returnHole}
    </Callout>
    <text class="middle" x="250" y="32">
      {words.ratedUnit}
    </text>
  </Sheet>
);

const pictures: Readonly<Record<UnitKind, Picture>> = {
  airHandler: AirHandler,
  furnaceCoil: FurnaceCoil,
  packaged: Packaged,
  ductedMiniSplit: AirHandler,
};

export function FanTablePicture({ kind, name }: { kind: UnitKind; name: string }) {
  const Picture = pictures[kind];
  return <Picture name={name} />;
}
