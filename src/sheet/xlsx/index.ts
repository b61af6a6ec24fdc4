/** Excel's files in the browser sheet; loaded when one is first opened or saved. */
export { openXlsx, UnreadableFile } from "./open";
export { saveXlsx } from "./save";
