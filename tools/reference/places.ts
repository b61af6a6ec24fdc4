/** Names of places in a page. */

/** "Run time, zones, booms, mats" is at #run-time-zones-booms-mats of the index. */
export function groupPlace(group: string): string {
  return group
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-|-$/g, "");
}
