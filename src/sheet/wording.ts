import { REFUSED_BY_ENGINE } from "./guard";

const OURS: Readonly<Record<string, string>> = {
  "An unexpected error occurred. Submit a support ticket at odoo.com/help.": "This formula could not be worked out.",
  "e.g. 'http://www.odoo.com'": "Address of a page, or a cell of this workbook",
  "The data you entered in %s violates the data validation rule set on the cell:\n%s": REFUSED_BY_ENGINE,
  "Those settings affect all users.": "These settings are kept with the workbook.",
};

/** The engine's sentences, except those that name its maker or other people at the same workbook. */
export function wording(text: string): string {
  return OURS[text.trim()] ?? text;
}
