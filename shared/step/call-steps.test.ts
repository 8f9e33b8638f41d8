import { describe, expect, it } from "vitest";
import type { Reading } from "#shared/output/reading.ts";
import { exampleProtocol } from "#shared/protocol/example.ts";
import { fold } from "#shared/tube/fold.ts";
import { at, reading } from "#tests/factories/reading.ts";
import {
  flagDone,
  flagHanded,
  flagRaised,
  letterSent,
  notReachedDecided,
  rang,
  toldOfTube,
} from "#tests/support/call-factories.ts";
import {
  called,
  died,
  type Entry,
  exchanged,
  hospiceDecided,
  placed,
  removed,
  takenOver,
  trialPassed,
  trialStarted,
  voided,
  whereaboutsNoted,
} from "#tests/support/factories.ts";
import { books, history } from "#tests/support/told.ts";
import { visitBooked, visitNoted } from "#tests/support/visit-factories.ts";
import { openSteps } from "./open-steps.ts";
import type { OpenStep } from "./step.ts";

/**
 * When a call is due, by the example rows (common practice, no source): day 1-3 after placement, exchange or discharge; collection drains every 7
 * to 14 days; 21 days and 2 working days before an exchange; day 1-3 after a removal. Days by any calendar of 2026: 14 August is a Friday.
 */
const steps = (entries: readonly Entry[], of = books()): readonly OpenStep[] =>
  openSteps(fold(history(...entries)), of);
const only = (kind: OpenStep["kind"], entries: readonly Entry[], of = books()): OpenStep | undefined =>
  steps(entries, of).find((step) => step.kind === kind);
const call = (...entries: readonly Entry[]) => {
  const step = only("call", entries);
  return step === undefined ? null : [step.earliest, step.target, step.latest];
};
const codes = (step: OpenStep | undefined): readonly string[] => step?.why.map(({ code }) => code) ?? [];

const nephrostomy = placed();
const drain = placed({ kind: "abscess drain", side: "not sided" });
const reached = rang({ on: "2026-08-17", at: "10:00", outcome: "reached the patient" });

