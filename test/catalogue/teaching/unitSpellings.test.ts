/** What growers, dealers and meters write for a unit, beside the way in which the help writes it: common practice, no source. */
import { answerOf, refusalOf } from "../../rig/calls";

const WRITTEN: readonly [unit: string, alsoWritten: readonly string[]][] = [
  ["in", ["inch", "inches", '"']],
  ["cm", ["centimeter", "centimeters", "centimetre", "centimetres"]],
  ["mm", ["millimeter", "millimeters", "millimetre", "millimetres"]],
  ["ft", ["foot", "feet", "'"]],
  ["m", ["meter", "meters", "metre", "metres"]],
  ["yd", ["yard", "yards"]],
  ["mile", ["miles", "mi"]],
  ["km", ["kilometer", "kilometers", "kilometre", "kilometres"]],
  ["gal/ft2", ["gal/sq ft", "gallons/ft2", "gallons/sq ft"]],
  ["L/m2", ["liters/m2", "litres/m2", "L/sq m"]],
  ["m3/ha", ["m3/hectare"]],
  ["ft2", ["sq ft", "square foot", "square feet"]],
  ["m2", ["sq m", "square meter", "square meters", "square metre", "square metres"]],
  ["acre", ["acres", "ac"]],
  ["hectare", ["hectares", "ha"]],
  ["in2", ["sq in", "square inch", "square inches"]],
  ["cm2", ["sq cm", "square centimeter", "square centimetre"]],
  ["yd2", ["sq yd", "square yard", "square yards"]],
  ["gal", ["gals", "gallon", "gallons", "US gal", "US gallon", "US gallons"]],
  ["L", ["liter", "liters", "litre", "litres", "ltr"]],
  ["mL", ["milliliter", "milliliters", "millilitre", "millilitres", "cm3", "cc"]],
  ["m3", ["cubic meter", "cubic meters", "cubic metre", "cubic metres"]],
  ["1000 gal", ["1000 gals", "1000 gallons", "1000 US gal", "kgal", "kgals", "thousand gal", "thousand gallons"]],
  ["CCF", ["HCF", "100 ft3", "100 cubic feet", "hundred cubic feet", "100 cu ft"]],
  ["acre-inch", ["acre-inches", "acre-in", "ac-in"]],
  ["acre-foot", ["acre-feet", "acre-ft", "ac-ft"]],
  [
    "imperial gallon",
    ["imperial gallons", "imperial gal", "imp gal", "imp gallon", "imp gallons", "UK gal", "UK gallon", "UK gallons"],
  ],
  ["fl oz", ["US fl oz", "fluid ounce", "fluid ounces", "US fluid ounce", "US fluid ounces"]],
  ["pt", ["pint", "pints", "US pint", "US pints"]],
  ["qt", ["quart", "quarts", "qts", "US quart", "US quarts"]],
  ["in3", ["cu in", "cubic inch", "cubic inches"]],
  ["ft3", ["cu ft", "cubic foot", "cubic feet"]],
  ["yd3", ["cu yd", "cubic yard", "cubic yards"]],
  ["gal/h", ["gph", "gal/hr", "gal/hour", "gallons/h", "gallons/hr", "gallons/hour"]],
  ["L/h", ["lph", "L/hr", "L/hour", "liters/hour", "litres/hour", "liters/h", "litres/h"]],
  ["gal/min", ["gpm", "gal/minute", "gallons/min", "gallons/minute"]],
  ["L/min", ["lpm", "L/minute", "liters/minute", "litres/minute"]],
  ["gal/day", ["gpd", "gal/d", "gallons/day"]],
  ["L/s", ["lps", "L/sec", "L/second", "liters/second", "litres/second"]],
  ["mL/s", ["mL/sec", "mL/second"]],
  ["mL/min", ["mL/minute"]],
  ["fl oz/min", ["fl oz/minute"]],
  ["imperial gallon/min", ["imp gal/min", "imperial gal/min", "UK gal/min"]],
  ["m3/h", ["m3/hr", "m3/hour", "cubic meters/hour", "cubic metres/hour"]],
  ["m3/day", ["m3/d"]],
  ["ft3/s", ["cfs", "ft3/sec", "cusec", "cubic feet/second"]],
  ["acre-inch/h", ["acre-inch/hr", "acre-in/h", "ac-in/h", "acre-inch/hour"]],
  ["in/h", ["in/hr", "in/hour", "inches/h", "inches/hr", "inches/hour", "iph"]],
  ["mm/h", ["mm/hr", "mm/hour"]],
  ["cm/h", ["cm/hr", "cm/hour"]],
  ["in/day", ["in/d", "inches/day"]],
  ["mm/day", ["mm/d"]],
  ["in/week", ["inches/week", "in/wk"]],
  ["mm/week", ["mm/wk"]],
  ["gal/min/acre", ["gpm/acre", "gpm/ac", "gal/min/ac"]],
  ["L/s/ha", ["L/s/hectare"]],
  ["m3/ha/day", ["m3/ha/d", "m3/hectare/day"]],
  ["psi", ["lb/in2", "lbf/in2", "pounds/square inch", "psig"]],
  ["kPa", ["kilopascal", "kilopascals"]],
  ["bar", ["bars"]],
  ["cbar", ["centibar", "centibars", "cb"]],
  ["hp", ["horsepower"]],
  ["kW", ["kilowatt", "kilowatts"]],
  ["W", ["watt", "watts"]],
  ["kWh", ["kW h", "kilowatt hour", "kilowatt hours"]],
  ["hp h", ["hph", "hp hour", "hp hours", "horsepower hour", "horsepower hours"]],
  ["MJ", ["megajoule", "megajoules"]],
  ["lb", ["lbs", "pound", "pounds"]],
  ["kg", ["kgs", "kilo", "kilos", "kilogram", "kilograms"]],
  ["g", ["gram", "grams", "gm"]],
  ["mg", ["milligram", "milligrams"]],
  ["oz", ["ounce", "ounces", "oz avdp"]],
  ["short ton", ["short tons", "US ton", "US tons"]],
  ["tonne", ["tonnes", "metric ton", "metric tons"]],
  ["mph", ["mile/h", "miles/h", "mi/h", "miles/hour", "mile/hour"]],
  ["m/s", ["m/sec", "m/second", "meters/second", "metres/second"]],
  ["ft/min", ["fpm", "ft/minute", "feet/min", "feet/minute"]],
  ["m/min", ["m/minute", "meters/minute", "metres/minute"]],
  ["ft/s", ["fps", "ft/sec", "ft/second", "feet/second", "feet/s"]],
  ["km/h", ["kph", "kmh", "km/hr", "km/hour"]],
  ["km/day", ["km/d"]],
  ["knot", ["knots", "kn", "kt"]],
  ["F", ["deg F", "degree F", "degrees F", "fahrenheit"]],
  ["C", ["deg C", "degree C", "degrees C", "celsius", "centigrade"]],
  ["meq/L", ["me/L", "meq/liter", "meq/litre"]],
  ["ppm CaCO3", ["mg/L CaCO3", "ppm as CaCO3", "mg/L as CaCO3", "CaCO3"]],
  ["ppm HCO3", ["mg/L HCO3", "ppm as HCO3", "mg/L as HCO3", "ppm bicarbonate", "mg/L bicarbonate", "HCO3"]],
  ["ppm", ["parts/million"]],
  ["mg/L", ["mg/liter", "mg/litre"]],
  ["g/L", ["g/liter", "g/litre", "kg/m3"]],
  ["lb/gal", ["lbs/gal", "pounds/gallon", "lb/gallon"]],
  ["lb/1000 gal", ["lbs/1000 gal", "lb/kgal", "lb/1000 gallons"]],
  ["oz/100 gal", ["oz/100 gallons", "ounces/100 gal", "ounces/100 gallons"]],
  ["MJ/m2/day", ["MJ/m2/d", "MJ/m2day"]],
  ["W/m2", ["watt/m2", "watts/m2"]],
  ["J/cm2/day", ["J/cm2/d"]],
  ["cal/cm2/day", ["cal/cm2/d", "langley/day", "langleys/day", "ly/day"]],
  ["s", ["sec", "secs", "second", "seconds"]],
  ["min", ["mins", "minute", "minutes"]],
  ["h", ["hr", "hrs", "hour", "hours"]],
  ["day", ["d", "days"]],
  ["week", ["weeks", "wk"]],
];

