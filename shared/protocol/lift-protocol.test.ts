import { describe, expect, it } from "vitest";
import { frozenEvents } from "#tests/support/frozen.ts";
import { exampleProtocol } from "./example.ts";
import { liftProtocol } from "./lift-protocol.ts";
import { PROTOCOL_SHAPE, protocolSchema } from "./protocol.ts";

/** As the first release stored it. */
const first = frozenEvents("0.1.0").protocol as { readonly intervals: readonly Record<string, unknown>[] };

describe("a version of the first shape, lifted", () => {
  const lifted = protocolSchema.parse(liftProtocol(first));

  it("reads by the schema of today, and keeps every figure that it had", () => {
    expect(lifted.shape).toBe(PROTOCOL_SHAPE);
    expect(lifted).toMatchObject(first);
  });

  it("has no row for what it never spoke of: no date moves because the program brings more today", () => {
    expect(lifted).toMatchObject({
      flush: [],
      balloon: null,
      tips: [],
      anchors: [],
      outputRows: null,
      tubeOut: [],
      redFlags: [],
      calls: null,
      bleeding: null,
      planning: null,
      visits: null,
    });
    expect(lifted.intervals).toHaveLength(first.intervals.length);
    for (const row of lifted.intervals)
      expect(row).toMatchObject({ turn: "any", matureFrom: null, notExchangedBefore: null, byRoute: [] });
  });

  it("leaves what was stored as it was", () => {
    const stored = structuredClone(first);
    liftProtocol(stored);
    expect(stored).toEqual(first);
  });
});

describe("a version of the second shape, lifted", () => {
  /** As the second release stored it. */
  const second = frozenEvents("0.2.0").protocol as { readonly passage: object; readonly planning: object };
  const lifted = protocolSchema.parse(liftProtocol(second));

  it("keeps what it had, and compares a wire by its stated size as it did", () => {
    expect(lifted.passage).toMatchObject(second.passage);
    expect(lifted.passage.outsideTolerance).toEqual({ wire: 0, device: null, source: "CP" });
    expect(lifted.planning).toMatchObject(second.planning);
  });

  it("has no row for letting go, for what is kept ready or for reasons", () => {
    const none = { release: [], notOverWire: [], readyF: null, findInsides: null, reasons: null };
    expect(lifted.planning).toMatchObject(none);
  });

  it("is refused where passage or planning is no row", () => {
    expect(protocolSchema.safeParse(liftProtocol({ ...second, passage: "none" })).success).toBe(false);
    expect(protocolSchema.safeParse(liftProtocol({ ...second, planning: "none" })).success).toBe(false);
  });
});

describe("a version of the third shape, lifted", () => {
  /** As the third release stored it. */
  const third = frozenEvents("0.3.0").protocol as { readonly outputRows: object };
  const lifted = protocolSchema.parse(liftProtocol(third));

  it("keeps its rows of output, and has no row for a fever: it named one in words alone", () => {
    expect(lifted.outputRows).toEqual({ ...third.outputRows, fever: null });
  });

  it("is refused where rows of output are no rows", () => {
    expect(protocolSchema.safeParse(liftProtocol({ ...third, outputRows: "none" })).success).toBe(false);
  });
});

describe("a version of the fourth shape, lifted", () => {
  /** As the fourth release stored it. */
  const fourth = frozenEvents("0.5.0").protocol as {
    readonly calls: object;
    readonly planning: { readonly room: readonly object[] };
  };
  const lifted = protocolSchema.parse(liftProtocol(fourth));

  it("keeps every row that it had; what became of its calls is told below", () => {
    const { calls: _calls, ...rows } = fourth;
    expect(rows).toMatchObject({ shape: 4 });
    expect(lifted).toMatchObject({ ...rows, shape: PROTOCOL_SHAPE });
  });

  it("takes its minutes for those of an exchange, with no row for a further tube and no wish of the room", () => {
    const change = { acts: ["exchange"], further: null, needs: [] };
    expect(fourth.planning.room).toMatchObject([{ kinds: ["nephrostomy"], minutes: 30 }]);
    expect(lifted.planning?.room).toEqual([{ ...fourth.planning.room[0], ...change }]);
  });

  it("has no row for what comes before a visit", () => {
    expect(lifted.visits).toBeNull();
    expect(fourth).not.toHaveProperty("visits");
  });

  it("stays without planning where it had none, and is refused where rows of room are no rows", () => {
    expect(protocolSchema.parse(liftProtocol({ ...fourth, planning: null })).planning).toBeNull();
    for (const room of ["none", ["none"], [7]]) {
      const broken = { ...fourth, planning: { ...fourth.planning, room } };
      expect(protocolSchema.safeParse(liftProtocol(broken)).success).toBe(false);
    }
  });
});