describe("a call is due", () => {
  it("after a placement, and again after an exchange: on an open day", () => {
    expect(call(nephrostomy)).toEqual(["2026-08-17", "2026-08-17", "2026-08-17"]);
    const after = [nephrostomy, reached, exchanged({ on: "2026-10-28" })];
    expect(codes(only("call", after))).toContain("first-call");
    expect(call(...after)).toEqual(["2026-10-29", "2026-10-29", "2026-10-30"]);
  });

  it("of a drain of a collection seven to fourteen days after the last, until it is out", () => {
    expect(call(drain, reached)).toEqual(["2026-08-24", "2026-08-24", "2026-08-31"]);
    const again = rang({ on: "2026-08-31", outcome: "reached a carer" });
    expect(call(drain, reached, again)).toEqual(["2026-09-07", "2026-09-07", "2026-09-14"]);
    expect(call(takenOver({ kind: "abscess drain", side: "not sided", on: "2026-08-10" }))).toEqual([
      "2026-08-17",
      "2026-08-17",
      "2026-08-24",
    ]);
    expect(codes(only("call", [nephrostomy, reached]))).not.toContain("collection-call");
  });

  it("21 days before an exchange, then 2 working days before it, and not again after that", () => {
    // The exchange is due on Friday 30 October: 21 days before it is Friday the 9th, 2 working days Wednesday the 28th.
    expect(call(nephrostomy, reached)).toEqual(["2026-10-09", "2026-10-09", "2026-10-30"]);
    const weeks = rang({ on: "2026-10-12", outcome: "reached the patient" });
    expect(call(nephrostomy, reached, weeks)).toEqual(["2026-10-28", "2026-10-28", "2026-10-30"]);
    const days = rang({ on: "2026-10-28", outcome: "reached the patient" });
    expect(call(nephrostomy, reached, weeks, days)).toBeNull();
  });

  it("before the visit that is booked, whatever day the clock asks for", () => {
    expect(call(nephrostomy, reached, visitBooked({ visitOn: "2026-10-20" }))).toEqual([
      "2026-09-29",
      "2026-09-29",
      "2026-10-20",
    ]);
  });

  it("when nobody came, until somebody is reached after that", () => {
    const missed = [
      nephrostomy,
      reached,
      visitBooked(),
      visitNoted({ on: "2026-11-04", state: "did not attend" }),
    ];
    const step = only("call", missed);
    expect(codes(step)).toContain("missed-call");
    const before = rang({ on: "2026-11-04", at: "08:00", outcome: "reached the patient" });
    const noted = visitNoted({ on: "2026-11-04", at: "12:00", state: "did not attend" });
    expect(codes(only("call", [nephrostomy, visitBooked(), before, noted]))).toContain("missed-call");
    const after = rang({ on: "2026-11-04", at: "13:00", outcome: "reached the patient" });
    expect(codes(only("call", [nephrostomy, visitBooked(), noted, after]))).not.toContain("missed-call");
  });

  it("after a discharge; an inpatient's clock goes on, and the ward is rung", () => {
    const inside = [nephrostomy, reached, whereaboutsNoted({ on: "2026-09-01" })];
    expect(codes(only("call", inside))).toEqual(["exchange-call", "inpatient"]);
    expect(only("whereabouts", inside)?.dueOn).toBe("2026-09-04");
    const home = [...inside, whereaboutsNoted({ on: "2026-09-07", place: "at home" })];
    expect(call(...home)).toEqual(["2026-09-08", "2026-09-08", "2026-09-10"]);
    const rung = rang({ on: "2026-09-08", outcome: "reached the patient" });
    expect(codes(only("call", [...home, rung]))).not.toContain("discharge-call");
    expect(codes(only("call", [nephrostomy, reached, whereaboutsNoted({ place: "at home" })]))).not.toContain(
      "discharge-call",
    );
  });

  it("after a removal that was seen here, once; not after one that was told, nor of one long ago", () => {
    const out = [drain, reached, removed({ on: "2026-09-01" })];
    expect(call(...out)).toEqual(["2026-09-02", "2026-09-02", "2026-09-04"]);
    expect(steps(out).map(({ kind }) => kind)).toEqual(["call"]);
    expect(
      call(...out, rang({ on: "2026-09-01", at: "18:00", outcome: "reached the patient" })),
    ).not.toBeNull();
    expect(call(...out, rang({ on: "2026-09-02", outcome: "reached the patient" }))).toBeNull();
    expect(call(drain, reached, removed({ on: "2026-09-01", recordedOn: "2026-11-01" }))).toBeNull();
    expect(call(...out, died({ on: "2026-09-02" }))).toBeNull();
  });

  it("once for all of a patient's tubes, on the day of the first, each with its why", () => {
    const two = [drain, placed({ tube: "tube-2", number: 2 }), reached];
    expect(steps(two).filter(({ kind }) => kind === "call")).toHaveLength(1);
    const step = only("call", two);
    expect(step).toMatchObject({ tubeId: null, dueOn: "2026-08-24" });
    expect(codes(step)).toEqual(["of-tube", "collection-call", "of-tube", "exchange-call"]);
  });
});

