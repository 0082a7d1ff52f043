/** Where each method measures, drawn: one system, air from left to right. Not to scale. The fan table has drawings of its own. */
import type { ComponentType } from 'preact';
import type { AirflowMethod } from '../../calc/airflow/methods.ts';
import { pictureWords as words } from '../../words/en/airflowPictures.ts';
import { Air, Blower, Callout, Coil, cabinet, Dimension, duct, Heat, Sheet, Slot, System } from './kit.tsx';

type Picture = ComponentType<{ readonly name: string }>;

const Readout: Picture = ({ name }) => (
  <Sheet name={name}>
    <System />
    <Air x={62} />
    <Slot />
    <Blower />
    <Coil />
    <Air x={322} />
    <path class="line-scale" d={`M132 ${duct.middle}V22H196`} />
    <rect class="outline blank" x="196" y="8" width="72" height="28" />
    <text class="middle" x="232" y="27">
      {words.display}
    </text>
    <text class="end" x="124" y="28">
      {words.motor}
    </text>
  </Sheet>
);

const FlowGrid: Picture = ({ name }) => (
  <Sheet name={name}>
    <System />
    <Air x={62} />
    <Slot plate />
    <Blower />
    <Coil />
    <Air x={326} />
    <Callout at={[100, cabinet.top + 4]} to={[84, 22]} anchor="middle">
      {words.plate}
    </Callout>
    <Callout at={[262, duct.top]} to={[268, 24]} anchor="middle">
      {words.samePoint}
    </Callout>
  </Sheet>
);

const Hood: Picture = ({ name }) => (
  <Sheet name={name}>
    <path class="outline" d="M150 6V30M150 118V144" />
    <path class="outline" d="M150 30h14v88h-14zM164 40H344M164 108H344" />
    {[44, 58, 72, 86, 100].map((y) => (
      <path key={y} class="line-scale" d={`M152 ${y}l10 6`} />
    ))}
    <path class="outline" d="M150 26L84 52V98L150 122z" />
    <Air x={72} />
    <Air x={262} y={74} />
    <Callout at={[110, 42]} to={[70, 24]} anchor="middle">
      {words.hood}
    </Callout>
    <Callout at={[157, 112]} to={[196, 126]}>
      {words.grille}
    </Callout>
  </Sheet>
);

const Traverse: Picture = ({ name }) => (
  <Sheet name={name}>
    <path class="outline" d="M22 150V108Q22 54 60 54H344M66 150V112Q66 98 80 98H344" />
    <Air x={118} />
    <Air x={336} />
    {[228, 236, 244, 252, 260].map((x) => (
      <circle key={x} class="dot" cx={x} cy={duct.top} r="2" />
    ))}
    <path class="line-step" d="M244 18V84" />
    <path class="line-step" d="M244 84H234" />
    <text x="252" y="30">
      {words.holes}
    </text>
    <Dimension from={80} to={244} y={122}>
      {words.before}
    </Dimension>
    <Dimension from={244} to={340} y={144}>
      {words.behind}
    </Dimension>
  </Sheet>
);

const TemperatureRise: Picture = ({ name }) => (
  <Sheet name={name}>
    <path class="outline" d="M0 54H60V42H214V54H262V0M0 98H60V110H214V98H306V0" />
    <Air x={32} />
    <Blower x={104} />
    <Heat x={168} />
    <text class="middle" x="176" y="130">
      {words.heat}
    </text>
    <Callout at={[44, duct.middle]} to={[44, 124]} anchor="middle" mark="return">
      {words.return}
    </Callout>
    <Callout at={[284, 30]} to={[318, 112]} anchor="end" mark="supply">
      {words.outOfSight}
    </Callout>
  </Sheet>
);

const PressureMatch: Picture = ({ name }) => (
  <Sheet name={name}>
    <System />
    <path class="line-measured" d={`M70 ${duct.top}V${duct.bottom}`} />
    <text class="middle" x="42" y="42">
      {words.shut}
    </text>
    <Blower x={178} />
    <Air x={322} />
    <path class="outline blank" d="M96 110h40l8 34h-56z" />
    <circle class="outline" cx="116" cy="130" r="9" />
    <path class="line-scale" d="M107 130h18M116 121v18" />
    <text x="152" y="138">
      {words.calibratedFan}
    </text>
    <Callout at={[262, duct.top]} to={[268, 24]} anchor="middle">
      {words.samePoint}
    </Callout>
  </Sheet>
);

const Grille: Picture = ({ name }) => (
  <Sheet name={name}>
    <rect class="outline" x="12" y="14" width="150" height="104" />
    <path class="line-step" d="M26 30H148V50H26V70H148V90H26V106H140" />
    <path class="arrow" d="M148 106l-10 -4v8z" />
    <circle class="outline blank" cx="26" cy="30" r="9" />
    <text class="middle" x="87" y="138">
      {words.face}
    </text>
    <path class="outline" d="M280 14V104M272 14V104M280 24H344M280 94H344" />
    <circle class="outline" cx="238" cy="58" r="3" />
    <path class="line-step" d="M238 42V74" />
    <Air x={228} y={58} />
    <Air x={330} y={58} />
    <Dimension from={238} to={272} y={92}>
      {''}
    </Dimension>
    <text class="middle" x="256" y="122">
      {words.distance}
    </text>
  </Sheet>
);

export const airflowPictures: Readonly<Record<Exclude<AirflowMethod, 'fanTable'>, Picture>> = {
  readout: Readout,
  flowGrid: FlowGrid,
  hood: Hood,
  traverse: Traverse,
  temperatureRise: TemperatureRise,
  pressureMatch: PressureMatch,
  grille: Grille,
};
