export const ABOUT = {
  id: "leaching-log",
  title: "Leaching-fraction log",
  purpose:
    "Keeps the log of leaching tests, pot by pot, pools them by zone and turns each zone's latest test into new minutes, so that pots are neither flushed nor left to salt up.",
  steps: [
    "Choose ten pots or more all over the zone, away from its edge. Set a saucer or a tub under each, and catch what a second emitter gives in a pail.",
    "Run the zone for its usual minutes. Wait until dripping has stopped, then measure both, in mL.",
    "Type each pot on a row of Log: one test is one date and one zone, its rows below one another. A dry saucer is 0; a pot that was not measured has no row.",
    "Read the new minutes on Result, change the clock, and test again within one or two weeks, after pruning or a change of weather at once.",
    "Look at Checks: a pail that disagrees with the emitters makes a test worthless.",
  ],
  cautions: [
    "Pot light and leaching high? Do not cut the time. Dry peat or bark takes no water up: it runs through at once and the plant is dry. Rewet in short pulses, then test again.",
    "Little or no leaching for weeks gathers salts. Watch the EC of what runs out, and flush before leaves burn.",
    "One pot says nothing: pool ten or more. Pots that differ much from one another ask for a look at the emitters, not at the clock.",
    "What runs out carries feed: keep it off drains and ditches; local rules may ask for more.",
  ],
};
