import type { Edition, Starter } from "../kit";

/** A starter workbook before an edition is chosen. */
export interface StarterKind {
  readonly id: string;
  readonly title: string;
  readonly purpose: string;
  build(edition: Edition): Starter;
}
