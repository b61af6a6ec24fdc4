/** What a spreadsheet host will not take as a function's name. */

/** Whether the whole name reads as a cell of a sheet: A1 to XFD1048576, or R1C1 and its short forms. */
export function looksLikeCell(name: string): boolean {
  if (/^R\d*(C\d*)?$/.test(name) || /^C\d*$/.test(name)) return true;
  const match = /^([A-Z]{1,3})(\d{1,7})$/.exec(name);
  if (match === null) return false;
  const [, letters = "", digits = ""] = match;
  const column = [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0);
  const row = Number(digits);
  return column <= 16_384 && row >= 1 && row <= 1_048_576;
}

/** Names of the Excel 4 macro language that are spelt with letters alone, from its published function reference. */
export const EXCEL_4_MACRO_NAMES: ReadonlySet<string> = new Set(
  `ABSREF ALERT ALIGNMENT ARGUMENT BEEP BORDER BREAK CALL CALLER CALCULATE CANCEL CLEAR CLOSE COPY CROSSTAB CUSTOMIZE CUT
  DEREF DIRECTORY DOCUMENTS DUPLICATE ECHO ELSE ERROR EVALUATE EXEC EXECUTE FCLOSE FILES FOPEN FOR FORMULA FPOS FREAD
  FREADLN FSIZE FWRITE FWRITELN GALLERY GOTO GROUP HALT HELP HIDE HLINE HPAGE HSCROLL INITIATE INPUT INSERT JUSTIFY
  LEGEND LINKS MERGE MESSAGE NAMES NEW NEXT NOTE OPEN OVERLAY PARSE PASTE PATTERNS PAUSE POKE PRECISION PRINT QUIT REFTEXT
  REGISTER RELREF REQUEST RESTART RESULT RESUME RETURN RUN SAVE SCALE SELECT SELECTION SERIES SIZE SORT SPLIT STANDARD
  STEP STYLE TABLE TERMINATE TEXTREF UNDO UNGROUP UNHIDE UNREGISTER VIEW VLINE VOLATILE VPAGE VSCROLL WAIT WHILE WINDOWS
  WORKBOOK WORKGROUP`
    .trim()
    .split(/\s+/),
);