describe("nobody reached", () => {
  const first = rang({ on: "2026-08-17", at: "10:00" });
  const second = rang({ on: "2026-08-18", at: "14:00" });
  const third = rang({ on: "2026-08-19", at: "18:00" });
  const ladder = [
    ["call", "2026-08-17"],
    ["call", "2026-08-17"],
    ["call", "2026-08-19"],
    ["alternate contact", "2026-08-20"],
    ["letter", "2026-08-21"],
    ["ask the referrer", "2026-08-28"],
    ["not reached", "2026-09-04"],
  ] as const;
  const tries = [
    first,
    second,
    third,
    rang({ on: "2026-08-20", to: "the alternate contact" }),
    letterSent({ on: "2026-08-21" }),
    rang({ on: "2026-08-28", to: "the referrer" }),
  ];

  it.each(ladder.map(([kind, on], tried) => [tried, kind, on] as const))(
    "%i tries: %s on %s, and the exchange date stands all the while",
    (tried, kind, on) => {
      const entries = [nephrostomy, ...tries.slice(0, tried)];
      const found = steps(entries).filter((step) => ladder.some(([name]) => name === step.kind));
      expect(found.map((step) => [step.kind, step.dueOn])).toEqual([[kind, on]]);
      expect(only("exchange", entries)?.target).toBe("2026-10-30");
      expect(found[0]?.owner.role).toBe(kind === "not reached" ? "physician" : "caller");
    },
  );

  it("a physician decides, and the calls go on from that day", () => {
    const decided = [nephrostomy, ...tries, notReachedDecided({ on: "2026-09-04", again: "2026-09-14" })];
    expect(only("call", decided)).toMatchObject({ dueOn: "2026-09-14", tubeId: "tube-1" });
    const again = [...decided, rang({ on: "2026-09-14", at: "10:00" })];
    expect(only("call", again)).toMatchObject({ dueOn: "2026-09-15" });
  });

  it("a day that a physician names on which the clinic is closed is moved to the next open one, and said; not in a trial", () => {
    const saturday = [nephrostomy, ...tries, notReachedDecided({ on: "2026-09-04", again: "2026-09-12" })];
    const step = only("call", saturday);
    expect(step).toMatchObject({ dueOn: "2026-09-14", earliest: "2026-09-14" });
    expect(step?.why.slice(-2)).toMatchObject([
      { code: "call-again", args: { day: "2026-09-12" } },
      { code: "moved", args: { from: "2026-09-12", to: "2026-09-14", because: "closed-weekday" } },
    ]);
    expect(only("call", [...saturday, trialStarted({ on: "2026-09-04" })])?.dueOn).toBe("2026-09-12");
    const never = books({ calendar: () => ({ version: 1, openWeekdays: [], closures: [] }) });
    expect(only("call", saturday, never)?.dueOn).toBe("2026-09-12");
  });

  it("a try on a closed day of a trial, to which a physician put the calls off, counts on after the trial is over", () => {
    // Saturday 1 August 2026; the trial is over on the Sunday, and Monday is the next open day.
    const asked = [
      placed({ on: "2026-07-20" }),
      trialStarted({ on: "2026-07-27" }),
      rang({ on: "2026-07-28", at: "10:00" }),
      notReachedDecided({ on: "2026-07-29", again: "2026-08-01" }),
      rang({ on: "2026-08-01", at: "09:30", outcome: "call back", back: "2026-08-03", backAt: "18:30" }),
    ];
    const back = { dueOn: "2026-08-03" };
    expect(only("call back", asked)).toMatchObject(back);
    const over = only("call back", [...asked, trialPassed({ on: "2026-08-02" })]);
    expect(over).toMatchObject(back);
    expect(over?.why.at(-1)).toMatchObject({ code: "next-try", args: { tried: 1, at: "18:30" } });
  });

  it("a wrong number is a loose end until somebody is reached", () => {
    const wrong = [nephrostomy, rang({ outcome: "wrong number", number: "555 0117" })];
    expect(codes(only("find out", wrong))).toEqual(["wrong-number"]);
    expect(
      only("find out", [...wrong, rang({ on: "2026-08-18", outcome: "reached a carer" })]),
    ).toBeUndefined();
  });

  it("reached, the next is a call again; a death stops them at once, undone all is as before", () => {
    const all = [nephrostomy, ...tries];
    const back = rang({ on: "2026-09-01", outcome: "reached the patient" });
    expect(only("call", [...all, back])?.dueOn).toBe("2026-10-09");
    expect(steps([...all, died({ on: "2026-09-01" })])).toEqual([]);
    const undone = [...all, died({ id: "death", on: "2026-09-01" }), voided("death", { on: "2026-09-02" })];
    expect(steps(undone)).toEqual(steps(all));
  });

  it("a trial is rung again on the same day and on closed days", () => {
    // Saturday 5 September is the first day of the trial; the clinic is shut.
    const trial = [nephrostomy, reached, trialStarted({ on: "2026-09-04", at: "11:00" })];
    const saturday = rang({ on: "2026-09-05", at: "09:40" });
    expect(only("clamp trial", [...trial, saturday])?.dueOn).toBe("2026-09-05");
    expect(only("call", [...trial, saturday])?.dueOn).toBe("2026-09-05");
    const again = rang({ on: "2026-09-05", at: "18:00" });
    expect(only("call", [...trial, saturday, again])?.dueOn).toBe("2026-09-06");
  });

  it("in hospice a clinician stops the calls until a day; then they are asked about", () => {
    const entries = [
      nephrostomy,
      first,
      hospiceDecided({ on: "2026-08-18", calls: "stop", until: "2026-12-31" }),
    ];
    expect(only("call", entries)).toBeUndefined();
    expect(only("hospice", entries)?.dueOn).toBe("2026-12-31");
  });
});

