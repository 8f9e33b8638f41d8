/** How soon somebody has to be reached, the most urgent first. */
export const levels = ["emergency services", "on call now", "same day", "next working day"] as const;
export type Level = (typeof levels)[number];
