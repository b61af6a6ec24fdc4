export const ABOUT = {
  id: "system-comparison",
  title: "System comparison and payback",
  purpose:
    "Compares what six ways of watering one yard cost a year, line by line, and whether a change pays: as planned, and where things go otherwise.",
  steps: [
    "On Inputs put the crop, the water tariff as the bill states it, the season's bills and the prices. Wages are loaded: with taxes and insurance.",
    "On Systems put what each way of watering takes. The water of a plant comes from the grower (zone planner); the investment from written quotes.",
    "On Inputs choose up to three systems to print beside the baseline, and one to look at year by year.",
    "Read Result from the top: whether the system suits the pots, then costs, then payback, then the other cases. Decide on the worst case that you can live with.",
    "Look at Checks before anyone signs. Costs are positive; a saving is positive and an extra cost is a saving below 0.",
  ],
  cautions: [
    "A payback rests on what was typed. Fewer lost plants, hours saved and the price of water are the numbers most often wished for: read the other cases.",
    "Capillary mats, ebb-and-flow benches and booms are for smaller pots under a roof; the price of a house is not in the figures. Their columns show what they would cost here.",
    "Hours saved are money only if they are no longer paid or are used elsewhere. The hours for checking stakes and cleaning filters are new: they belong in.",
    "Water and feed that leave the pots may count as a discharge: local rules and permits come first.",
    "Before tax, at today's prices. Count a grant when it is granted in writing, a saved sewer charge only where this meter pays one.",
  ],
};
