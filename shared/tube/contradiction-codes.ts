/** What two entries of one history can have against each other. Refused when a form would make it; found in what is brought in. */
export const contradictionCodes = [
  "event-before-opening",
  "event-after-end",
  "tube-opened-twice",
  "tube-not-opened",
  "already-capped",
  "not-capped",
  "already-out",
  "not-out",
  "fragment-inside",
  "no-pins",
  "already-on-trial",
  "not-on-trial",
  "no-balloon",
  "visit-not-booked",
  "visit-over",
  "flag-not-open",
] as const;
export type ContradictionCode = (typeof contradictionCodes)[number];
