/** Units in SI, by their exact legal or conventional values; whatever can be derived is derived. */
export const inch = 0.0254;
export const foot = 12 * inch;
export const pound = 0.45359237;
export const grain = pound / 7000;
export const standardGravity = 9.80665;
export const minute = 60;
export const hour = 3600;

/** A difference of one degree Fahrenheit, K. */
export const fahrenheitDegree = 5 / 9;
/** One Btu per pound, J/kg: the definition of the international-table Btu. */
export const btuPerPound = 2326;
export const btu = btuPerPound * pound;
export const btuPerHour = btu / hour;
export const btuPerPoundFahrenheit = btuPerPound / fahrenheitDegree;
export const tonOfRefrigeration = 12000 * btuPerHour;

export const cubicFootPerMinute = foot ** 3 / minute;
export const footPerMinute = foot / minute;
export const cubicFootPerPound = foot ** 3 / pound;
export const poundPerCubicFoot = pound / foot ** 3;
export const poundPerHour = pound / hour;

export const poundPerSquareInch = (pound * standardGravity) / inch ** 2;
/** Conventional inch of water: 1000 kg/m³ under standard gravity. */
export const inchOfWater = 1000 * standardGravity * inch;
/** Conventional inch of mercury: 13 595.1 kg/m³ under standard gravity. */
export const inchOfMercury = 13595.1 * standardGravity * inch;

export function fromFahrenheit(degrees: number): number {
  return (degrees - 32) * fahrenheitDegree;
}

export function toFahrenheit(celsius: number): number {
  return celsius / fahrenheitDegree + 32;
}
