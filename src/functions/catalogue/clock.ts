/** Times of a sheet are parts of a day. */
export const MINUTES_PER_DAY = 1440;
