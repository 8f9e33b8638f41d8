import { describe, expect, it } from "vitest";
import {
  acceptedElsewhere,
  anchorsRemoved,
  balloonChecked,
  bled,
  blocked,
  broken,
  called,
  capped,
  checked,
  conditionsNoted,
  died,
  downsized,
  type Entry,
  exchanged,
  F,
  factsNoted,
  fellOut,
  flushed,
  handedOver,
  hospiceDecided,
  infected,
  leaking,
  notReplaced,
  partlyDislodged,
  placed,
  planRecorded,
  reconcileAsked,
  reconciled,
  removalDecided,
  removed,
  repositioned,
  suctionChanged,
  tipPosition,
  transferred,
  trialFailed,
  trialPassed,
  trialStarted,
  unblocked,
  uncapped,
  whereaboutsNoted,
} from "#tests/support/factories.ts";
import { command, history, now } from "#tests/support/told.ts";
import { confirmed, unknownFact } from "./certainty.ts";
import { decide } from "./decide.ts";
import { fold } from "./fold.ts";
import type { Side } from "./vocabulary.ts";

const state = (...entries: readonly Entry[]) => fold(history(...entries));
const tube = (...entries: readonly Entry[]) => state(...entries).tubes[0]!;
const codes = (...entries: readonly Entry[]) => state(...entries).contradictions.map(({ code }) => code);
const kinds = (...entries: readonly Entry[]) => tube(...entries).troubles.map(({ kind }) => kind);

const open = placed();
const g = placed({
  kind: "balloon gastrostomy",
  side: "not sided",
  facts: { balloonMl: confirmed(10), retention: confirmed("balloon") },
});
const out = fellOut({ on: "2026-08-20" });
const left = removed({ on: "2026-08-20", whole: confirmed(false) });
const later = { on: "2026-08-21" } as const;

describe("what cannot be true of a tube's course", () => {
  it.each([
    ["already-out", [open, out, repositioned(later)]],
    ["already-out", [open, out, flushed(later)]],
    ["already-out", [open, out, unblocked(later)]],
    ["already-out", [open, out, trialStarted(later)]],
    ["already-out", [open, out, suctionChanged(later)]],
    ["already-out", [open, out, balloonChecked(later)]],
    ["already-out", [open, out, blocked(later)]],
    ["already-out", [open, out, leaking(later)]],
    ["already-out", [open, out, removalDecided(later)]],
    ["already-out", [open, out, downsized(later)]],
    ["already-on-trial", [open, trialStarted(), trialStarted(later)]],
    ["not-on-trial", [open, trialPassed(later)]],
    ["not-on-trial", [open, trialFailed(later)]],
    ["not-on-trial", [open, trialStarted(), trialPassed(later), trialFailed({ on: "2026-08-22" })]],
    ["no-balloon", [placed({ facts: { retention: confirmed("locking loop") } }), balloonChecked(later)]],
    ["fragment-inside", [open, left, flushed(later)]],
    ["fragment-inside", [open, left, broken(later)]],
    ["fragment-inside", [open, left, downsized(later)]],
    ["event-after-end", [open, acceptedElsewhere(), flushed(later)]],
    ["event-after-end", [open, acceptedElsewhere(), handedOver(later)]],
    ["event-before-opening", [open, reconciled({ ...later, sides: [side("tube-9", 1)] })]],
    ["event-before-opening", [infected()]],
  ])("%s (%#)", (code, entries) => {
    expect(codes(...entries)).toEqual([code]);
  });

  it.each([
    ["a site infected after the tube was lost", [open, out, infected(later), bled({ ...later, order: 1 })]],
    ["a cap taken off a trial", [open, trialStarted(), uncapped(later)]],
    ["unblocked though nobody recorded it blocked", [open, unblocked(later)]],
    ["a balloon where nobody recorded what holds it", [open, balloonChecked(later)]],
    ["accepted elsewhere without a handover", [open, acceptedElsewhere(later)]],
    ["a tube that was lost, accepted elsewhere", [open, out, acceptedElsewhere(later)]],
    ["a fragment, accepted elsewhere", [open, left, acceptedElsewhere(later)]],
    ["whereabouts and sides after a death", [open, died(), whereaboutsNoted(later), reconcileAsked(later)]],
    ["flushed on the day of its acceptance", [open, flushed(), acceptedElsewhere()]],
  ])("%s is none", (_name, entries) => {
    expect(codes(...entries)).toEqual([]);
  });
});

function side(id: string, number: number) {
  return { tube: id, number, side: confirmed<Side>("right") };
}

