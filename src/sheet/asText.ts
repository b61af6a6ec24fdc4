/** An apostrophe keeps a text that could be read as a number, a date, a formula or a truth a text. */
export function asText(text: string): string {
  return /^[\d=+'.$(-]|^\s*(true|false)\s*$/i.test(text) ? `'${text}` : text;
}
