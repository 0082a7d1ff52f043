/** Published figures that were looked at and are not tested against, each with the reason. */
export interface NotOurs {
  readonly what: string;
  readonly source: string;
  readonly why: string;
}

const beyond = 'beyond 200 °C, where Eq. 6 ends';
const hot = 'at 200 °C, and dry bulbs end at 90 °C here';
const iapws = 'IAPWS R7-97 (2012), table 35';
const report = 'ASHRAE RP-1485 report, table A.11, as the tests of CoolProp carry it';

export const notOurs: readonly NotOurs[] = [
  { what: 'saturation pressure at 500 K: 2 638 897.76 Pa', source: iapws, why: beyond },
  { what: 'saturation pressure at 600 K: 12 344 314.6 Pa', source: iapws, why: beyond },
  { what: 'specific volume at W 0: 1.341 m³/kg', source: report, why: hot },
  { what: 'enthalpy at W 0: 202.52 kJ/kg', source: report, why: hot },
  { what: 'wet bulb at W 0.5: 81.12 °C', source: report, why: hot },
  { what: 'specific volume at W 0.5: 2.416 m³/kg', source: report, why: hot },
  { what: 'enthalpy at W 0.5: 1641.4 kJ/kg', source: report, why: hot },
  { what: 'wet bulb at W 1: 88.15 °C', source: report, why: hot },
  { what: 'enthalpy at W 1: 3079.55 kJ/kg', source: report, why: hot },
  {
    what: '0.68: latent heat of a cfm for a grain',
    source: 'a formula sheet of the trade',
    why: 'rests on 1060 Btu/lb, a figure of the trade that nothing here works with',
  },
  {
    what: 'standard atmosphere at 4000 ft: 12.682 psia',
    source: 'table 1 of the I-P edition as reprinted',
    why: '0.010 psia from Eq. 3 where all other rows are within 0.003: suspected misprint',
  },
  {
    what: 'Example 3 (I-P): 51.35 tons',
    source: 'the I-P edition, from memory',
    why: 'its specific volume is 1.2 % from every model; the figure computed by RP-1485 is tested instead',
  },
];
