/** Words of the page on the three factors of the trade. */

export const title = '4.5, 1.08 and 0.68';
export const description =
  'Where the factors 4.5, 1.08 and 0.68 of the trade come from, when they mislead, and by how much at any height.';
export const say =
  'Three numbers turn cubic feet a minute into Btu/h. They are right for one air, standard air, and nobody ever measured in exactly that.';

export const whereHeading = 'Where they come from';
export const columns = { factor: 'Factor', turns: 'Turns', made: 'Made of' };
export const factors = [
  {
    factor: '4.5',
    turns: 'cfm and a difference of enthalpy (Btu/lb) into total Btu/h',
    made: '60 minutes × 0.075\u00a0lb of dry air in a cubic foot',
    source: 'standardAir',
  },
  {
    factor: '1.08',
    turns: 'cfm and a difference of temperature (°F) into sensible Btu/h',
    made: '4.5 × 0.24\u00a0Btu/(lb·°F), the specific heat of dry air',
    source: 'commonPractice',
  },
  {
    factor: '0.68',
    turns: 'cfm and a difference of water (grains a pound) into latent Btu/h',
    made: '4.5 × 1,060\u00a0Btu/lb of water ÷ 7,000 grains',
    source: 'commonPractice',
  },
] as const;
export const handbook = {
  before: 'The handbook’s own factors for standard air are 1.2, 1.23 and 3,010 in SI units,',
  after: 'make 1.10 for air with some water in it and 0.69 for a grain.',
};

export const whenHeading = 'When they mislead';
export const when = [
  {
    name: 'Height.',
    say: 'A cubic foot of thinner air holds less of it. The factors know nothing of that; the table below says what it comes to.',
  },
  {
    name: 'Place.',
    say: 'A cubic foot of supply air is denser than one of return air. A factor that is used on the one with an airflow read in the other is off by as much.',
  },
  {
    name: 'Kind.',
    say: 'An airflow that is standard air already, as many instruments show it, must not be corrected again; one that is actual must be.',
  },
  {
    name: 'Water.',
    say: '1.08 is for dry air. With water in it the same air takes up one or two per cent more.',
  },
  {
    name: 'Charts.',
    say: 'At a height the same relative humidity is more water in a pound of air. An enthalpy read from a chart for sea level is too small there, and this hides part of the first fault.',
  },
] as const;

export const exactHeading = 'Against the exact result';
export const example =
  'An invented reading: 1,200\u00a0cfm of actual return air at 75\u00a0°F and 50\u00a0%, supply air at 56\u00a0°F and 88\u00a0%. By the factors with a chart for sea level, and exactly, with the air as it is at the height.';
export const table = 'The factors and the exact result at five heights';
export const height = 'Height';
export const tryHeading = 'At any height';
export const insteadHeading = 'What to do instead';
export const instead =
  'Nothing by hand: the capacity sheet takes the height, the place and the kind of the airflow, and works with the air as it is. By hand, take 60 divided by the volume of a pound of dry air, from a chart for the height, in the place of 4.5.';
export const sheet = 'Open the capacity sheet';
