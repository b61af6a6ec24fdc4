/** The functions bundle: the cell functions for the host, and the library for the pane and the sheet. */
import "./functions";

export * from ".";
