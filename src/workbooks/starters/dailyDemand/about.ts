export const ABOUT = {
  id: "daily-demand",
  title: "Daily demand",
  purpose:
    "Keeps the books of a pot's water from day to day: what the plant used by the weather, what rain and irrigation put back, what the pot lacks, and when it is time to irrigate. A weighed pot is the referee.",
  steps: [
    "On Inputs, describe the pot, its spacing, the emitters and the crop coefficient through the year.",
    "On Weather, type each day: highest and lowest temperature, rain, water given to a pot. In the browser sheet a table of a weather station can be opened into it.",
    "A station that gives its own reference ET (grass): type that beside, and choose the source on Inputs.",
    "Read on Result what the pot lacks and the minutes that put it back. The sheet Days shows how each day was worked.",
    "Every week or two weigh a pot: drained after watering, and a day later before the next. Type both on Weighed.",
    "Set the deficit at the start anew for a new month: from a weighed pot, or 0 after a thorough watering.",
  ],
  cautions: [
    "A balance drifts, and a day filled from its neighbours is a guess. Walk the block on hot days whatever the sheet says.",
    "A demand that is too low dries plants out. Lift or weigh a few pots before you put off a watering, also after rain: a canopy keeps pots dry.",
    "All numbers are for one pot. Rain falls on the pot's opening, the plant drinks for its whole spacing: depths must not be mixed.",
    "After pruning or potting on the crop coefficient is another: it can fall by 40 %. Weigh again.",
  ],
};
