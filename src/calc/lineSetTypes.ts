/** What a line set is, and what is worked out for it. SI, plain data. */
import type { Refrigerant } from './refrigerant.ts';
import type { SourceKey } from './sources.ts';
import type { Tube } from './tubes.ts';

/** What the maker says of long lines; `null`: nothing known. It outranks every figure worked out here. */
export interface MakersLineLimits {
  /** What is left of the capacity with this line, a fraction. */
  readonly factor: number | null;
  /** m. */
  readonly maximumLength: number | null;
  /** m, up or down. */
  readonly maximumLift: number | null;
}

/** The two tubes between the units and what flows in them. */
export interface LineRun {
  readonly refrigerant: Refrigerant;
  /** Gross cooling capacity, W: what the refrigerant takes up. */
  readonly capacity: number;
  /** Dew point of the evaporator's pressure, °C. */
  readonly evaporating: number;
  /** Of the vapour that enters the line, K. */
  readonly superheat: number;
  /** Of the liquid that leaves the outdoor unit, °C and K; without the subcooling nothing is said of the liquid line. */
  readonly liquidTemperature: number;
  readonly subcooling: number | null;
  readonly vaporTube: Tube;
  /** The vapour tube that the rating is for. */
  readonly ratedVaporTube: Tube;
  readonly liquidTube: Tube;
  /** Of each tube as it lies, and in the rating, m. */
  readonly length: number;
  readonly ratedLength: number;
  /** Straight vapour tube that drops as much as its fittings do, m. Those of the liquid tube count by its diameter. */
  readonly fittings: number;
  /** How far the evaporator stands above the outdoor unit, m; below it: negative. */
  readonly lift: number;
}

export interface LineSetInput {
  /** A packaged unit has no lines on site. */
  readonly equipment: 'split' | 'packaged';
  /** Where the pressure falls: with the metering device outdoors the "liquid" line holds boiling refrigerant. */
  readonly metering: 'indoors' | 'outdoors';
  readonly maker: MakersLineLimits;
  /** `null` where only the maker's word is known. */
  readonly run: LineRun | null;
}

/** What the line leaves of the capacity, with the lowest and the highest that it may be. */
export interface LineFactor {
  readonly factor: number;
  readonly low: number;
  readonly high: number;
  readonly basis: 'maker' | 'density';
  readonly source: SourceKey;
}

/** One vapour line: what it takes of the pressure, and what comes of it at the compressor. */
export interface VaporLine {
  /** Pa: friction, less what the weight of the vapour gives on its way down; and the whole, with the vapour growing thinner. */
  readonly friction: number;
  readonly drop: number;
  /** The same as a fall of the dew point, K. */
  readonly dewDrop: number;
  /** Where the vapour enters, m/s. */
  readonly velocity: number;
  readonly reynolds: number;
  readonly frictionFactor: number;
  /** At the compressor, Pa and kg/m³. */
  readonly pressure: number;
  readonly density: number;
}

export interface LiquidLine {
  /** Pa: friction, and the weight of the column that is lifted (negative where it falls). */
  readonly friction: number;
  readonly static: number;
  readonly velocity: number;
  /** Before the metering device, Pa. */
  readonly pressure: number;
  /** K; below zero the liquid boils on its way. */
  readonly subcoolingLeft: number;
  readonly flashes: boolean;
}

/** Whether the vapour carries its oil along: `slow` for any line, `slowInRiser` where it has to climb, `fast`: noise and loss. */
export type OilReturn = 'carried' | 'slow' | 'slowInRiser' | 'fast';

export type LineCaution =
  | 'beyondMakersLength'
  | 'beyondMakersLift'
  | 'otherVaporTube'
  | 'liquidFlashes'
  | 'littleSubcooling'
  | 'viscosityEstimated'
  | Exclude<OilReturn, 'carried'>;

export interface LineSet {
  readonly applies: boolean;
  readonly reason: 'packaged' | 'meteringOutdoors' | null;
  /** kg/s. */
  readonly massFlow: number | null;
  /** `null` where nothing is known, where nothing may be worked out, and beyond the maker's limits. */
  readonly factor: LineFactor | null;
  readonly vapor: VaporLine | null;
  /** The line that the rating is for. */
  readonly rated: VaporLine | null;
  readonly liquid: LiquidLine | null;
  readonly oilReturn: OilReturn | null;
  readonly cautions: readonly LineCaution[];
}
