import { describe, expect, it } from "vitest";
import { type WhyCode, whyCodes } from "#shared/step/step.ts";
import { contradictionCodes } from "#shared/tube/contradiction-codes.ts";
import { anchorWhy } from "./anchors-out.ts";
import { callWhy } from "./call-why.ts";
import { whySentence } from "./why.ts";

type Args = Parameters<typeof whySentence>[0]["args"];
const say = (code: WhyCode, args: Args = {}): string => whySentence({ code, args, eventId: null });

const sentences: readonly (readonly [WhyCode, Args, string])[] = [
  ["counted-from", { day: "2026-08-14" }, "Counted from Fri 14 Aug 2026."],
  [
    "counted-from-span",
    { earliest: "2026-03-01", latest: "2026-03-31" },
    "Counted from Sun 1 Mar 2026, the earliest of the days that it may have been (to Tue 31 Mar 2026). Provisional.",
  ],
  ["date-unknown", {}, "The day on which this tube was placed or last exchanged is unknown."],
  ["reported-elsewhere", {}, "Done elsewhere and not confirmed here yet."],
  [
    "row",
    { row: "nephrostomy", version: 1, earliest: 63, target: 77, latest: 90, source: "5 7 8; rest CP" },
    "Row nephrostomy, version 1: earliest 63, target 77, latest 90 days (source 5 7 8; rest CP).",
  ],
  [
    "row",
    { row: "abscess or fluid drain", version: 2, earliest: null, target: 14, latest: 90, source: "CP" },
    "Row abscess or fluid drain, version 2: earliest: no row, target 14, latest 90 days (source CP).",
  ],
  ["age-unknown", {}, "The birth date is unknown, and the row is for adults only: find the birth date."],
  ["row-example", { version: 1 }, "Version 1 of the protocol is an EXAMPLE: nobody has approved it."],
  ["factor", { factor: "pregnancy" }, "A shorter row stands because of: pregnancy."],
  [
    "plan",
    { act: "exchange", by: "2026-10-30", byWhom: "Dr Example" },
    "The operator's plan stands above the row: exchange by Fri 30 Oct 2026, Dr Example.",
  ],
  [
    "plan",
    { act: "remove", by: "2026-10-30", byWhom: null },
    "The operator's plan stands above the row: remove by Fri 30 Oct 2026.",
  ],
  ["plan-reason", { reason: "travels" }, "Reason of the plan: travels."],
  [
    "plan-past-row-latest",
    { by: "2026-11-20", latest: "2026-11-12" },
    "The plan's day, Fri 20 Nov 2026, is past the row's latest, Thu 12 Nov 2026.",
  ],
  ["operator-date-missing", {}, "The row waits for the operator's date and there is none: due now."],
  ["counted-from-check", { day: "2026-11-06" }, "Counted from the last check, Fri 6 Nov 2026."],
  ["no-row", { kind: "nephrostomy" }, "The protocol has no row for nephrostomy. No row is not zero: ask."],
  [
    "no-example-for-child",
    { kind: "nephrostomy" },
    "Under 18: the example rows are for adults and none applies. Ask.",
  ],
  [
    "moved",
    { end: "target", from: "2026-10-31", to: "2026-10-30", because: "closure", reason: "staff day" },
    "Target moved from Sat 31 Oct 2026 to Fri 30 Oct 2026: clinic closed (staff day).",
  ],
  [
    "moved",
    { end: "earliest", from: "2026-10-31", to: "2026-11-02", because: "closed-weekday", reason: null },
    "Earliest moved from Sat 31 Oct 2026 to Mon 2 Nov 2026: the clinic is closed on Saturdays.",
  ],
  [
    "moved",
    { end: "target", from: "2026-10-30", to: "2026-11-02", because: "before-earliest", reason: null },
    "Target moved from Fri 30 Oct 2026 to Mon 2 Nov 2026: it would lie before the earliest date.",
  ],
  [
    "moved",
    { end: "latest", from: "2026-10-31", to: null, because: "closure", reason: "rebuilding" },
    "Latest Sat 31 Oct 2026 cannot be moved, no open day is near: clinic closed (rebuilding).",
  ],
  ["no-day-left", { step: "exchange" }, 'No open day is left in the window of "Exchange".'],
  [
    "first-call",
    { from: 1, to: 3, source: "CP", day: "2026-11-06" },
    "First call on day 1 to 3 after Fri 6 Nov 2026 (source CP).",
  ],
  [
    "pink-urine",
    { day: "2026-11-05", hours: 48, source: "CP" },
    "Pink urine seen on Thu 5 Nov 2026, under 48 h after a procedure: asked again the next day (source CP).",
  ],
  ["call-attempts", { attempts: 1 }, "Called 1 time, not reached yet."],
  ["call-attempts", { attempts: 3 }, "Called 3 times, not reached yet."],
  ["fell-out", {}, "The tube fell out, and what follows is not decided."],
  ["partly-dislodged", {}, "The tube was pulled back and has not been put right."],
  ["fragment", {}, "It did not come out whole: a piece is left inside."],
  ["removal-told", {}, "Told removed. Nobody here has confirmed it: whole, seen how, by whom."],
  [
    "contradiction",
    { code: "event-after-end" },
    "Two entries cannot both be true: something is recorded after the tube's record had ended.",
  ],
  [
    "hard-latest",
    { by: "2027-03-01", latest: "2027-02-10" },
    "The plan's day, Mon 1 Mar 2027, is past the row's hard limit, Wed 10 Feb 2027.",
  ],
  ["row-note", { note: "on failure" }, "The row says: on failure."],
  [
    "tract-too-young",
    { act: "remove", by: "2026-09-01", from: "2026-09-04", days: 21, row: "cholecystostomy" },
    "On Tue 1 Sep 2026 the tract is younger than the 21 days of row cholecystostomy (from Fri 4 Sep 2026): not removed before.",
  ],
  [
    "tract-too-young",
    { act: "exchange", by: "2026-08-27", from: "2026-08-28", days: 14, row: "suprapubic" },
    "On Thu 27 Aug 2026 the tract is younger than the 14 days of row suprapubic (from Fri 28 Aug 2026): not exchanged before.",
  ],
  [
    "tract-age-unknown",
    { act: "remove", days: 28, row: "loop gastrostomy" },
    "Row loop gastrostomy waits for a tract of 28 days; the day of the puncture is unknown, so it cannot be told.",
  ],
  [
    "removal-decided",
    { by: "2026-09-02", decidedBy: "Dr Example" },
    "Removal decided by Dr Example: by Wed 2 Sep 2026.",
  ],
  ["removal-reason", { reason: "dry" }, "Reason of the removal: dry."],
  [
    "trouble",
    { trouble: "bled", level: "same day", untilReached: "keep the tube" },
    "Recorded: bled. Same day. Until reached: keep the tube.",
  ],
  ["trouble", { trouble: "broken", level: null, untilReached: null }, "Recorded: broken. No row: ask now."],
  [
    "balloon-loss",
    { loss: 0.6, over: 0.5 },
    "0.6 mL less than last filled, over 0.5 mL: is the balloon losing water?",
  ],
  ["balloon-loss-unknown", {}, "How much water was lost cannot be told: one of the two volumes is unknown."],
  [
    "balloon-losses",
    { losses: "0.6, 2", over: 0.5, source: "CP" },
    "Water lost at the last checks: 0.6, 2 mL, each over 0.5 mL (source CP).",
  ],
  [
    "balloon-row",
    { from: 14, to: 28, every: 7, source: "CP" },
    "Balloon water: first check on day 14 to 28, then every 7 days (source CP).",
  ],
  ["balloon-last-check", { day: "2026-08-31" }, "Last checked Mon 31 Aug 2026."],
  [
    "trial-running",
    { days: "1, 2, 7, 14", day: "2026-08-21", source: "CP" },
    "Clamp trial since Fri 21 Aug 2026: calls on days 1, 2, 7, 14 (source CP), closed days too. The exchange date stands.",
  ],
  [
    "trial-closed-day",
    { day: "2026-08-22", covers: null, asks: "who covers it?" },
    "The clinic is closed on Sat 22 Aug 2026: who covers it?",
  ],
  [
    "trial-closed-day",
    { day: "2026-08-22", covers: "the ward", asks: "who covers it?" },
    "The clinic is closed on Sat 22 Aug 2026: covered by the ward.",
  ],
  ["trial-undated", {}, "A clamp trial runs, and there is no row or no known day to count its calls from."],
  ["trial-passed", {}, "The clamp trial was passed: decide what follows."],
  [
    "decided",
    { by: "2026-11-13", decidedBy: "Dr Example" },
    "Decided in review by Dr Example: by Fri 13 Nov 2026.",
  ],
  ["decided-words", { words: "still drains" }, "In the physician's words: still drains."],
  ["reviewed", { day: "2026-11-06" }, "Counted from the review of Fri 6 Nov 2026."],
  ["review-on", { day: "2026-11-20" }, "The last review set the next one on Fri 20 Nov 2026."],
  ["review-asked", { askedBy: "the ward", reason: "fever" }, "A review was asked for by the ward: fever."],
  ["review-asked", { askedBy: null, reason: null }, "A review was asked for."],
  [
    "evidence-changed",
    { day: "2026-11-06", decidedBy: "Dr Example", gone: 1, other: 2 },
    "Look at the decision of Dr Example (recorded Fri 6 Nov 2026) again: of the readings that it rested on 1 stand no more as they were seen, 2 of that time came since.",
  ],
  ["trial-failed", {}, "The clamp trial failed: decide what follows."],
  [
    "tip-to-confirm",
    { day: "2026-08-14", days: 0, source: "CP" },
    "The tip is to be confirmed on Fri 14 Aug 2026 (source CP). Its date is its own.",
  ],
  [
    "tip-to-confirm",
    { day: "2026-08-14", days: 30, source: "CP" },
    "The tip is to be confirmed within 30 days of Fri 14 Aug 2026 (source CP). Its date is its own.",
  ],
  ["tip-not-in-place", {}, "The tip was seen and is not in place."],
  [
    "handed-over",
    { to: "urology", person: null },
    "Handed over to urology. No named person has accepted it.",
  ],
  [
    "handed-over",
    { to: "urology", person: "Dr Example" },
    "Handed over to urology, Dr Example asked. No named person has accepted it.",
  ],
  [
    "to-find-out",
    { what: "size, side", askWhom: "Far Dale" },
    "To be found out after the transfer: size, side; ask Far Dale.",
  ],
  [
    "insides-unknown",
    { on: "2026-10-30", days: 14, source: "CP" },
    "An exchange is planned for Fri 30 Oct 2026, and neither what wire the tube in place takes nor every inside that a wire meets is known: to be found out from 14 days before (source CP).",
  ],
  ["gap", { what: "side, size" }, "Not known: side, size."],
  [
    "birth-date-unknown",
    {},
    "The birth date is not known. Rows for adults are used, provisionally, and one identifier is missing.",
  ],
  [
    "hospice-undecided",
    {},
    "In hospice, and no clinician has decided what goes on. Until then everything does.",
  ],
  [
    "hospice-decided",
    { until: "2026-12-31", calls: "go on", exchanges: "stop", decidedBy: "Dr Example", team: null },
    "Decided by Dr Example until Thu 31 Dec 2026: calls go on, exchanges stop.",
  ],
  ["inpatient", { where: "ward 4" }, "An inpatient on ward 4: the ward is rung about the tube."],
  ["inpatient", { where: null }, "An inpatient: the ward is rung about the tube."],
  [
    "whereabouts",
    { where: null, day: "2026-08-17", days: 3, ward: "the ward is rung about the tube", source: "CP" },
    "An inpatient, told on Mon 17 Aug 2026: asked again every 3 days (source CP); the ward is rung about the tube.",
  ],
  [
    "whereabouts",
    { where: "ward 4", day: "2026-08-17", days: null, ward: null, source: null },
    "An inpatient on ward 4, told on Mon 17 Aug 2026: asked again now, no row.",
  ],
  [
    "visit",
    { what: "exchange", day: "2026-11-04", from: 570, where: null, state: "booked", urgent: null },
    "Booked: exchange, Wed 4 Nov 2026, 09:30.",
  ],
  [
    "visit",
    {
      what: "removal",
      day: "2026-11-04",
      from: null,
      where: "Far Dale",
      state: "confirmed",
      urgent: "urgent",
    },
    "Confirmed elsewhere, Far Dale: removal, Wed 4 Nov 2026, urgent.",
  ],
  [
    "to-settle",
    { thing: "labs", says: "INR, platelets", day: "2026-11-02" },
    "Open: labs, INR, platelets; settled by Mon 2 Nov 2026.",
  ],
  [
    "missed",
    { day: "2026-11-04", reason: "no transport", times: 3 },
    "Nobody came on Wed 4 Nov 2026 (no transport), 3 times by now. The tube's own date has not waited.",
  ],
  [
    "missed",
    { day: "2026-11-04", reason: null, times: 1 },
    "Nobody came on Wed 4 Nov 2026. The tube's own date has not waited.",
  ],
  ["reconcile", { about: "sides", says: "It says right." }, "Not agreed: sides. It says right."],
  [
    "reported-out",
    { tubes: "Left ureteral stent (tube 1), or Left nephrostomy (tube 2)", toldBy: "urology", day: null },
    "Told by urology that one was taken out, and not which: Left ureteral stent (tube 1), or Left nephrostomy (tube 2).",
  ],
  [
    "reported-out",
    { tubes: "Left nephrostomy (tube 2)", toldBy: "urology", day: "2026-08-17" },
    "Told by urology that one was taken out on Mon 17 Aug 2026, and not which: Left nephrostomy (tube 2).",
  ],
  [
    "usual-level",
    { row: "low", mlPer24h: 60, day: "2026-12-31", acceptedBy: "Dr Example" },
    "Accepted by Dr Example as usual until Thu 31 Dec 2026: 60 mL/24 h, in place of the row for low output.",
  ],
];

describe("each line of a why", () => {
  it.each(sentences)("%s %j", (code, args, sentence) => expect(say(code, args)).toBe(sentence));

  it("has an example of every code here, in alarm-why.test.ts, call-why.test.ts or anchors-out.test.ts", () => {
    const elsewhere = Object.keys({ ...callWhy, ...anchorWhy });
    const here = whyCodes.filter((code) => !code.startsWith("alarm-") && !elsewhere.includes(code));
    expect(new Set(sentences.map(([code]) => code))).toEqual(new Set(here));
  });

  it("says of every contradiction what it is", () => {
    const said = contradictionCodes.map((code) => say("contradiction", { code }));
    expect(new Set(said).size).toBe(contradictionCodes.length);
    expect(said).not.toContain(say("contradiction", { code: "another" }));
  });
});
