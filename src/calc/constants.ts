/** The figures of ASHRAE Fundamentals (2021, SI), chapter 1, in J, kg, Pa and K. */

/** 0 °C, K. */
export const iceKelvin = 273.15;
/** Molar mass of water over that of dry air, Eq. 20. */
export const massRatio = 0.621945;
/** Gas constant of dry air, J/(kg·K), Eq. 1. */
export const gasConstantDryAir = 287.042;
/** Molar mass of dry air over that of water, Eq. 26. */
export const volumeRatio = 1.607858;

/** Specific heat of dry air, J/(kg·K), Eq. 28. */
export const heatDryAir = 1006;
/** Specific heat of water vapour, J/(kg·K), Eq. 29. */
export const heatVapor = 1860;
/** Enthalpy of water vapour at 0 °C, J/kg, Eq. 29. */
export const vaporEnthalpy = 2501e3;
/** Specific heat of liquid water, J/(kg·K), Eq. 33. */
export const heatWater = 4186;
/** Enthalpy of sublimation at 0 °C, J/kg, Eq. 35. */
export const sublimationEnthalpy = 2830e3;
/** Specific heat of ice, J/(kg·K), Eq. 35. */
export const heatIce = 2100;

/** Sea level, Pa, Eq. 3. */
export const standardPressureAtSeaLevel = 101325;
/** Standard air, kg/m³: 0.075 lb/ft³ to the digits in use. */
export const standardAirDensity = 1.2014;
