export const ABOUT = {
  id: "uniformity-audit",
  title: "Uniformity audit",
  purpose:
    "Works out a catch-can test and a walk along the emitters: how even the water is, how fast it comes, which cans stay dry, and what mending the system would spare.",
  steps: [
    "Three times a year: late spring, midsummer, late summer; at the pressure of a usual irrigation, on a calm morning.",
    "Set 24 equal cans on a square grid over the whole block, mouths level and above the leaves. Run, and read each at once.",
    "Fill in the sheets Inputs and Cans. No can is left out in silence: say on Inputs what a blank or 0 is.",
    "Emitters: catch each for the same seconds, at the head, in the middle and at the tail. Rows that you do not test: delete them.",
    "Or take the seconds to fill a bottle, on Bottle. Average the flows, never the times.",
    "Read Result, look at Checks, then go to the cans that are marked dry, with a wrench.",
  ],
  cautions: [
    "A DU below 0.60 cannot be scheduled away: a longer run floods the wet pots before the driest quarter is served. Mend the system.",
    "One emitter to a pot has no neighbour: a plugged one dries the pot within hours. Walk the lines on the first hot days.",
    "Divide by the uniformity once. Twice drowns roots; never dries the driest quarter.",
    "A test holds for its day, its wind and its pressure.",
  ],
};
