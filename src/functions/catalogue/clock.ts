/** Times of a sheet are parts of a day. */
export const MINUTES_PER_DAY = 1440;

export const PAST_MIDNIGHT = "Times run on past midnight: 1.02 is 0:29 of the next day.";
