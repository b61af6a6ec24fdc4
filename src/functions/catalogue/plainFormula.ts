/** Of functions whose formula in built-in functions follows a word or the cells of a call. */
export const ONE_CASE =
  "The formula in built-in functions is that of the first example; SHOW_WORKING gives that of any call.";
