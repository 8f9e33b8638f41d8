import type { RowAnswer } from "#shared/protocol/find-row.ts";
import type { Status } from "#shared/tube/state.ts";

/** Why nothing is printed to take home with a tube; null while it is in, or may still be. */
export function noPaperWords(status: Status): string | null {
  switch (status) {
    case "in":
    case "removal not confirmed":
      return null;
    case "out, undecided":
      return "This tube is out: there is nothing to print for it until somebody has decided.";
    case "fragment retained":
      return "This tube is out and a piece of it was left inside: there is nothing to print for it.";
    case "ended":
      return "The record of this tube has ended: there is nothing to print for it.";
  }
}

export type ListStands = {
  readonly approved: object | null;
  /** The answer of the table for this tube: it says whether the rows speak of this age at all. */
  readonly found: RowAnswer["found"];
  readonly birthKnown: boolean;
};

/** The rows are for adults: with a child none of them is printed. */
export const speaksOfThisAge = ({ found }: Pick<ListStands, "found">): boolean =>
  found !== "no example for a child";

/** What has to be said of the clinic's rows before somebody reads them at home. */
export function listNotes({ approved, found, birthKnown }: ListStands): readonly string[] {
  if (!speaksOfThisAge({ found }))
    return ["The clinic's list is for adults and has no line for this age: ask the clinic."];
  return [
    ...(approved === null ? ["Nobody in the clinic has approved this list yet."] : []),
    ...(birthKnown ? [] : ["It is for adults, and the birth date is not known."]),
  ];
}

/** Said of a clinic's telephone number that the record does not hold. */
export const numberByHand = "The record has no number of the clinic: write it here by hand.";

export const onCallRoute = "Outside the clinic's hours: by the local on-call route.";

export const emergencyCaution =
  "Breathlessness or chest pain with any tube, and a chest tube out or disconnected: call emergency services.";