describe("what a tube's course makes of it", () => {
  it("a downsize is another catheter through the same tract", () => {
    expect(tube(open, downsized({ ...later, size: F(7) })).size).toEqual(confirmed(F(7)));
  });

  it("a reposition puts a tube right that was pulled back, and leaves its tip to be confirmed", () => {
    const back = [open, tipPosition(), partlyDislodged({ on: "2026-08-18" })];
    expect(tube(...back).dislodged?.part).toBe(true);
    expect(tube(...back, repositioned(later))).toMatchObject({ dislodged: null, tipConfirmed: null });
  });

  it.each([
    ["hard", ["hard to flush"]],
    ["not at all", ["hard to flush"]],
    ["easily", []],
  ] as const)("flushed %s", (went, concerns) => {
    const before = [open, checked({ concerns: ["hard to flush"] })];
    expect(tube(...before, flushed({ ...later, went })).concerns).toEqual(concerns);
  });

  it("a trial sets the mode, and coming out sets the next", () => {
    expect(tube(open, trialStarted()).mode).toBe("on a clamp trial");
    expect(tube(open, trialStarted(), trialPassed(later)).mode).toBe("capped");
    expect(tube(open, trialStarted(), trialFailed(later)).mode).toBe("to bag");
  });

  it.each([
    ["capped", capped(later), "capped"],
    ["uncapped", uncapped(later), "to bag"],
    ["set to suction", suctionChanged(later), "to suction"],
    ["noted to run to bag", factsNoted({ ...later, mode: "to bag" }), "to bag"],
  ] as const)("%s during a trial: the trial is over without having come out", (_name, entry, mode) => {
    expect(tube(open, trialStarted(), entry)).toMatchObject({ mode, trial: null });
  });

  it("a trial counts the calls that reached somebody since it began", () => {
    const calls = [called(), trialStarted({ on: "2026-08-17" }), called({ on: "2026-08-18" })];
    const missed = called({ on: "2026-08-19", outcome: "not reached" });
    expect(tube(open, ...calls, missed).trial?.calls).toBe(1);
  });

  it("anchors removed: what fixes it now is what was said, or unknown", () => {
    const fixed = placed({ facts: { fixation: confirmed("2 anchors") } });
    expect(tube(fixed, anchorsRemoved(later)).fixation).toEqual(unknownFact);
    const disc = confirmed("disc");
    expect(tube(fixed, anchorsRemoved({ ...later, fixation: disc })).fixation).toEqual(disc);
  });

  it("water: the loss is what was filled less what is found; unknown on either side is no loss of zero", () => {
    const check = (on: string, found: number, refilled: number) =>
      balloonChecked({ on, found: confirmed(found), refilled: confirmed(refilled) });
    expect(tube(g, check("2026-08-28", 9.5, 10), check("2026-09-04", 9.4, 10)).balloon?.lossesMl).toEqual([
      0.5, 0.6,
    ]);
    const unseen = balloonChecked({ on: "2026-08-28", found: unknownFact, refilled: unknownFact });
    expect(tube(g, unseen, check("2026-09-04", 8, 10)).balloon?.lossesMl).toEqual([null, null]);
    expect(tube(g, check("2026-08-28", 8, 10), exchanged({ on: "2026-08-29" })).balloon).toBeNull();
  });

  it("a tube that was told removed and is then flushed was still in", () => {
    const told = removed({ on: "2026-08-20", toldBy: "the ward" });
    expect(tube(open, told, flushed(later))).toMatchObject({ status: "in", ending: null, unverified: null });
  });

  it.each([
    ["a piece inside", confirmed(true), "fragment retained", "broken"],
    ["no piece inside", confirmed(false), "in", null],
    ["nobody knows", unknownFact, "in", null],
  ] as const)("broken, %s", (_name, fragmentInside, status, ending) => {
    const after = tube(open, broken({ ...later, fragmentInside }));
    expect(after.status).toBe(status);
    expect(after.ending?.kind ?? null).toBe(ending);
    expect(after.troubles.map(({ kind }) => kind)).toEqual(["broken"]);
  });

  it("found broken after it fell out, a piece inside: out is not the end", () => {
    const found = broken({ ...later, fragmentInside: confirmed(true) });
    expect(tube(open, out, found).status).toBe("fragment retained");
    expect(codes(open, out, found, notReplaced({ on: "2026-08-22" }))).toEqual(["not-out"]);
  });
});

describe("a trouble stands until somebody has looked", () => {
  const four = [open, blocked(), leaking({ order: 1 }), infected({ order: 2 }), bled({ order: 3 })];

  it.each([
    ["a check", checked(later), []],
    ["an exchange", exchanged(later), ["infected", "bled"]],
    ["a loss of the tube", fellOut(later), ["infected", "bled"]],
    ["a flush", flushed(later), ["blocked", "leaking", "infected", "bled"]],
    ["unblocking", unblocked(later), ["leaking", "infected", "bled"]],
    ["a call", called(later), ["blocked", "leaking", "infected", "bled"]],
  ] as const)("after %s", (_name, entry, stands) => {
    expect(kinds(...four, entry)).toEqual(stands);
  });

  it.each([
    ["leaking", leaking({ soaking: confirmed(false) }), false],
    ["leaking", leaking({ soaking: confirmed(true) }), true],
    ["leaking", leaking({ soaking: unknownFact }), true],
    ["infected", infected({ fever: unknownFact }), true],
    ["infected", infected(), false],
    ["bled", bled({ heavy: unknownFact }), true],
    ["bled", bled(), false],
    ["blocked", blocked(), true],
  ] as const)("%s: grave unless known not to be (%#)", (_name, entry, grave) => {
    expect(tube(open, entry).troubles[0]?.grave).toBe(grave);
  });
});

