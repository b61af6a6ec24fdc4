/** The engine's templates, corrected in memory; its own file stays as it is. */
export function correctedTemplates(text: string): Document {
  const templates = new DOMParser().parseFromString(text, "text/xml");
  dropOutsidePictures(templates);
  CORRECTIONS.forEach((correction) => correct(templates, correction));
  return templates;
}

interface Correction {
  readonly template: string;
  readonly element: string;
  readonly attributes: Readonly<Record<string, string>>;
}

// A t-att- value is an expression of the template language.
const AS_BUTTON = { role: "button", tabindex: "0" };

const CHART_TITLE = "env.model.getters.getChartDefinition(props.chartId).title";
const CHART_IN_WORDS = {
  role: "img",
  "t-att-aria-label": `[${CHART_TITLE}.text, ${CHART_TITLE}.description].filter((words) => words).join(': ') or 'Chart'`,
};

const CORRECTIONS: readonly Correction[] = [
  // The help of a function starts folded, behind a mark that no key reaches: it starts open instead.
  { template: "FunctionDescriptionProvider", element: "Collapse", attributes: { isCollapsed: "!state.isCollapsed" } },
  {
    template: "FunctionDescriptionProvider",
    element: ".collapsor",
    attributes: { "t-att-class": "state.isCollapsed ? '' : 'collapsed'" },
  },

  // Names for what has none.
  {
    template: "Composer",
    element: ".o-composer",
    attributes: { role: "textbox", "aria-label": "Content of the cell", tabindex: "0" },
  },
  {
    template: "NumberEditor",
    element: "input",
    attributes: { "t-att-aria-label": "props.valueIcon ? 'Zoom in percent' : 'Font size'" },
  },
  {
    template: "NamedRangeSelector",
    element: "TextInput",
    attributes: { label: "'Selected cells, or a name to go to'" },
  },
  { template: "TextInput", element: "input", attributes: { "t-att-aria-label": "props.label" } },
  { template: "GridAddRowsFooter", element: "input", attributes: { "aria-label": "Rows to add" } },

  { template: "ChartJsComponent", element: "canvas", attributes: CHART_IN_WORDS },
  { template: "ZoomableChartJsComponent", element: "canvas", attributes: CHART_IN_WORDS },

  // Within reach of the keyboard.
  { template: "TopBar", element: ".o-topbar-menu", attributes: { ...AS_BUTTON, "aria-haspopup": "menu" } },
  { template: "TopBar", element: ".more-tools", attributes: { ...AS_BUTTON, "aria-label": "More tools" } },
  {
    template: "ActionButton",
    element: ".o-menu-item-button",
    attributes: { ...AS_BUTTON, "t-att-aria-disabled": "isEnabled ? 'false' : 'true'" },
  },
  {
    template: "NamedRangeSelector",
    element: ".o-hoverable-button",
    attributes: { ...AS_BUTTON, "aria-label": "Named ranges" },
  },
  { template: "BottomBar", element: ".o-add-sheet", attributes: { ...AS_BUTTON, "aria-label": "Add a sheet" } },
  { template: "BottomBar", element: ".o-list-sheets", attributes: { ...AS_BUTTON, "aria-label": "All sheets" } },
  { template: "SmallBottomBar", element: ".ribbon-toggler", attributes: { ...AS_BUTTON, "aria-label": "Menus" } },
];

function correct(templates: Document, { template, element, attributes }: Correction): void {
  const target = templates.querySelector(`[t-name="o-spreadsheet-${template}"]`)?.querySelector(element);
  Object.entries(attributes).forEach(([name, value]) => target?.setAttribute(name, value));
}

/** A link in a cell would fetch a picture from elsewhere. */
function dropOutsidePictures(templates: Document): void {
  for (const picture of Array.from(templates.querySelectorAll("img"))) {
    if (picture.getAttribute("t-attf-src")?.startsWith("https:")) picture.remove();
  }
}
