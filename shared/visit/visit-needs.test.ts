import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { exampleProtocol } from "#shared/protocol/example.ts";
import type { RoomRow } from "#shared/protocol/visit-rows.ts";
import type { TubeKind } from "#shared/tube/kind/kinds.ts";
import { needLineWords, visitNeedsWords } from "#shared/words/visit-needs.ts";
import { abilities } from "./room.ts";
import { type VisitAct, visitActs } from "./visit-acts.ts";
import { type VisitTube, visitNeeds } from "./visit-needs.ts";

const tube = (tubeId: string, kind: TubeKind = "nephrostomy", act: VisitAct = "exchange"): VisitTube => ({
  tubeId,
  kind,
  act,
});

const row = (said: Partial<RoomRow>): RoomRow => ({
  kinds: ["nephrostomy"],
  acts: ["exchange"],
  minutes: 30,
  further: null,
  needs: [],
  source: "CP",
  ...said,
});

/** Common practice, no source: the figures are those of the example table. */
const ofExample = (...tubes: readonly VisitTube[]) => visitNeeds(tubes, exampleProtocol.planning);

describe("what a visit takes by the rows", () => {
  it("one nephrostomy: half an hour with fluoroscopy", () => {
    expect(ofExample(tube("left"))).toEqual({
      minutes: 30,
      needs: ["fluoroscopy"],
      lines: [{ ...tube("left"), code: "first", minutes: 30, row: "planning.room/1", source: "CP" }],
    });
  });

  it("bilateral nephrostomies at once take less than twice one", () => {
    const both = ofExample(tube("left"), tube("right"));
    expect(both.minutes).toBe(50);
    expect(both.minutes).toBeLessThan(2 * (ofExample(tube("left")).minutes ?? 0));
    expect(both.lines.map(({ code }) => code)).toEqual(["first", "further"]);
  });

  it("three of one kind: the first whole, two further", () => {
    expect(ofExample(tube("a"), tube("b"), tube("c")).minutes).toBe(70);
  });

  it("the longest counts whole, whichever is named first", () => {
    const bile = tube("bile", "external biliary drain");
    const said = ofExample(tube("left"), bile);
    expect(said.minutes).toBe(45 + 20);
    expect(said.lines.map(({ tubeId, code }) => [tubeId, code])).toEqual([
      ["bile", "first"],
      ["left", "further"],
    ]);
    expect(ofExample(bile, tube("left"))).toEqual(said);
  });

  it("acts of one kind have rows of their own", () => {
    expect(ofExample(tube("left", "nephrostomy", "check")).minutes).toBe(20);
    expect(ofExample(tube("left", "nephrostomy", "removal")).minutes).toBe(15);
    expect(
      ofExample(
        tube("left"),
        tube("drain", "abscess drain", "check"),
        tube("right", "nephrostomy", "removal"),
      ).minutes,
    ).toBe(30 + 15 + 10);
  });

  it("a row without a time for a further tube counts it whole", () => {
    const room = [row({ further: null })];
    const said = visitNeeds([tube("left"), tube("right")], { room });
    expect(said.minutes).toBe(60);
    expect(said.lines[1]).toMatchObject({ code: "counts whole", minutes: 30 });
  });

  it("of two equally long the one with the shorter further time is the first: not booked too short", () => {
    const room = [
      row({ kinds: ["nephrostomy"], minutes: 30, further: 25 }),
      row({ kinds: ["abscess drain"], minutes: 30, further: 10 }),
    ];
    const said = visitNeeds([tube("kidney"), tube("drain", "abscess drain")], { room });
    expect(said.minutes).toBe(30 + 25);
    expect(said.lines[0]).toMatchObject({ tubeId: "drain", code: "first", row: "planning.room/2" });
  });

  it("a tube without a row makes the minutes unknown, and is named; what is known of the room stands", () => {
    const stent = tube("stent", "ureteral stent");
    const said = ofExample(stent, tube("left"));
    expect(said).toMatchObject({ minutes: null, needs: ["fluoroscopy"] });
    expect(said.lines).toEqual([
      { ...tube("left"), code: "first", minutes: 30, row: "planning.room/1", source: "CP" },
      { ...stent, code: "no row" },
    ]);
  });

  it("an act that the kind's row does not name has no row", () => {
    expect(visitNeeds([tube("left", "nephrostomy", "check")], { room: [row({})] }).minutes).toBeNull();
  });

  it("no table, no rows and no tube cannot be told", () => {
    expect(visitNeeds([tube("left")], null)).toEqual({
      minutes: null,
      needs: [],
      lines: [{ ...tube("left"), code: "no row" }],
    });
    expect(visitNeeds([tube("left")], { room: [] }).minutes).toBeNull();
    expect(ofExample()).toEqual({ minutes: null, needs: [], lines: [] });
  });

  it("what the room needs is said once, in the order of the list of abilities", () => {
    const room = [
      row({ kinds: ["nephrostomy"], needs: ["sedation", "fluoroscopy"] }),
      row({ kinds: ["abscess drain"], needs: ["CT", "sedation"] }),
    ];
    expect(visitNeeds([tube("kidney"), tube("drain", "abscess drain")], { room }).needs).toEqual([
      "fluoroscopy",
      "CT",
      "sedation",
    ]);
  });

  it("several tubes without a row stand in an order of their own", () => {
    const names = (tubes: readonly VisitTube[]) => visitNeeds(tubes, null).lines.map(({ tubeId }) => tubeId);
    expect(names([tube("b"), tube("a"), tube("c")])).toEqual(["a", "b", "c"]);
  });
});

