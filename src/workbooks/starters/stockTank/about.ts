export const ABOUT = {
  id: "stock-tank",
  title: "Stock tank and EC",
  purpose:
    "Says what to weigh into a stock tank for the strength that the crop shall get, which EC the meter should then show at the hose, and what to add to a mixing tank that has drifted from its set EC.",
  steps: [
    "From the bag: the part of nitrogen, and the EC that the label gives at a strength. Labels differ: never take the EC of another product.",
    "From your house: the EC of the clear water, the injector's set ratio and a test of what it really draws, the stock volume.",
    "Read the mixing card on Result, and hang it beside the tank.",
    "Mix, then hold a meter into the feed at the hose and type what it shows. Checks compares it with what it should be.",
    "Keep the log of the mixing tank: each row says whether to dose, to dilute or to leave it.",
    "In the list of products say which tank each goes into: calcium never together with sulphate or phosphate.",
  ],
  cautions: [
    "Hold a meter into the feed before it reaches plants. A slip of ten in the weight burns a crop.",
    "Backflow prevention must be approved locally before anything is injected; label outlets of treated water as not for drinking.",
    "Gloves and eye protection; acid INTO water, never the other way, and never into a tank with chlorine or calcium nitrate concentrate. Follow the label.",
    "No one enters a tank alone. Pumps and wet floors: ground-fault protection.",
    "Pesticides through the tank are a matter of their label and the law: there is no field for them here.",
  ],
};
