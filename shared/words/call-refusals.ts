import type { RefusalCode } from "#shared/errors/codes.ts";
import type { RefusalArgs } from "#shared/errors/refusal.ts";

/** What is to mend in a call, a letter, a red flag. */
export const callRefusals = {
  "flag-not-open": () =>
    "What was done about this red flag is recorded already, or its entry was taken back. Look at the patient's page again.",
  "call-held": ({ by, since }) =>
    `${by} has had this patient's call since ${since}: two do not ring one patient at once. Ask them, or take it over.`,
  "calls-go-on": () =>
    "A record of this patient has not ended, so the calls go on: type the day from which, +14 for two weeks.",
  "number-not-rung": ({ text }) =>
    `"${text}" is no telephone number: type its digits, with + and blanks as you like, and no words after it.`,
  "answers-without-contact": () =>
    "Nobody was reached by this outcome, so nobody can have answered. Change the outcome, or take the answers out.",
  "call-back-without-day": () => "Type the day on which they asked to be rung, tomorrow or 14 nov.",
  "flag-without-person": () =>
    "A red flag was opened: type the name of the person whom it was handed to, or: nobody yet. It then heads every page until somebody has it.",
  "handed-without-flag": () =>
    "No answer opened a red flag, so nothing was handed over. Answer the question that opens it, or take the name out.",
  "flag-words-beside-row": () =>
    "The row that is chosen has its own words and its own level. Take yours out or put them into the note, or choose none of the rows.",
  "before-flag-told": ({ told }) =>
    `The red flag was told ${told}, so nothing was done about it before. Type the later time.`,
  "tube-out-already": () =>
    "This tube is out by the record already. Choose one that is in, or correct the entry that says so.",
  "out-before-placed": ({ since }) =>
    `The tube lay there from ${since} on, so it cannot have come out before. Type the later day, or correct its placement.`,
} as const satisfies Partial<Record<RefusalCode, (args: RefusalArgs) => string>>;