describe("the example rows of room", () => {
  const { room } = exampleProtocol.planning!;

  it.each<TubeKind>([
    "ureteral stent",
    "metal ureteral stent",
    "plastic biliary stent",
    "bumper gastrostomy",
    "other",
  ])("%s has none: its change is no matter of this room, or nobody can say how long", (kind) => {
    expect(room.filter(({ kinds }) => kinds.includes(kind))).toEqual([]);
  });

  it("a kind that has a date of exchange and is changed over a wire from the skin has one for the exchange", () => {
    const within = exampleProtocol.planning!.notOverWire.flatMap(({ kinds }) => kinds);
    const exchanged = exampleProtocol.intervals
      .filter(({ asks, kind }) => asks === "exchange" && !within.includes(kind))
      .map(({ kind }) => kind);
    for (const kind of exchanged) expect(ofExample(tube("one", kind)).minutes, kind).not.toBeNull();
  });
});

describe("what a visit takes in words", () => {
  const names = (id: string) => (id === "stent" ? "right ureteral stent" : `${id} nephrostomy`);
  const lines = (...tubes: readonly VisitTube[]) =>
    ofExample(...tubes).lines.map((line) => needLineWords(line, names));

  it("shows its arithmetic", () => {
    expect(lines(tube("left"), tube("right"))).toEqual([
      "left nephrostomy, exchange: 30 min",
      "right nephrostomy, exchange, further tube: 20 min",
    ]);
    expect(visitNeedsWords(ofExample(tube("left"), tube("right")))).toBe(
      "50 min, in a room with fluoroscopy",
    );
  });

  it("says what counts whole and what cannot be told", () => {
    expect(lines(tube("left"), tube("stent", "ureteral stent"))[1]).toBe(
      "right ureteral stent, exchange: no row, so what it takes cannot be told",
    );
    expect(visitNeedsWords(ofExample(tube("left"), tube("stent", "ureteral stent")))).toBe(
      "the minutes cannot be told: type them; in a room with fluoroscopy, as far as there is a row",
    );
    const whole = visitNeeds([tube("left"), tube("right")], { room: [row({})] });
    expect(whole.lines.map((line) => needLineWords(line, names))[1]).toBe(
      "right nephrostomy, exchange, further tube, no shorter time in the row: 30 min",
    );
    expect(visitNeedsWords(whole)).toBe("60 min, in any room");
  });
});

const kinds = ["nephrostomy", "abscess drain", "external biliary drain"] as const;

const rowFor = (kind: TubeKind, act: VisitAct): fc.Arbitrary<RoomRow> =>
  fc
    .record({
      minutes: fc.integer({ min: 1, max: 90 }),
      less: fc.integer({ min: 0, max: 89 }),
      isWhole: fc.boolean(),
      needs: fc.subarray([...abilities]),
    })
    .map(({ minutes, less, isWhole, needs }) =>
      row({
        kinds: [kind],
        acts: [act],
        minutes,
        further: isWhole ? null : Math.max(1, minutes - less),
        needs,
      }),
    );

const anyRoom = fc.tuple(...kinds.flatMap((kind) => visitActs.map((act) => rowFor(kind, act))));
const anyTubes = fc
  .array(fc.tuple(fc.constantFrom(...kinds), fc.constantFrom(...visitActs)), { minLength: 1, maxLength: 5 })
  .map((all) => all.map(([kind, act], n) => tube(`t${n}`, kind, act)));

describe("laws of what a visit takes", () => {
  it("the order of the tubes changes nothing", () => {
    const shuffled = anyTubes.chain((tubes) =>
      fc.tuple(fc.constant(tubes), fc.shuffledSubarray(tubes, { minLength: tubes.length })),
    );
    fc.assert(
      fc.property(anyRoom, shuffled, fc.boolean(), (room, [tubes, other], lacksOne) => {
        const rows = { room: lacksOne ? room.slice(1) : room };
        expect(visitNeeds(other, rows)).toEqual(visitNeeds(tubes, rows));
      }),
    );
  });

  it("at least the longest alone, at most all of them one by one, and the sum of the lines", () => {
    fc.assert(
      fc.property(anyRoom, anyTubes, (room, tubes) => {
        const together = visitNeeds(tubes, { room });
        const alone = tubes.map((one) => visitNeeds([one], { room }).minutes!);
        expect(together.minutes).toBeGreaterThanOrEqual(Math.max(...alone));
        expect(together.minutes).toBeLessThanOrEqual(alone.reduce((sum, each) => sum + each, 0));
        expect(together.minutes).toBe(
          together.lines.reduce((sum, line) => sum + (line.code === "no row" ? 0 : line.minutes), 0),
        );
        expect(together.lines).toHaveLength(tubes.length);
      }),
    );
  });

  it("one tube more makes a visit longer and asks no less of the room", () => {
    fc.assert(
      fc.property(anyRoom, anyTubes, fc.constantFrom(...kinds), (room, tubes, kind) => {
        const fewer = visitNeeds(tubes, { room });
        const more = visitNeeds([...tubes, tube("more", kind, "removal")], { room });
        expect(more.minutes).toBeGreaterThan(fewer.minutes!);
        expect(more.needs).toEqual(expect.arrayContaining([...fewer.needs]));
      }),
    );
  });
});
