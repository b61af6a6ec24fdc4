const OURS: Readonly<Record<string, string>> = {
  "An unexpected error occurred. Submit a support ticket at odoo.com/help.": "This formula could not be worked out.",
  "e.g. 'http://www.odoo.com'": "Address of a page, or a cell of this workbook",
  "Those settings affect all users.": "These settings are kept with the workbook.",
};

/** The engine's sentences, except those that name its maker or other people at the same workbook. */
export function wording(text: string): string {
  return OURS[text.trim()] ?? text;
}
