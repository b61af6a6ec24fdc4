import type { StarterBuilder } from "../../kit";
import type { FeedInputs } from "./inputs";
import type { Readings } from "./log";
import type { FeedWork } from "./work";

export function addChecks(kit: StarterBuilder, given: FeedInputs, worked: FeedWork, readings: Readings): void {
  const { products } = given;
  const together = (tank: string): string =>
    `AND(COUNTIFS(${products["tank"]!}, "${tank}", ${products["calcium"]!}, "yes") > 0, COUNTIFS(${products["tank"]!}, "${tank}", ${products["clouds"]!}, "yes") > 0)`;
  kit.check(
    "The weight is the same by both ways",
    `ABS(${worked.weight} - ${worked.secondWeight}) <= 0.000000001 * ${worked.weight}`,
    "A formula on Work was changed.",
  );
  kit.check(
    "The cost is the same by both ways",
    `ABS(${worked.cost} - ${worked.secondCost}) <= 0.000000001 * ${worked.cost}`,
    "A formula on Work was changed.",
  );
  kit.check(
    "The stock dissolves",
    `${worked.concentration} <= ${given.most}`,
    "More than dissolves: make a weaker stock and set the injector to match, or split it over two tanks.",
  );
  kit.check(
    "The injector draws within 5 % of its setting",
    `ABS(${worked.measuredRatio} / ${given.ratio} - 1) <= 0.05`,
    "Clean or mend it, set it again, or weigh for the measured ratio (on Work).",
  );
  kit.check(
    "The hose shows what it should, within 10 %",
    `ABS(${given.hoseEc} / ${worked.measuredEc} - 1) <= 0.1`,
    "Look at the meter's unit and calibration, the label, the weight, and whether the stock was stirred.",
  );
  kit.check(
    "The feed is stronger than the water",
    `${given.hoseEc} > ${given.waterEc}`,
    "Readings swapped, the injector draws nothing, or one of them is in uS/cm.",
  );
  kit.check(
    "The feed is below 3 mS/cm",
    `MAX(${worked.expectedEc}, ${given.hoseEc}, ec_set) < 3`,
    "Stronger than most crops stand (common practice). Look for a slip of ten.",
  );
  kit.check(
    "The tank is set to the EC of this feed",
    `ABS(ec_set - ${worked.expectedEc}) <= 0.1`,
    "The set EC on Inputs belongs to another strength, product or water.",
  );
  kit.check(
    "Every date of the log has a reading",
    `COUNT(${readings["date"]!}) = COUNT(${readings["ec"]!})`,
    "A reading or a date is missing.",
  );
  kit.check(
    "Every reading of the log is an EC in mS/cm",
    `AND(MIN(${readings["ec"]!}) >= ${given.waterEc}, MAX(${readings["ec"]!}) < 20)`,
    "Below the clear water, or typed in uS/cm: 1,325 uS/cm is 1.325 mS/cm.",
  );
  kit.check(
    "No calcium with sulphate or phosphate in stock tank A",
    `NOT(${together("A")})`,
    "They cloud and clog every emitter: one of them goes into tank B.",
  );
  kit.check(
    "No calcium with sulphate or phosphate in stock tank B",
    `NOT(${together("B")})`,
    "They cloud and clog every emitter: one of them goes into tank A.",
  );
}
