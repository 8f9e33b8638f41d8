import { instant } from "#shared/day/instant.ts";
import * as make from "#tests/support/factories.ts";
import { patient } from "#tests/support/freeze-patient.ts";
import { decisionDone, reviewAsked, reviewDecided } from "#tests/support/review-factories.ts";

/** Reviews that were asked for and decided, what was decided done, closed by name, or still open. */

const drain = patient(
  "a drain reviewed three times: what was decided is done, closed by name, and open",
  "1958-06-06",
  make.placed({ kind: "abscess drain", side: "not sided", on: "2026-03-02" }),
  reviewAsked({ on: "2026-03-10", by: "2026-03-12" }),
  reviewDecided({
    on: "2026-03-12",
    decided: [
      ["flush differently", "2026-03-13"],
      ["imaging", "2026-03-16"],
      ["leave in", "2026-03-19"],
    ],
    words: "the cavity is larger than the drain is quick",
    evidence: {
      asOf: instant(Date.parse("2026-03-12T14:00Z")),
      readings: ["reading-1"],
      said: ["not met"],
      protocol: 1,
    },
  }),
  make.factsNoted({
    on: "2026-03-13",
    facts: { flushOrder: { certainty: "confirmed", value: "10 mL x 3" } },
  }),
  decisionDone({ on: "2026-03-16", what: "imaging", how: "smaller" }),
  reviewDecided({
    on: "2026-03-19",
    decided: [
      ["upsize", "2026-03-24"],
      ["refer", "2026-03-26"],
    ],
  }),
  reviewDecided({ on: "2026-03-20", decided: [["second drain", "2026-03-25"]], closes: ["refer"] }),
  make.upsized({ on: "2026-03-24" }),
);

const gallbladder = patient(
  "a drain of the gallbladder whose removal a review decided",
  "1944-04-04",
  make.placed({ kind: "cholecystostomy", side: "not sided", route: "transhepatic", on: "2026-03-02" }),
  reviewDecided({ on: "2026-04-20", decided: [["cap or clamp trial", "2026-04-22"]] }),
  make.trialStarted({ on: "2026-04-22" }),
  make.trialPassed({ on: "2026-04-27" }),
  reviewDecided({
    on: "2026-04-27",
    decided: [
      ["remove", "2026-04-30"],
      ["hand over", "2026-05-04"],
    ],
    closes: [],
  }),
);

export const reviewPatients = [drain, gallbladder];
