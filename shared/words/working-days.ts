/** "2 working days before", "the day of the visit". */
export const workingDaysWords = (before: number): string =>
  before === 0 ? "the day of the visit" : `${before} working ${before === 1 ? "day" : "days"} before`;
