/** How a new sheet is printed: one page wide on the paper of its edition, the headings on every page. */
import type { Edition } from "../../workbooks/kit";
import type { Sheet } from "../../workbooks/model";

const PAPER = { us: "Letter", metric: "A4" } as const;
const MARGINS = { left: 0.5, right: 0.5, top: 0.6, bottom: 0.7, header: 0.3, footer: 0.3 };

export function setUpPrinting(target: Excel.Worksheet, { print = {} }: Sheet, edition: Edition): void {
  const { pageLayout } = target;
  const { landscape, repeatedRows, area, onePage, breaksBefore = [] } = print;
  pageLayout.paperSize = PAPER[edition];
  pageLayout.orientation = landscape === true ? "Landscape" : "Portrait";
  pageLayout.setPrintMargins("Inches", MARGINS);
  pageLayout.zoom = { horizontalFitToPages: 1, ...(onePage === true && { verticalFitToPages: 1 }) };
  if (repeatedRows !== undefined) pageLayout.setPrintTitleRows(`$${repeatedRows.join(":$")}`);
  if (area !== undefined) pageLayout.setPrintArea(area);
  for (const row of breaksBefore) target.horizontalPageBreaks.add(`A${row}`);
  const { defaultForAllPages } = pageLayout.headersFooters;
  defaultForAllPages.leftFooter = "&A";
  defaultForAllPages.rightFooter = "&P of &N";
}
