import type { DayRemark, IncompleteReason, NetDay } from "#shared/output/net-day.ts";

const incomplete = {
  "volume-unknown": "volume unknown",
  "flush-not-recorded": "flush not recorded",
  "flush-withdrawn-not-recorded": "flush drawn back not recorded",
  overlap: "two readings of one time",
  "no-reading": "no entry",
  gap: "a gap",
  "part-of-a-day": "part of a day",
  "day-in-progress": "not over",
  "procedure-aspirate": "drawn off at a procedure",
} as const satisfies Record<IncompleteReason, string>;

const remarks = {
  "flush-does-not-come-back": "flush stays in",
  "leak-round-tube": "leaks round it",
  estimated: "estimate",
  reported: "told, not seen",
  "already-net": "entered as net",
  "other-fluid-went-in": "other fluid went in",
} as const satisfies Record<DayRemark, string>;

/** "complete", "a gap, estimate": what is to be known of a day's figure, on one line of a table. */
export const dayInShort = ({
  complete,
  because,
  remarks: told,
}: Pick<NetDay, "complete" | "because" | "remarks">): string =>
  [
    ...(complete ? ["complete"] : because.map((reason) => incomplete[reason])),
    ...told.map((one) => remarks[one]),
  ].join(", ");
