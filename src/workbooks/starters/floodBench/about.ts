export const ABOUT = {
  id: "flood-bench",
  title: "Flood bench and tank",
  purpose:
    "Plans a round over flood benches that share one tank: what each bench takes, when it fills and drains, how low the tank falls, how large it must be and what to top up.",
  steps: [
    "Measure: the flow at the inlet of a bench (a bucket and a watch), the benches inside their rims, the depth of the flood, a pot at its base.",
    "Weigh ten pots before a flood and after they have dripped out: the mean gain is what a pot takes up.",
    "Fill in the sheets Inputs and Benches. A row without a name is no bench; the order in which they are flooded is yours.",
    "Read the round on Result and hang it beside the pump; Tank says how large the tank must be and what to top up.",
    "Compare after_fill (the next bench starts when one is full) with after_drain (when it is empty): time against tank.",
    "Look at Checks, then stand beside one round with a watch and a stick in the tank.",
  ],
  cautions: [
    "Recirculated water carries disease from one bench to all: treat it, and flood sick crops last or not at all.",
    "Water is heavy. Before flooding deeper, or a bench or floor that was made for less, ask the bench maker what it carries.",
    "Long floods drown roots. Where a bench fills slowly mend the flow; do not lengthen the soak.",
    "Salts gather at the top of pots that are watered from below: a watering from above washes them down to the roots. Test the substrate's EC.",
    "A pump that runs dry breaks, and the benches behind it stay dry. Float switch, ground-fault protection; no one enters a tank alone.",
  ],
};
