import { describe, expect, it } from "vitest";
import { day } from "#shared/day/day.ts";
import { exampleProtocol } from "#shared/protocol/example.ts";
import { openSteps } from "#shared/step/open-steps.ts";
import { confirmed, unknownFact } from "#shared/tube/certainty.ts";
import type { TubeFacts } from "#shared/tube/facts.ts";
import { fold } from "#shared/tube/fold.ts";
import type { TubeKind } from "#shared/tube/kind/kinds.ts";
import { estimated, reported } from "#tests/factories/tube-inside.ts";
import {
  type Entry,
  exchanged,
  F,
  newPuncture,
  placed,
  removalDecided,
  salvaged,
  takenOver,
} from "#tests/support/factories.ts";
import { books, history } from "#tests/support/told.ts";
import { cardFront, cardIfOut } from "./tube-card.ts";

type Given = { today?: string; bornOn?: null };

function front(entries: readonly Entry[], { today = "2026-09-01", bornOn }: Given = {}): string[] {
  const state = fold(history(...entries));
  const steps = openSteps(state, books(bornOn === null ? { bornOn } : {}));
  return cardFront({ tube: state.tubes[0]!, steps, today: day(today) }).map(
    ({ word, says }) => `${word}: ${says}`,
  );
}

const loop: TubeFacts = { retention: confirmed("locking loop") };
const balloon = { kind: "suprapubic catheter", side: "not sided" } as const;

describe("the front of the card", () => {
  it("has size, what holds it, since when, and by when", () => {
    // 14 August and the 90 days of the example row for a nephrostomy.
    expect(front([placed({ facts: loop })])).toEqual([
      "Size: 8 F",
      "Held by: locking loop",
      "Placed on: Fri 14 Aug 2026",
      "Exchange by: Thu 12 Nov 2026",
    ]);
  });

  it("says what is not known, and how well the rest is", () => {
    const unsure = front([placed({ size: unknownFact, on: "?" })]);
    expect(unsure).toEqual([
      "Size: unknown",
      "Held by: unknown",
      "Placed on: unknown date",
      "Out or exchanged by: not known, ask the clinic",
    ]);
    expect(front([placed({ size: estimated(F(8)) })])[0]).toBe("Size: about 8 F");
    expect(front([placed({ size: reported(F(8)) })])[0]).toBe("Size: 8 F (reported)");
  });

  it("says how much water is in a balloon, or that nobody knows", () => {
    const held = confirmed("balloon" as const);
    expect(front([placed({ ...balloon, facts: { retention: held, balloonMl: confirmed(10) } })])[1]).toBe(
      "Held by: balloon, water 10 mL",
    );
    expect(front([placed({ ...balloon, facts: { retention: held } })])[1]).toBe(
      "Held by: balloon, water unknown",
    );
    expect(front([placed(balloon)])[1]).toBe("Held by: unknown, water unknown");
  });
});

describe("since when", () => {
  const since = (...entries: readonly Entry[]): string[] => front(entries).slice(2, -1);

  it("an exchange stands beside the first placing", () => {
    expect(since(placed({ on: "2026-06-01" }), exchanged({ on: "2026-08-14" }))).toEqual([
      "First placed on: Mon 1 Jun 2026",
      "Last exchanged on: Fri 14 Aug 2026",
    ]);
  });

  it("one that nobody here saw says so", () => {
    const elsewhere = exchanged({ on: "2026-08-14", elsewhere: "another hospital" });
    expect(since(placed({ on: "2026-06-01" }), elsewhere)).toEqual([
      "First placed on: Mon 1 Jun 2026",
      "Last exchanged on: Fri 14 Aug 2026, reported and not confirmed",
    ]);
  });

  it("what is no exchange is not called one", () => {
    expect(since(placed({ on: "2026-06-01" }), salvaged({ on: "2026-08-14" }))).toEqual([
      "First placed on: Mon 1 Jun 2026",
      "In place since: Fri 14 Aug 2026",
    ]);
    expect(since(takenOver({ on: "2026-08-14" }))).toEqual([
      "First placed on: unknown date",
      "In place since: Fri 14 Aug 2026",
    ]);
  });

  it("a new puncture is the first placing", () => {
    expect(since(placed({ on: "2026-06-01" }), newPuncture({ on: "2026-08-14" }))).toEqual([
      "Placed on: Fri 14 Aug 2026",
    ]);
  });
});

describe("by when", () => {
  const byWhen = (entries: readonly Entry[], given?: Given): string | undefined =>
    front(entries, given).at(-1);

  it.each<[string, Entry, string]>([
    ["a drain", placed({ kind: "abscess drain", side: "not sided" }), "Review by: Thu 12 Nov 2026"],
    [
      "a stent without the operator's date",
      placed({ kind: "ureteral stent" }),
      "Remove or exchange by: Thu 12 Nov 2026",
    ],
  ])("%s", (_, entry, says) => {
    expect(byWhen([entry])).toBe(says);
  });

  it("the call of the first days is none", () => {
    // Its latest day is 17 August, long before.
    expect(byWhen([placed()], { today: "2026-08-15" })).toBe("Exchange by: Thu 12 Nov 2026");
  });

  it("a decided removal that comes first is what is asked", () => {
    expect(byWhen([placed(), removalDecided({ on: "2026-08-20", by: "2026-09-01" })])).toBe(
      "Remove by: Tue 1 Sep 2026",
    );
  });

  it("that rests on a rough date or an unknown age is provisional", () => {
    expect(byWhen([placed({ on: "2026-08" })])).toBe("Exchange by: Fri 30 Oct 2026, provisional");
    expect(byWhen([placed()], { bornOn: null })).toBe("Exchange by: Thu 12 Nov 2026, provisional");
  });

  it("that has passed says so; on the day itself it has not", () => {
    expect(byWhen([placed()], { today: "2026-11-12" })).toBe("Exchange by: Thu 12 Nov 2026");
    expect(byWhen([placed()], { today: "2026-11-13" })).toBe(
      "Exchange by: Thu 12 Nov 2026 (passed: call the clinic)",
    );
  });
});

describe("the back of the card: if it comes out", () => {
  const back = (
    kind: TubeKind,
    protocol: Pick<typeof exampleProtocol, "tubeOut"> = exampleProtocol,
  ): string[] =>
    cardIfOut(protocol, fold(history(placed({ kind }))).tubes[0]!).map(
      ({ word, says }) => `${word}: ${says}`,
    );

  const part =
    "If part of it comes out: do not use, do not push back. Until you reach someone: secure as it is, ring.";

  it.each<[TubeKind, string]>([
    [
      "nephrostomy",
      "If it comes out: call the clinic. Until you reach someone: keep the old tube, cover the site, nothing pushed in.",
    ],
    [
      "balloon gastrostomy",
      "If it comes out: call the clinic. Until you reach someone: stop the feed, keep the tube.",
    ],
    [
      "chest tube",
      "If it comes out: emergency. Until you reach someone: cover the site; breathless: emergency services.",
    ],
    ["cecostomy", "If it comes out: the clinic's list has no line, so call the clinic."],
  ])("%s", (kind, says) => {
    expect(back(kind)).toEqual([says, part]);
  });

  it("without rows it says that there are none", () => {
    expect(back("nephrostomy", { tubeOut: [] })).toEqual([
      "If it comes out: the clinic's list has no line, so call the clinic.",
    ]);
  });

  it("a stent cannot fall out", () => {
    expect(back("ureteral stent")).toEqual(["It lies wholly inside: no part of it shows."]);
  });
});
