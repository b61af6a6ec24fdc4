import type { Workbook } from "./model";

export const blank: Workbook = {
  name: "Untitled workbook",
  sheets: [{ name: "Sheet1", cells: {} }],
};