describe("a version of the fifth shape, lifted", () => {
  /** As the fifth release of a table stored it. */
  const fifth = frozenEvents("0.6.0").protocol as {
    readonly calls: { readonly notReached: Readonly<Record<string, unknown>> };
  };
  const lifted = protocolSchema.parse(liftProtocol(fifth));

  it("keeps every row that it had, but for what it named in words alone after the attempts", () => {
    expect(fifth).toMatchObject({ shape: 5 });
    const { lastly, ...notReached } = fifth.calls.notReached;
    expect(lastly).toHaveLength(4);
    expect(lifted).toMatchObject({ ...fifth, shape: PROTOCOL_SHAPE, calls: { ...fifth.calls, notReached } });
    expect(lifted.calls?.notReached).toEqual(notReached);
  });

  it("has no row for what follows the attempts, for hours, for questions or for a diary that stops", () => {
    expect(lifted.calls).toMatchObject({ rungs: [], hours: [], questions: [], diaryMissing: null });
    for (const name of ["rungs", "hours", "questions", "diaryMissing"])
      expect(fifth.calls).not.toHaveProperty(name);
  });

  it("stays without calls, or without attempts, where it had none, and is refused where they are no rows", () => {
    expect(protocolSchema.parse(liftProtocol({ ...fifth, calls: null })).calls).toBeNull();
    const without = liftProtocol({ ...fifth, calls: { ...fifth.calls, notReached: null } });
    expect(protocolSchema.parse(without).calls?.notReached).toBeNull();
    for (const broken of ["none", [7], { ...fifth.calls, notReached: "none" }])
      expect(protocolSchema.safeParse(liftProtocol({ ...fifth, calls: broken })).success).toBe(false);
  });

  it("with more attempts than a draft may name today is read as it stands", () => {
    const notReached = { ...fifth.calls.notReached, attempts: 4 };
    const stored = liftProtocol({ ...fifth, calls: { ...fifth.calls, notReached } });
    expect(protocolSchema.parse(stored).calls?.notReached?.attempts).toBe(4);
  });
});

describe("a version of the sixth shape, lifted", () => {
  /** As the release with calls stored it. */
  const sixth = frozenEvents("0.7.0").protocol as object;

  it("keeps every row that it had, and has no row for anchors or sutures that are due out", () => {
    expect(sixth).toMatchObject({ shape: 6 });
    expect(sixth).not.toHaveProperty("anchors");
    const lifted = protocolSchema.parse(liftProtocol(sixth));
    expect(lifted).toEqual({ ...sixth, shape: PROTOCOL_SHAPE, anchors: [] });
  });
});

describe("what is not of an older shape", () => {
  it("stands as it is: today's", () => {
    expect(liftProtocol(exampleProtocol)).toBe(exampleProtocol);
  });

  it.each([null, 7, "rows", [], { shape: PROTOCOL_SHAPE + 1 }, { shape: 0 }, { shape: "1" }, { shape: 1.5 }])(
    "comes back as it is, for the schema to refuse: %j",
    (stored) => {
      expect(liftProtocol(stored)).toBe(stored);
      expect(protocolSchema.safeParse(liftProtocol(stored)).success).toBe(false);
    },
  );

  it("is refused where intervals are no list", () => {
    expect(protocolSchema.safeParse(liftProtocol({ ...first, intervals: "none" })).success).toBe(false);
    expect(protocolSchema.safeParse(liftProtocol({ ...first, intervals: ["row"] })).success).toBe(false);
  });
});
