export const ABOUT = {
  id: "zone-planner",
  title: "Zone planner",
  purpose:
    "Plans the minutes of every irrigation zone for the hottest days of the season, and the order in which the zones run, so that the supply is never asked for more than it gives.",
  steps: [
    "Measure first: the flow of the supply at the pressure that the zones need, the flow of the emitters (a bottle and a watch), their uniformity.",
    "Fill in the sheet Inputs. Each system has its own block; rows left blank are no zones. To add more, copy a row within the block, there and on Work.",
    "Read the minutes on Work and the day on Result. Give the day in cycles, so that a zone rests while the others run.",
    "Look at Checks, and mend what says LOOK before the season does.",
    "On Work, choose one zone and follow its numbers from the plant to the minutes.",
  ],
  cautions: [
    "One emitter for a pot has no neighbour: walk the lines on the first hot days. A plugged stake is a dry plant by evening.",
    "Before you put off a watering, lift a pot or weigh one. A leaching test tells whether the minutes were right.",
    "Pumps and valves: water and electricity; ground-fault protection and a licensed electrician. Backflow prevention must be approved locally.",
  ],
};
