import type { StepList, WorkList } from "#shared/step/work-list.ts";

type ListWords = {
  readonly name: string;
  /** The question that the list answers: heading of its page. */
  readonly asks: string;
  /** What stands in it, and what does not. */
  readonly says: string;
  /** Said where nothing stands in it. */
  readonly none: string;
};

/** What each list is called and what stands in it. */
export const workListWords = {
  due: {
    name: "Due",
    asks: "What is due?",
    says: "the window is open and the target has not passed",
    none: "No window is open.",
  },
  overdue: {
    name: "Overdue",
    asks: "What is overdue?",
    says: "the target has passed, the latest date has not",
    none: "No target has passed while its latest date has not.",
  },
  "past-latest": {
    name: "Past latest",
    asks: "What is past its latest date?",
    says: "the latest date has passed, the longest first",
    none: "No tube is past its latest date.",
  },
  undated: {
    name: "Undated",
    asks: "Which tubes have no date?",
    says: "nobody knows a date to count from, no row gives one, or the operator has named none",
    none: "No tube waits for its date to be found.",
  },
  unconfirmed: {
    name: "Unconfirmed",
    asks: "Which visits has nobody confirmed?",
    says: "visits from today on that are proposed or booked, here or elsewhere",
    none: "Every visit from today on is confirmed, or none is booked.",
  },
  "did-not-attend": {
    name: "Did not attend",
    asks: "Who did not attend?",
    says: "nobody came, and no other visit is booked for the tube",
    none: "Nobody who did not attend waits for another visit.",
  },
  "handed-over": {
    name: "Handed over, not accepted",
    asks: "Which handovers has nobody accepted?",
    says: "given to somebody else by record, and nobody there has said yes: the tube is still the clinic's",
    none: "Every handover is accepted, or none is open.",
  },
  elsewhere: {
    name: "Exchanged elsewhere, unverified",
    asks: "What was done elsewhere and not verified?",
    says: "told to the clinic, and nobody has seen the report or the tube",
    none: "Nothing that was done elsewhere waits to be verified.",
  },
  prerequisites: {
    name: "Prerequisites open",
    asks: "Which visits are not prepared?",
    says: "something is to be settled before the visit, by the day that stands there",
    none: "Nothing is open before any visit that is booked here.",
  },
} as const satisfies Record<WorkList, ListWords>;

/** A list by its name, Exchanges among them. */
export const listName = (list: StepList): string =>
  list === "exchanges" ? "Exchanges" : workListWords[list].name;
