import type { Edition, Starter } from "../kit";

/** A starter workbook before an edition is chosen. */
export interface StarterKind {
  readonly id: string;
  readonly title: string;
  readonly purpose: string;
  /** Labels of the checks that the demo means to show as LOOK. */
  readonly expectedLooks?: readonly string[];
  build(edition: Edition): Starter;
}
