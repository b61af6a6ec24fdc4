declare module "psychrolib" {
  const psychrolib: {
    readonly SI: number;
    SetUnitSystem(system: number): void;
    GetTRankineFromTFahrenheit(fahrenheit: number): number;
    GetTFahrenheitFromTRankine(rankine: number): number;
    GetTKelvinFromTCelsius(celsius: number): number;
    GetTCelsiusFromTKelvin(kelvin: number): number;
    /** Saturation vapour pressure in Pa, of a temperature in C. */
    GetSatVapPres(celsius: number): number;
    /** Vapour pressure in Pa, of a temperature in C and a relative humidity from 0 to 1. */
    GetVapPresFromRelHum(celsius: number, relativeHumidity: number): number;
    /** Water over dry air by weight, at a pressure in Pa. */
    GetHumRatioFromRelHum(celsius: number, relativeHumidity: number, pressure: number): number;
    /** Vapour pressure deficit in Pa. */
    GetVaporPressureDeficit(celsius: number, humidityRatio: number, pressure: number): number;
  };
  export default psychrolib;
}
