/** Writes the functions of the Google Sheets script to standard output, for the build. */
import { stubsText } from "./googleSheets/stubs";

process.stdout.write(stubsText());
