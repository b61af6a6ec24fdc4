/** A small .xlsx file made part by part, for what no library writes. */
import { strToU8, zipSync } from "fflate";

const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const RELATIONS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const PACKAGE = "http://schemas.openxmlformats.org/package/2006";
const TYPES = "application/vnd.openxmlformats-officedocument.spreadsheetml";

export interface PackedSheet {
  /** The rows: `<row r="1"><c r="A1"><v>1</v></c></row>`. */
  readonly rows: string;
  /** What follows the rows: rules, colouring. */
  readonly after?: string;
}

export interface PackedBook {
  readonly sheets: Readonly<Record<string, PackedSheet>>;
  readonly strings?: readonly string[];
  readonly properties?: string;
  readonly names?: string;
  /** Further parts by their path. */
  readonly more?: Readonly<Record<string, string>>;
  /** Parts are called by their path from the root, as some writers do. */
  readonly fromRoot?: true;
}

export function packed({
  sheets,
  strings = [],
  properties = "",
  names = "",
  more = {},
  fromRoot,
}: PackedBook): Uint8Array {
  const list = Object.entries(sheets);
  const before = fromRoot ? "/xl/" : "";
  const parts: Record<string, string> = {
    "[Content_Types].xml": `<Types xmlns="${PACKAGE}/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/><Override PartName="/xl/workbook.xml" ContentType="${TYPES}.sheet.main+xml"/><Override PartName="/xl/styles.xml" ContentType="${TYPES}.styles+xml"/><Override PartName="/xl/sharedStrings.xml" ContentType="${TYPES}.sharedStrings+xml"/>${list.map((_, at) => `<Override PartName="/xl/worksheets/sheet${at + 1}.xml" ContentType="${TYPES}.worksheet+xml"/>`).join("")}</Types>`,
    "_rels/.rels": `<Relationships xmlns="${PACKAGE}/relationships"><Relationship Id="rId1" Type="${RELATIONS}/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
    "xl/workbook.xml": `<workbook xmlns="${MAIN}" xmlns:r="${RELATIONS}">${properties}<sheets>${list.map(([name], at) => `<sheet name="${name}" sheetId="${at + 1}" r:id="rId${at + 1}"/>`).join("")}</sheets>${names && `<definedNames>${names}</definedNames>`}</workbook>`,
    "xl/_rels/workbook.xml.rels": `<Relationships xmlns="${PACKAGE}/relationships">${list.map((_, at) => `<Relationship Id="rId${at + 1}" Type="${RELATIONS}/worksheet" Target="${before}worksheets/sheet${at + 1}.xml"/>`).join("")}<Relationship Id="rId90" Type="${RELATIONS}/styles" Target="${before}styles.xml"/><Relationship Id="rId91" Type="${RELATIONS}/sharedStrings" Target="${before}sharedStrings.xml"/></Relationships>`,
    "xl/styles.xml": `<styleSheet xmlns="${MAIN}"><fonts count="1"><font><sz val="10"/><name val="Arial"/></font></fonts><fills count="1"><fill><patternFill patternType="none"/></fill></fills><borders count="1"><border/></borders><cellXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellXfs><dxfs count="1"><dxf><font><color rgb="FF14532D"/></font></dxf></dxfs></styleSheet>`,
    "xl/sharedStrings.xml": `<sst xmlns="${MAIN}">${strings.map((text) => `<si><t xml:space="preserve">${text}</t></si>`).join("")}</sst>`,
    ...Object.fromEntries(
      list.map(([, { rows, after = "" }], at) => [
        `xl/worksheets/sheet${at + 1}.xml`,
        `<worksheet xmlns="${MAIN}" xmlns:r="${RELATIONS}"><sheetData>${rows}</sheetData>${after}</worksheet>`,
      ]),
    ),
    ...more,
  };
  return zipSync(Object.fromEntries(Object.entries(parts).map(([path, text]) => [path, strToU8(text)])));
}