describe("who has the care", () => {
  it("a removal decided takes the place of a plan to remove or to review, not of an exchange", () => {
    const decided = (act: "exchange" | "remove" | "review") =>
      tube(open, planRecorded({ act, by: "2026-09-18" }), removalDecided({ ...later, by: "2026-09-01" }));
    expect(decided("remove").plan).toBeNull();
    expect(decided("review").plan).toBeNull();
    expect(decided("exchange").plan?.act).toBe("exchange");
    expect(decided("exchange").removal?.by).toBe("2026-09-01");
  });

  it("a plan recorded after it takes its place; an exchange does not", () => {
    const decided = [open, removalDecided({ owner: { role: "physician", staffId: "staff-1" } })];
    expect(tube(...decided, planRecorded({ ...later, act: "review", by: "2026-09-18" })).removal).toBeNull();
    const renewed = tube(...decided, exchanged(later));
    expect(renewed.removal).not.toBeNull();
    expect(renewed.owners).toEqual({ remove: { role: "physician", staffId: "staff-1" } });
  });

  it("a handover ends nothing; acceptance by a named person does", () => {
    const given = tube(open, handedOver(later));
    expect(given).toMatchObject({ status: "in", handover: { to: "the urology service" } });
    const taken = tube(open, handedOver(later), acceptedElsewhere({ on: "2026-08-24" }));
    expect(taken).toMatchObject({ status: "ended", ending: { kind: "accepted elsewhere" }, handover: null });
  });

  it("what is to be found out goes with the old catheter, unless the next is a stranger's too", () => {
    const asked = [open, transferred({ findOut: ["size"] })];
    expect(tube(...asked, exchanged(later)).toFindOut).toBeNull();
    expect(tube(...asked, exchanged({ ...later, elsewhere: "Far Dale General" })).toFindOut?.what).toEqual([
      "size",
    ]);
  });

  it("a hospice decision stands as long as the patient is in hospice", () => {
    const noted = (yes: boolean, on: string) =>
      conditionsNoted({ on, conditions: { hospice: confirmed(yes) } });
    expect(state(open).hospice).toBeNull();
    expect(state(open, noted(true, "2026-08-20")).hospice?.decision).toBeNull();
    const decided = state(open, hospiceDecided({ on: "2026-08-21" }), noted(true, "2026-08-22"));
    expect(decided.hospice?.decision?.decidedBy).toBe("Dr. Orla Invented");
    expect(decided.conditions.hospice).toEqual(confirmed(true));
    expect(state(open, hospiceDecided(), noted(false, "2026-08-22")).hospice).toBeNull();
  });

  it("reconciled closes what was asked about the same, and sets the sides named", () => {
    const asked = [open, reconcileAsked(later), reconcileAsked({ ...later, about: "which tube" })];
    const after = state(...asked, reconciled({ on: "2026-08-22", sides: [side("tube-1", 1)] }));
    expect(after.reconciles.map(({ about }) => about)).toEqual(["which tube"]);
    expect(after.tubes[0]?.side).toEqual(confirmed("right"));
  });
});

describe("what is asked to be recorded", () => {
  const refused = (entries: readonly Entry[], asked: Entry) => {
    const decision = decide(history(...entries), command(asked), now("2026-09-30"));
    return decision.ok ? [] : decision.refusals.map(({ code }) => code);
  };

  it.each([
    [F(7), []],
    [F(8), ["downsize-not-smaller"]],
    [F(9), ["downsize-not-smaller"]],
    [unknownFact, []],
  ])("a downsize from 8 F (%#)", (size, refusals) => {
    expect(refused([open], downsized({ ...later, size }))).toEqual(refusals);
  });

  it.each([
    ["of this patient", [side("tube-1", 1)], []],
    ["of nobody", [side("tube-7", 7)], ["tube-unknown"]],
    ["twice", [side("tube-1", 1), side("tube-1", 1)], ["choice-repeated"]],
  ])("sides reconciled of a tube %s", (_name, sides, refusals) => {
    expect(refused([open], reconciled({ ...later, sides }))).toEqual(refusals);
  });

  it("a new contradiction is refused by its own code", () => {
    expect(refused([open], trialPassed(later))).toEqual(["not-on-trial"]);
    expect(refused([open, trialStarted()], trialStarted(later))).toEqual(["already-on-trial"]);
  });

  it("adding never conflicts: a flush beside an exchange that the form had not seen", () => {
    const decision = decide(
      history(open, exchanged({ on: "2026-08-20" })),
      command(flushed(later), 1),
      now("2026-09-30"),
    );
    expect(decision.ok).toBe(true);
  });

  it("changing does: a trial beside a cap that the form had not seen", () => {
    const decision = decide(history(open, capped()), command(trialStarted(later), 1), now("2026-09-30"));
    expect(decision).toMatchObject({ ok: false, refusals: [{ code: "changed-meanwhile" }] });
  });
});