const spellings = WRITTEN.flatMap(([unit, written]) => written.map((spelling) => ({ unit, spelling })));

test.each(spellings)(
  "1 $spelling is 1 $unit, in any case of letters and with blanks around it",
  ({ unit, spelling }) => {
    const isTemperature = unit === "F" || unit === "C";
    const value = isTemperature ? 20 : 1;
    expect(answerOf("CONVERT_UNIT", { value, from: spelling, to: unit })).toBeCloseTo(value, 12);
    expect(answerOf("CONVERT_UNIT", { value, from: ` ${spelling} `, to: unit })).toBeCloseTo(value, 12);
  },
);

const ELSEWHERE: readonly [name: string, words: readonly string[]][] = [
  ["CONVERT_EC", ["mS/cm", "dS/m", "uS/cm", "mmho/cm", "umho/cm", "EC", "TDS", "tds_ppm"]],
  [
    "TOTAL_DYNAMIC_HEAD",
    [
      "ft head",
      "feet of head",
      "ft of head",
      "ft of water",
      "feet of water",
      "ft H2O",
      "m head",
      "m of head",
      "m of water",
      "m H2O",
      "head",
    ],
  ],
  ["ELEMENT_FROM_OXIDE", ["P2O5", "K2O"]],
];

test.each(ELSEWHERE.flatMap(([name, words]) => words.map((word) => ({ name, word }))))(
  "$word is sent on to $name",
  ({ name, word }) => {
    expect(refusalOf("CONVERT_UNIT", { value: 1, from: word, to: "L" }).message).toContain(name);
  },
);

test.each([" ton ", "TONS"])("%j is not guessed at", (word) => {
  expect(refusalOf("CONVERT_UNIT", { value: 1, from: word, to: "kg" }).message).toContain(
    "it may be short or metric: write short ton or tonne",
  );
});
