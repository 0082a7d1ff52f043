import type { Facts, Rule } from './facts.ts';
import { amount } from './trace.ts';
import type { MoistAir } from './types.ts';
import { fromFahrenheit } from './units.ts';

/** A drop smaller than this is no cooling worth judging, K. Our choice. */
const leastDrop = 1;
/** A wet coil of a usual bypass factor leaves 85 to 95 % behind it; below this something else is at work. Our choice. */
const dryBelow = 0.8;
/** From here on a drop of water on the sensor is the likelier reading. Common practice, no source. */
const wetProbeFrom = 0.98;
/** Below it the surface may be under 32 °F somewhere, and ice moves every figure. Common practice, no source. */
const frostBelow = fromFahrenheit(36);

/** How far apart two dry bulbs must be to be told apart, K. */
function tellable({ spread }: Facts): number {
  return Math.max(leastDrop, spread?.dryBulb ?? 0);
}

/** The two states of the air, of which the second is colder than the first; `null` where the system does not cool. */
function cooling(facts: Facts): { readonly entering: MoistAir; readonly leaving: MoistAir } | null {
  const { entering, leaving } = facts;
  const cools = entering && leaving && entering.dryBulb - leaving.dryBulb > tellable(facts);
  return cools ? { entering, leaving } : null;
}

/** Water taken out per kilogram of dry air and what the probes cannot tell from zero, while the system cools. */
function water(facts: Facts): { readonly removed: number; readonly unseen: number } | null {
  const { spread } = facts;
  const air = spread && cooling(facts);
  return air && { removed: air.entering.humidityRatio - air.leaving.humidityRatio, unseen: spread.humidityRatio };
}

/** Whether the two probes see water being taken out. */
function latentSeen(facts: Facts): boolean {
  const found = water(facts);
  return found !== null && found.removed > found.unseen;
}

function dryBulbs(entering: MoistAir, leaving: MoistAir) {
  return [amount('t₁', 'temperature', entering.dryBulb), amount('t₂', 'temperature', leaving.dryBulb)];
}

/** What the two states of the air say about each other. */
export const airRules: readonly Rule[] = [
  {
    // Leaving air warmer than the probes can err: the two readings are exchanged, or the machine heats.
    code: 'swapped',
    weight: 'stop',
    about: 'test',
    amounts: (facts) => {
      const { entering, leaving } = facts;
      if (!entering || !leaving || leaving.dryBulb - entering.dryBulb <= tellable(facts)) return null;
      return dryBulbs(entering, leaving);
    },
  },
  {
    // No difference that the probes can tell from none: it does not cool, or both probes stand in one air.
    code: 'noTemperatureDrop',
    weight: 'stop',
    about: 'leaving',
    amounts: (facts) => {
      const { entering, leaving } = facts;
      if (!entering || !leaving || Math.abs(entering.dryBulb - leaving.dryBulb) > tellable(facts)) return null;
      return dryBulbs(entering, leaving);
    },
  },
  {
    // A coil cannot add water; nine chances in ten that the probes say so beyond their limits.
    code: 'leavingWetter',
    weight: 'doubt',
    about: 'leaving',
    amounts: (facts) => {
      const found = water(facts);
      if (!found || found.removed >= -found.unseen) return null;
      return [amount('W₂ − W₁', 'humidityRatio', -found.removed), amount('k·u', 'humidityRatio', found.unseen)];
    },
  },
  {
    // Less water than the probes can tell from none: latent is "none that these probes can see", not a negative number.
    code: 'latentUnseen',
    weight: 'note',
    about: 'leaving',
    amounts: (facts) => {
      const found = water(facts);
      if (!found || Math.abs(found.removed) > found.unseen) return null;
      return [amount('W₁ − W₂', 'humidityRatio', found.removed), amount('k·u', 'humidityRatio', found.unseen)];
    },
  },
  {
    // No water seen and supply air far from saturation: the total then moves with the dry bulb, not with the wet bulb.
    code: 'dryCoil',
    weight: 'note',
    about: 'test',
    amounts: (facts) => {
      const { leaving } = facts;
      if (!leaving || !water(facts) || latentSeen(facts) || leaving.relativeHumidity >= dryBelow) return null;
      return [amount('φ₂', 'fraction', leaving.relativeHumidity)];
    },
  },
  {
    // A dry coil, heat on, air that misses the coil, or the probe.
    code: 'supplyDry',
    weight: 'doubt',
    about: 'leaving',
    amounts: (facts) => {
      const leaving = cooling(facts)?.leaving;
      if (!leaving || leaving.relativeHumidity >= dryBelow) return null;
      return [amount('φ₂', 'fraction', leaving.relativeHumidity), amount('φ', 'fraction', dryBelow)];
    },
  },
  {
    // A wetted sensor reads full humidity whatever the air is.
    code: 'supplyWetProbe',
    weight: 'doubt',
    about: 'leaving',
    amounts: (facts) => {
      const leaving = cooling(facts)?.leaving;
      if (!leaving || leaving.relativeHumidity < wetProbeFrom) return null;
      return [amount('φ₂', 'fraction', leaving.relativeHumidity), amount('φ', 'fraction', wetProbeFrom)];
    },
  },
  {
    // Thaw it and find why. A surface is colder than the air that leaves it. Where no water is seen the line of the process
    // says nothing of the surface: a dry coil's meets saturation far below it.
    code: 'frost',
    weight: 'stop',
    about: 'leaving',
    amounts: (facts) => {
      const air = cooling(facts)?.leaving.dryBulb ?? Infinity;
      const surface = (latentSeen(facts) ? facts.load?.apparatus?.dewPoint : null) ?? Infinity;
      const least = amount('t', 'temperature', frostBelow);
      if (surface < frostBelow) return [amount('tₐ', 'temperature', surface), least];
      return air < frostBelow ? [amount('t₂', 'temperature', air), least] : null;
    },
  },
];
