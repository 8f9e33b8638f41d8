/** Where a tube of a list came from when no column says so: nobody here saw it go in. */
export const FROM_THE_LIST = "the clinic's list";
