/** The parts of psychrolib, the ideal-gas reference library, that the bench and the comparison use. */
declare module 'psychrolib' {
  interface Psychrolib {
    readonly SI: number;
    SetUnitSystem(system: number): void;
    /** [humidity ratio, wet bulb, dew point, vapour pressure, enthalpy, specific volume, degree of saturation] */
    CalcPsychrometricsFromRelHum(dryBulb: number, relativeHumidity: number, pressure: number): number[];
    GetTWetBulbFromHumRatio(dryBulb: number, humidityRatio: number, pressure: number): number;
    GetTWetBulbFromRelHum(dryBulb: number, relativeHumidity: number, pressure: number): number;
    GetHumRatioFromRelHum(dryBulb: number, relativeHumidity: number, pressure: number): number;
    GetHumRatioFromTWetBulb(dryBulb: number, wetBulb: number, pressure: number): number;
    GetTDewPointFromHumRatio(dryBulb: number, humidityRatio: number, pressure: number): number;
    GetMoistAirEnthalpy(dryBulb: number, humidityRatio: number): number;
    GetMoistAirVolume(dryBulb: number, humidityRatio: number, pressure: number): number;
    GetSatVapPres(temperature: number): number;
    GetStandardAtmPressure(altitude: number): number;
  }
  const psychrolib: Psychrolib;
  export default psychrolib;
}
