import type { DayPart } from "#shared/step/day-part.ts";

type PartWords = {
  /** The head of the part. */
  readonly head: string;
  /** Said where nothing stands in it. */
  readonly none: string;
};

/** What each part of Today is called. */
export const partWords = {
  out: {
    head: "Tubes out and alarms",
    none: "No tube is recorded as out, partly out or left behind in part, and no alarm stands.",
  },
  "past-latest": { head: "Past latest", none: "No tube is past its latest date." },
  undated: { head: "Without a date", none: "No tube waits for its date to be found." },
  visits: { head: "Visits", none: "No visit is booked for today, and none waits for an answer." },
  due: { head: "Exchanges and steps due", none: "No exchange is planned for today and no step is due." },
  calls: { head: "Calls due", none: "No call is due." },
  "loose-ends": { head: "Loose ends", none: "No record waits for a missing fact." },
} as const satisfies Record<DayPart, PartWords>;
