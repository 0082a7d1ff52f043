/** Words about what the rooms get of what the coil makes. */
import type { DuctNeed } from '../../job/ducts/index.ts';
import type { ChoiceWords } from './choices.ts';
import type { QuantityWords } from './quantities.ts';

export const ductQuantityWords = {
  'ducts.supplyArea': {
    name: 'Supply ducts outside the rooms',
    term: 'surface',
    inSentence: 'surface of the supply ducts',
    hint: 'Length by the distance around, all of them together.',
  },
  'ducts.returnArea': {
    name: 'Return ducts outside the rooms',
    term: 'surface',
    inSentence: 'surface of the return ducts',
    empty: 'Empty counts as none.',
  },
  'ducts.supplyLeakage': {
    name: 'Leaks of the supply',
    inSentence: 'leaks of the supply',
    hint: 'From a leakage test, a share of the airflow.',
    empty: 'Empty counts as tight.',
  },
  'ducts.returnLeakage': {
    name: 'Leaks of the return',
    inSentence: 'leaks of the return',
    hint: 'They draw in the air around the ducts.',
    empty: 'Empty counts as tight.',
  },
  'ducts.around': { name: 'Air around the ducts', inSentence: 'temperature around the ducts' },
  'ducts.dewPoint': {
    name: 'Dew point of that air',
    inSentence: 'dew point around the ducts',
    empty: 'Empty counts as that of the return air.',
  },
} as const satisfies Record<string, QuantityWords>;

export const ductChoiceWords = {
  'ducts.where': {
    ask: 'Where do they run?',
    options: {
      ventedDarkShingle: 'Vented attic, dark shingles',
      ventedLightShingle: 'Vented attic, light shingles',
      ventedDarkShingleRadiantBarrier: 'Vented attic, dark shingles, radiant barrier',
      ventedLightShingleRadiantBarrier: 'Vented attic, light shingles, radiant barrier',
      darkClayTile: 'Attic under dark clay tiles',
      reflectiveMetal: 'Attic under reflective metal',
      unvented: 'Attic without vents',
      unventedRadiantBarrier: 'Attic without vents, radiant barrier',
      other: 'Elsewhere: type the temperature',
    },
  },
  'ducts.insulation': {
    ask: 'What is printed on their insulation?',
    options: { bare: 'None, bare', r4: 'R-4.2', r6: 'R-6', r8: 'R-8' },
  },
} as const satisfies Record<string, ChoiceWords>;

export const rooms = {
  lead: 'Measured and expected are both made at the coil, between the probes. Ducts outside the rooms take a part on the way: heat comes in through their walls, and air through their leaks. That is no fault of the machine, and it changes no verdict.',
  caution:
    'An attic in summer can be over 120\u00a0°F (50\u00a0°C). Go up early, not alone, and stand on the joists only.',
  choose: 'Choose one',
  around: (temperature: string) => `Empty: ${temperature}, such an attic on a design day.`,
  needs: (what: string) => `Still needed: ${what}.`,
  measure: 'What the coil makes is not measured yet: return, supply and airflow come first.',
  toSheet: 'Measure it',
  says: (made: string, got: string, share: string) => `Of ${made} made at the coil the rooms get ${got}: ${share}.`,
  heated: (made: string) => `The ducts heat more than the coil cools: nothing of ${made} reaches the rooms.`,
  estimate:
    'An estimate for steady running, by the equation of a published standard. What leaks is the least certain part of it.',
  atCoil: 'Made at the coil, measured',
  inRooms: 'In the rooms, behind the ducts',
  ledger: (made: string, got: string) => `From ${made} at the coil to ${got} in the rooms`,
  working: 'The working',
} as const;

export const ductNeeds: Readonly<Record<DuctNeed, string>> = {
  'ducts.supplyArea': 'the surface of the supply ducts',
  'ducts.insulation': 'what is printed on their insulation',
  'ducts.where': 'where they run',
  'ducts.around': 'the temperature around them',
};
