import { describe, expect, it } from "vitest";
import { day } from "#shared/day/day.ts";
import type { OpenStep, Why } from "#shared/step/step.ts";
import { type StepKind, stepKinds } from "#shared/tube/step-kinds.ts";
import { ownerWords, stepAsks, stepNames, stepStanding } from "./steps.ts";

type Window = { earliest?: string; target?: string; latest?: string; why?: Why["code"]; dueOn?: string };

const dayOr = (text: string | undefined) => (text === undefined ? null : day(text));

function step(kind: StepKind, { earliest, target, latest, why, dueOn }: Window = {}): OpenStep {
  return {
    id: `tube-1:${kind}`,
    tubeId: "tube-1",
    kind,
    earliest: dayOr(earliest),
    target: dayOr(target),
    latest: dayOr(latest),
    dueOn: day(dueOn ?? target ?? latest ?? "2026-11-06"),
    provisional: false,
    owner: { role: "nurse", staffId: null },
    ownerFrom: null,
    escalatesOn: null,
    physicianOn: null,
    why: why === undefined ? [] : [{ code: why, args: {}, eventId: null }],
    pins: { protocol: 1, calendar: 1 },
  };
}

describe("the sentence beside the strip", () => {
  /** 63 / 77 / 90 days from 14 Aug 2026, as they stand on clinic days. */
  const exchange = step("exchange", { earliest: "2026-10-16", target: "2026-10-30", latest: "2026-11-12" });

  it.each([
    ["2026-09-30", "in 30 days"],
    ["2026-10-15", "in 15 days"],
    ["2026-10-16", "window open, latest in 27 days"],
    ["2026-10-29", "window open, latest in 14 days"],
    ["2026-10-30", "due today"],
    ["2026-10-31", "1 day past target, latest in 12 days"],
    ["2026-11-11", "12 days past target, latest tomorrow"],
    ["2026-11-12", "13 days past target, latest today"],
    ["2026-11-13", "1 day past latest"],
    ["2026-11-23", "11 days past latest"],
  ])("an exchange on %s: %s", (today, sentence) => {
    expect(stepStanding(exchange, day(today))).toBe(sentence);
  });

  it.each([
    [step("review", { target: "2026-11-11", latest: "2027-01-30" }), "review in 5 days"],
    [step("review", { target: "2026-11-07" }), "review tomorrow"],
    [step("review", { target: "2026-11-03" }), "review 3 days past target"],
    [step("remove", { target: "2026-11-06", latest: "2026-11-06" }), "removal due today, the latest date"],
    [
      step("remove or exchange", { target: "2026-11-01", latest: "2027-01-30" }),
      "removal or exchange due now: no operator's date, latest in 85 days",
    ],
    [
      step("remove or exchange", { target: "2026-08-01", latest: "2026-11-05" }),
      "removal or exchange 1 day past latest",
    ],
    [
      { ...step("review", { target: "2026-11-11", latest: "2027-01-30" }), provisional: true },
      "review in 5 days, provisional",
    ],
    [
      step("call", { earliest: "2026-11-06", target: "2026-11-07", latest: "2026-11-09" }),
      "call window open, latest in 3 days",
    ],
    [
      step("assess the date", { target: "2026-11-01", why: "date-unknown" }),
      "cannot tell: placement date unknown",
    ],
    [
      step("assess the date", { target: "2026-11-01", why: "counted-from-span" }),
      "placement date only roughly known: assess it",
    ],
    [step("tube out", { dueOn: "2026-11-05" }), "out since Thu 5 Nov 2026: not decided"],
    [step("part out", { dueOn: "2026-11-05" }), "partly out since Thu 5 Nov 2026: not decided"],
    [
      step("fragment retained", { dueOn: "2026-11-05" }),
      "fragment retained since Thu 5 Nov 2026: not decided",
    ],
    [step("confirm removal"), "told removed, not confirmed"],
    [step("confirm what was done elsewhere"), "done elsewhere, not confirmed"],
    [step("no row"), "cannot tell: the protocol has no row"],
    [step("no day left"), "no open day left in the window"],
    [step("contradiction"), "two entries cannot both be true"],
  ])("on Fri 6 Nov 2026: $kind", (open, sentence) => {
    expect(stepStanding(open, day("2026-11-06"))).toBe(sentence);
  });
});

it("names every step, and says what is asked in one sentence", () => {
  expect(stepNames.exchange).toBe("Exchange");
  expect(stepNames["tube out"]).toBe("Tube out: decide");
  expect(stepNames["assess the date"]).toBe("Assess the date");
  for (const kind of stepKinds) expect(stepAsks[kind]).toMatch(/^[A-Z].*\.$/);
});

it.each([
  [{ role: "nurse", rung: 0 }, "scheduling nurse"],
  [{ role: "nurse", rung: 1 }, "scheduling nurse, asks a physician"],
  [{ role: "nurse", rung: 2 }, "physician"],
  [{ role: "caller", rung: 0 }, "caller"],
  [{ role: "physician", rung: 1 }, "physician"],
] as const)("owner %j", (owner, words) => expect(ownerWords(owner)).toBe(words));
