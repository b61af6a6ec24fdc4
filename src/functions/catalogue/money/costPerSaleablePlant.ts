import { cite, defineFunction } from "../../../kernel";

export const costPerSaleablePlant = defineFunction({
  name: "COST_PER_SALEABLE_PLANT",
  group: "Money",
  summary: "What each plant that can be sold has cost, those that were lost included",
  formula: "c = T / (n (1 - s))",
  source: cite("DEFINITION", "cost of the crop over the plants that are left to sell"),
  assumptions: [
    "The cost is that of the whole crop, with the plants that died or were graded out: the good ones bear it.",
    "The loss is a part of the plants started. A loss counted on sales is another, larger number.",
  ],
  params: {
    total_cost: { quantity: "currency", symbol: "T", above: 0, about: "Cost of the whole crop, counted as positive" },
    plants_started: { quantity: "count", symbol: "n", atLeast: 1, whole: true, about: "Plants that were started" },
    loss_fraction: {
      quantity: "fraction",
      symbol: "s",
      atLeast: 0,
      below: 1,
      about: "Part of the plants started that cannot be sold; 0 is a value, so leave no blank",
      usual: {
        us: [0.01, 0.3],
        metric: [0.01, 0.3],
        low: "hardly any nursery loses so few: were graded-out plants counted?",
        high: "more than most crops can bear: check the count",
        source: cite("PRACTICE", "5 to 15 % in nurseries"),
      },
    },
  },
  result: { quantity: "currency", symbol: "c", about: "Cost of a plant that can be sold" },
  examples: [
    {
      given: { total_cost: 69600, plants_started: 12000, loss_fraction: 0.05 },
      gives: 6.105,
      within: 0.0005,
      from: cite("ARITHMETIC", "5.80 a plant started; 69,600 over 11,400 plants = 6.10526"),
    },
    {
      given: { total_cost: 58000, plants_started: 10000, loss_fraction: 0.3 },
      gives: 8.2857,
      within: 0.0001,
      from: cite("ARITHMETIC", "58,000 over 7,000 plants"),
    },
  ],
  mistakes: [
    {
      slip: "The cost was multiplied by 1 + loss, not divided by 1 - loss",
      answer: ({ loss_fraction }, _constants, right) => right * (1 - loss_fraction) * (1 + loss_fraction),
    },
    { slip: "The losses were left out", instead: () => ({ loss_fraction: 0 }) },
    {
      slip: "The cost was multiplied by 1 - loss",
      answer: ({ loss_fraction }, _constants, right) => right * (1 - loss_fraction) ** 2,
    },
    {
      slip: "The part that is sold was taken for the loss",
      instead: ({ loss_fraction }) => ({ loss_fraction: 1 - loss_fraction }),
    },
  ],
  seeAlso: ["WATER_COST", "FERTILIZER_COST", "ANNUALIZED_COST"],
  compute({ total_cost, plants_started, loss_fraction }, show) {
    const sold = show(
      "m = n * (1 - s)",
      plants_started * (1 - loss_fraction),
      "count",
      "Plants left to sell, on average",
    );
    return show("c = T / m", total_cost / sold, "currency", "Cost of each of them");
  },
});
