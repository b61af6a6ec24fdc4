/** Everything that the catalogue cites, once. A citation names a key of this table and the place in the source. */
interface Source {
  readonly text: string;
  /** How far the source can be trusted: read, recalled from memory, a definition, or the trade's habit. */
  readonly standing: "published" | "recalled" | "definition" | "common practice";
}

export const sources = {
  FAO56: {
    text: "Allen, R.G., Pereira, L.S., Raes, D. & Smith, M. (1998), Crop evapotranspiration, FAO Irrigation and Drainage Paper 56",
    standing: "published",
  },
  FAO56_RECALLED: {
    text: "Allen, R.G., Pereira, L.S., Raes, D. & Smith, M. (1998), Crop evapotranspiration, FAO Irrigation and Drainage Paper 56",
    standing: "recalled",
  },
  FERNANDEZ2010: {
    text: "Fernandez, M.D., Bonachela, S., Orgaz, F. et al. (2010), Irrigation Science 28:497-509, reference evapotranspiration in plastic houses from radiation",
    standing: "recalled",
  },
  UMASS_WATER: {
    text: "UMass Extension, fact sheet on sizing the greenhouse water system",
    standing: "published",
  },
  CAPTURE_2015: {
    text: "Million, J.B. & Yeager, T.H. (2015), capture of sprinkler irrigation by container-grown plants (abstract)",
    standing: "published",
  },
  ENH1268: {
    text: "Million, J.B. & Yeager, T.H., Monitoring leaching fraction for irrigation scheduling in container nurseries, UF/IFAS Extension ENH1268",
    standing: "published",
  },
  EP458: {
    text: "Million, J.B. & Yeager, T.H., Measuring the sprinkler irrigation requirement of container-grown nursery plants, UF/IFAS Extension EP458",
    standing: "published",
  },
  SCHUCH_BURGER: {
    text: "Schuch, U.K. & Burger, D.W. (1997), Water use and crop coefficients of woody ornamentals in containers, Journal of the American Society for Horticultural Science 122(5):727-734 (abstract)",
    standing: "published",
  },
  SNA_BMP: {
    text: "Yeager, T. et al., Best management practices: guide for producing nursery crops, Southern Nursery Association",
    standing: "recalled",
  },
  AE194: {
    text: "UF/IFAS Extension AE194, uniformity of sprinkler irrigation systems",
    standing: "published",
  },
  LSU_CYCLIC: {
    text: "LSU AgCenter (1999), Cyclic irrigation improves nursery crop efficiency",
    standing: "published",
  },
  BOOM_2013: {
    text: "Bartok (2013), Boom irrigation system, in the greenhouse trade press, November 2013",
    standing: "published",
  },
  RUN_TIME_CHART: {
    text: "Public chart of irrigation run times for lawns in Texas, inches of water against rate",
    standing: "published",
  },
  NOTE_7IN: {
    text: "Public note on nursery containers: 7 in by 7 in holds 4.4 L or 1.17 US gallons",
    standing: "published",
  },
  CLEMSON: { text: "Clemson Extension, nursery irrigation notes", standing: "published" },
  ARITHMETIC: { text: "Plain arithmetic, worked out beside the number", standing: "definition" },
  DRAW: {
    text: "Fowler, G., Noll, L.C. & Vo, K.-P., the FNV-1a hash; Appleby, A., the finishing mixer of MurmurHash3 (both in the public domain)",
    standing: "recalled",
  },
  DEFINITION: { text: "Definition", standing: "definition" },
  GEOMETRY: { text: "Geometry of a solid or plane figure", standing: "definition" },
  PRACTICE: { text: "Common practice, no source", standing: "common practice" },
  DCF: { text: "Time value of money, savings at year ends: standard engineering economics", standing: "definition" },
  MERRIAM_KELLER: {
    text: "Merriam, J.L. & Keller, J. (1978), Farm irrigation system evaluation: a guide for management",
    standing: "recalled",
  },
  UMASS_FEED: {
    text: "UMass Extension, fact sheet Fertilizer Calculations for Greenhouse Crops",
    standing: "published",
  },
  BAG_CHART: {
    text: "Bag chart of a water-soluble fertilizer with 15 % N, reproduced in a trade newsletter",
    standing: "published",
  },
  MSU_LABEL: {
    text: "Michigan State University Extension, Ensuring proper fertilizer concentration in greenhouse growing, Table 1 (label of a fertilizer with 20 % N)",
    standing: "published",
  },
  INJECTOR_TRANSCRIPT: {
    text: "Published transcript of an extension video on calibrating a greenhouse fertilizer injector",
    standing: "published",
  },
  UMASS_ACID: {
    text: "UMass Extension, fact sheet Adjusting Alkalinity with Acids, Table 1 (read in a reproduction)",
    standing: "published",
  },
  ACID_CHOICES: {
    text: "Training sheet of the greenhouse trade on acids that reduce the alkalinity of water, Table 1",
    standing: "published",
  },
  NCSU_ALKALINITY: {
    text: "Bailey, D.A., Alkalinity control for irrigation water used in greenhouses, North Carolina State University",
    standing: "published",
  },
  NCSU_558: {
    text: "Bailey, D.A. & Bilderback, T.E. (1998), Alkalinity control for irrigation water used in nurseries and greenhouses, North Carolina State University, Horticulture Information Leaflet 558",
    standing: "recalled",
  },
  REAGENTS: {
    text: "Table of concentrated reagents (density, strength by weight, molarity, normality), printed in laboratory handbooks",
    standing: "published",
  },
  IUPAC: {
    text: "International Union of Pure and Applied Chemistry, standard atomic weights, conventional values",
    standing: "published",
  },
  VT_FACTORS: {
    text: "Reiter, M., Conversion factors needed for common fertilizer calculations, Virginia Cooperative Extension SPES-201",
    standing: "published",
  },
  BUCKS1979: {
    text: "Bucks, D.A., Nakayama, F.S. & Gilbert, R.G. (1979), Trickle irrigation water quality and preventive maintenance, Agricultural Water Management 2:149-162 (limits read in reproductions of its table)",
    standing: "published",
  },
  FAO29_RECALLED: {
    text: "Ayers, R.S. & Westcot, D.W. (1985), Water quality for agriculture, FAO Irrigation and Drainage Paper 29 Rev. 1",
    standing: "recalled",
  },
  SALINITY_LAB: {
    text: "US Salinity Laboratory Staff (1954), Diagnosis and improvement of saline and alkali soils, USDA Agriculture Handbook 60",
    standing: "recalled",
  },
  CSUS_GLOSSARY: {
    text: "California State University Sacramento, Office of Water Programs, glossary of water and wastewater terms",
    standing: "published",
  },
  ALI2011: {
    text: "Ali, M.H. (2011), Practices of irrigation and on-farm water management, chapter 8",
    standing: "published",
  },
  UT_GLOSSARY: {
    text: "University of Tennessee, protected agriculture, glossary: electrical conductivity",
    standing: "published",
  },
  CARMASSI: {
    text: "Carmassi, G., Incrocci, L., Malorgio, F., Tognoni, F. & Pardossi, A. (2003), A simple model for salt accumulation in closed-loop hydroponics, Acta Horticulturae 614 (abstract)",
    standing: "published",
  },
  BOYER2012: {
    text: "Boyer, C.R., Torbert, H.A., Gilliam, C.H. et al. (2012), Nitrogen immobilization in plant growth substrates, International Journal of Agronomy 2012:978528",
    standing: "published",
  },
  BILDERBACK_FONTENO: {
    text: "Bilderback, T.E. & Fonteno, W.C. (1987), Effects of container geometry and media physical properties on air and water volumes in containers, Journal of Environmental Horticulture 5(4):180-182 (abstract)",
    standing: "published",
  },
  POROMETER: {
    text: "Fonteno, W.C. et al., Procedures for determining physical properties of horticultural substrates using the NCSU porometer, North Carolina State University",
    standing: "recalled",
  },
  DUMROESE2015: {
    text: "Dumroese, R.K., Montville, M.E. & Pinto, J.R. (2015), Using container weights to determine irrigation needs, Native Plants Journal 16(1):67-71 (abstract)",
    standing: "published",
  },
  SPACING_ARTICLE: {
    text: "Greenhouse trade magazine, series on growers' arithmetic, part 4, spacing containers",
    standing: "published",
  },
  NURSERY_COURSE: {
    text: "University course on container nurseries, unit 4.4.1, rectangular spacing, worked example",
    standing: "published",
  },
  ANSI_Z60: {
    text: "American Standard for Nursery Stock, ANSI Z60.1, container classes",
    standing: "recalled",
  },
  TURF_SEMINAR: {
    text: "Woods, M. (2014), Soil and water management: 3 problems, 3 solutions, handout of a turfgrass seminar",
    standing: "published",
  },
  MANUAL71: {
    text: "American Society of Civil Engineers, Manual 71, Agricultural salinity assessment and management, read in university lecture notes on chapters 12 and 13",
    standing: "published",
  },
  SUBIRRIGATION_2011: {
    text: "Greenhouse trade magazine, June 2011, article on sub-irrigation (excerpt)",
    standing: "published",
  },
  ROOF_RAIN: { text: "Public page of a home-power trade on rain from roofs", standing: "published" },
  SHED_RAIN: { text: "Public page on rain from the roof of a shed of 12 by 22 ft", standing: "published" },
  MASS_BALANCE: { text: "Conservation of mass in a mixture", standing: "definition" },
  STOICHIOMETRY: { text: "Stoichiometry", standing: "definition" },
  CHRISTIANSEN1942: {
    text: "Christiansen, J.E. (1942), Irrigation by sprinkling, California Agricultural Experiment Station Bulletin 670",
    standing: "recalled",
  },
  ZOLDOSKE1988: {
    text: "Zoldoske, D.F. & Solomon, K.H. (1988), Coefficient of uniformity: what it tells us, Irrigation Notes, California State University, Fresno",
    standing: "published",
  },
  BRALTS_KESNER: {
    text: "Bralts, V.F. & Kesner, C.D. (1983), Drip irrigation field uniformity estimation, Transactions of the ASAE 26(5):1369-1374",
    standing: "recalled",
  },
  SOILS456: {
    text: "New Mexico State University, Soils 456, course notes, chapter 5",
    standing: "published",
  },
  OVERTON2014: {
    text: "Overton, R.P. (2014), Measuring irrigation uniformity in bareroot nurseries: a case study, Tree Planters' Notes 57(2) (abstract)",
    standing: "published",
  },
  KELLER_KARMELI: {
    text: "Keller, J. & Karmeli, D. (1974), Trickle irrigation design parameters, Transactions of the ASAE 17(4):678-684",
    standing: "recalled",
  },
  EP405: {
    text: "ASABE EP405, Design and installation of microirrigation systems",
    standing: "recalled",
  },
  NEH623: {
    text: "USDA Natural Resources Conservation Service, National Engineering Handbook, Part 623, chapter 11, Sprinkle irrigation",
    standing: "published",
  },
  SPRINKLER_SLIDES: { text: "Public training slides on sprinkler precipitation rates", standing: "published" },
  AUDIT_WORKSHEETS: { text: "Public worksheets of a course for landscape irrigation auditors", standing: "published" },
  AUDITING: { text: "Landscape irrigation auditing practice", standing: "recalled" },
  MECHAM2010: {
    text: "Mecham, B.Q. (2010), Audit based landscape irrigation scheduling, 5th National Decennial Irrigation Conference, ASABE, IRR10-10040 (abstract)",
    standing: "published",
  },
  UCCE_SONOMA: {
    text: "University of California Cooperative Extension, Sonoma County, How to sample emitters",
    standing: "published",
  },
  HAZEN_WILLIAMS: {
    text: "Hazen-Williams formula, SI form as printed on public engineering reference pages",
    standing: "published",
  },
  HW_EXAMPLE: {
    text: "Public engineering reference page on the Hazen-Williams equation, worked example",
    standing: "published",
  },
  ILLINOIS_906: {
    text: "Illinois Administrative Code, Title 77, Part 906, Appendix A, Exhibit I: friction loss in schedule 40 plastic pipe, C = 150",
    standing: "published",
  },
  PVC160_TABLE: {
    text: "Irrigation course, table of water velocity and friction loss in PVC class 160 pipe with actual inside diameters",
    standing: "published",
  },
  WATTERS_KELLER: {
    text: "Watters, G.Z. & Keller, J. (1978), Trickle irrigation tubing hydraulics, ASAE paper 78-2015",
    standing: "recalled",
  },
  KELLER_BLIESNER: {
    text: "Keller, J. & Bliesner, R.D. (1990), Sprinkle and trickle irrigation",
    standing: "recalled",
  },
  WU_GITLIN: {
    text: "Wu, I.P. & Gitlin, H.M. (1974), Drip irrigation design based on uniformity, Transactions of the ASAE 17(3):429-432",
    standing: "recalled",
  },
  FLUSHING_GUIDE: {
    text: "Disinfection of pipelines and storage facilities field guide, Table 3-1, approximate pipeline flushing rates",
    standing: "published",
  },
  FAO_MODULE9: {
    text: "Savva, A.P. & Frenken, K. (2002), Localized irrigation systems, FAO Irrigation Manual Module 9, section 2.7.2 (read in slides that reproduce it)",
    standing: "published",
  },
  MERKLEY_ALLEN: {
    text: "Merkley, G.P. & Allen, R.G. (2004), Sprinkle and trickle irrigation lecture notes, Utah State University, lecture 11",
    standing: "published",
  },
  UC_IG6: {
    text: "Peacock, B. (1996), Energy and cost required to lift or pressurize water, University of California Cooperative Extension, Tulare County, IG6-96",
    standing: "published",
  },
  PUMPING_COST_ARTICLE: {
    text: "Trade article on the cost of moving irrigation water (100 hp is 74.6 kW)",
    standing: "published",
  },
  COLORADO_4712: {
    text: "Colorado State University Extension 4.712, irrigation pumping plant efficiency",
    standing: "published",
  },
  ANNUAL_WORTH_TEXT: {
    text: "Text page on engineering economy, annual worth of two alternatives at 8 %",
    standing: "published",
  },
  CAPITAL_RECOVERY_TEXT: {
    text: "Textbook solution on capital recovery, 10 % and 5 years",
    standing: "published",
  },
  SP811: {
    text: "Thompson, A. & Taylor, B.N. (2008), Guide for the use of the International System of Units, NIST Special Publication 811, Appendix B",
    standing: "recalled",
  },
  NURSERY_LIST: {
    text: "Note on a public mailing list on pot sizes (imperial gallon 4.546 L)",
    standing: "published",
  },
} as const satisfies Record<string, Source>;

export type SourceKey = keyof typeof sources;

export interface Citation {
  readonly source: SourceKey;
  /** Chapter, equation, table or example; for a definition, what it says. */
  readonly place: string;
}

export function cite(source: SourceKey, place: string): Citation {
  return { source, place };
}

const STANDING_NOTE = { published: "", recalled: " (recalled, not read again)", definition: "", "common practice": "" };

export function citationText({ source, place }: Citation): string {
  const { text, standing } = sources[source];
  return `${text}${STANDING_NOTE[standing]}: ${place}`;
}
