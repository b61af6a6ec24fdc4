/** A text in quotation marks, with those inside it doubled; a sheet's name in apostrophes. */
const QUOTED = /"((?:[^"]|"")*)"|'(?:[^']|'')*'/g;

/** The engine knows no doubled quotation mark inside a text: `"a ""b"""` becomes `("a "&CHAR(34)&"b"&CHAR(34))`. */
export function withoutDoubledQuotes(formula: string): string {
  return formula.replace(QUOTED, (part, text: string | undefined) => {
    if (!text?.includes('""')) return part;
    const pieces = text.split('""').map((piece) => (piece === "" ? [] : [`"${piece}"`]));
    return `(${pieces.reduce((joined, piece) => [...joined, "CHAR(34)", ...piece]).join("&")})`;
  });
}