describe("a red flag", () => {
  const raised = [nephrostomy, reached, flagRaised({ of: { tube: "tube-1", number: 1 } })];

  it("comes before everything, the caller's until it is handed, then a physician's until what was done is recorded", () => {
    expect(steps(raised)[0]).toMatchObject({ kind: "red flag", tubeId: "tube-1", owner: { role: "caller" } });
    const handed = [...raised, flagHanded()];
    expect(steps(handed)[0]).toMatchObject({ kind: "red flag", owner: { role: "physician" } });
    expect(codes(steps(handed)[0])).toEqual(["red-flag", "flag-handed"]);
    expect(only("red flag", [...handed, flagDone({ on: "2026-08-18" })])).toBeUndefined();
  });

  it("outlasts the record, and ends with a death", () => {
    expect(only("red flag", [...raised, removed({ on: "2026-08-18" })])).toBeDefined();
    expect(steps([...raised, died({ on: "2026-08-18" })])).toEqual([]);
  });

  it("that is done cannot be handed or done again", () => {
    const twice = fold(history(...raised, flagDone(), flagHanded({ on: "2026-08-18" })));
    expect(twice.contradictions.map(({ code }) => code)).toEqual(["flag-not-open"]);
  });
});

describe("between calls", () => {
  const log: Reading = reading({ from: at("2026-08-23T12:00Z"), to: at("2026-08-24T12:00Z") });
  const of = books({ readings: () => [log] });

  it("a diary that stops is asked for after its row's days, or so long after a call", () => {
    expect(only("diary", [drain, reached], of)?.dueOn).toBe("2026-08-31");
    expect(
      only("diary", [drain, rang({ on: "2026-08-28", outcome: "reached the patient" })], of)?.dueOn,
    ).toBe("2026-09-04");
    expect(only("diary", [drain, reached])).toBeUndefined();
    const calls = { ...exampleProtocol.calls!, diaryMissing: null };
    const protocol = () => ({ ...exampleProtocol, calls });
    expect(only("diary", [drain, reached], { ...of, protocol })).toBeUndefined();
  });

  it("a tube wholly inside asks that the patient is told of it, in their language", () => {
    const stent = placed({ kind: "ureteral stent" });
    expect(only("tell of the tube", [stent])?.owner.role).toBe("caller");
    expect(only("tell of the tube", [stent, toldOfTube()])).toBeUndefined();
    expect(only("tell of the tube", [nephrostomy])).toBeUndefined();
  });

  it("a call about one tube, as it was recorded before, counts for the patient", () => {
    const missed = [nephrostomy, called({ on: "2026-08-17", outcome: "not reached" })];
    expect(only("call", missed)?.dueOn).toBe("2026-08-18");
  });
});
