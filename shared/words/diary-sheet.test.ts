import { describe, expect, it } from "vitest";
import { confirmed } from "#shared/tube/certainty.ts";
import type { TubeFacts } from "#shared/tube/facts.ts";
import { fold } from "#shared/tube/fold.ts";
import type { TubeKind } from "#shared/tube/kind/kinds.ts";
import type { TubeState } from "#shared/tube/state.ts";
import { reported } from "#tests/factories/tube-inside.ts";
import {
  capped,
  type Entry,
  fellOut,
  placed,
  removed,
  suctionChanged,
  trialStarted,
} from "#tests/support/factories.ts";
import { history } from "#tests/support/told.ts";
import { type DiaryUnit, diarySheet, rowAmount } from "./diary-sheet.ts";

const tubeOf = (...entries: readonly Entry[]): TubeState => fold(history(...entries)).tubes[0]!;

const ofKind = (kind: TubeKind, facts: TubeFacts = {}): TubeState => tubeOf(placed({ kind, facts }));

function sheet(tube: TubeState, unit: DiaryUnit = "mL") {
  const diary = diarySheet(tube, unit);
  if (diary.kind !== "sheet") throw new Error(diary.because);
  return diary;
}

describe("the output diary of a nephrostomy", () => {
  it("says in plain words how to measure, what is flushed, and what it may look like", () => {
    const flushOrder = confirmed("5 mL x 1 a day");
    expect(sheet(ofKind("nephrostomy", { flushOrder })).howTo).toEqual([
      "Empty the bag at about the same time every day. Write each emptying on a line of its own.",
      "If nothing came out, write 0. Never leave it blank: a blank says that nobody measured. A guess: put ~ before the number. Not known: write ?.",
      "Flush, as ordered: 5 mL x 1 a day. Write how many mL were put in since the line before, and 0 if none was.",
      "Looks like: in your own words, for example like urine (urine-like); like water (clear).",
      "Leak round the tube at the skin: write none, damp or soaking.",
    ]);
  });

  it("has a column for each thing to write, the flush in mL whatever is drained is in", () => {
    const columns = ["Date", "Time", "Came out, mL", "Flush put in, mL", "Looks like", "Leak"];
    expect(sheet(ofKind("nephrostomy")).columns).toEqual(columns);
    expect(sheet(ofKind("nephrostomy"), "fl oz").columns).toEqual(
      columns.map((column) => (column === "Came out, mL" ? "Came out, fl oz" : column)),
    );
    expect(sheet(ofKind("nephrostomy"), "fl oz").howTo[1]).toBe(
      "Write what came out in US fluid ounces (fl oz).",
    );
  });
});

describe("the flush on it", () => {
  it("with no order recorded is no example of the kind's, but the question", () => {
    const { howTo } = sheet(ofKind("abscess drain"));
    expect(howTo).toContain(
      "Flush: no order is recorded here, so ask the clinic. Write how many mL were put in since the line before, and 0 if none was.",
    );
    expect(howTo.join(" ")).not.toContain("5-10 mL");
  });

  it("that was told by somebody says so", () => {
    const { howTo } = sheet(ofKind("abscess drain", { flushOrder: reported("10 mL x 3 a day") }));
    expect(howTo[2]).toContain("Flush, as ordered: 10 mL x 3 a day (reported). ");
  });

  it.each([
    ["ordered as none", ofKind("abscess drain", { flushOrder: confirmed("none") })],
    ["of a kind without one", ofKind("surgical drain")],
  ])("%s has no column and no line", (_, tube) => {
    const { columns, howTo } = sheet(tube);
    expect(columns).toEqual(["Date", "Time", "Came out, mL", "Looks like", "Leak"]);
    expect(howTo.join(" ")).not.toMatch(/flush/i);
  });

  it("ordered for a kind without one has both", () => {
    const tube = ofKind("surgical drain", { flushOrder: confirmed("10 mL a day") });
    expect(sheet(tube).columns).toContain("Flush put in, mL");
    expect(sheet(tube).howTo[2]).toContain("10 mL a day");
  });
});

describe("how it is measured hangs on role and mode", () => {
  it.each<[string, TubeState, string]>([
    ["a bulb", ofKind("surgical drain"), "Empty the bulb at about the same time every day."],
    ["a pouch", ofKind("conduit catheter"), "Empty the pouch at about the same time every day."],
    [
      "an underwater seal",
      ofKind("chest tube"),
      "Read the container at about the same time every day, and write how much has come since the line before.",
    ],
    ["suction", tubeOf(placed(), suctionChanged({ on: "2026-08-15" })), "Read the container at about"],
    [
      "sessions",
      ofKind("tunnelled pleural catheter"),
      "Each time you drain, write on a line of its own how much came out.",
    ],
    [
      "a valve that is not drained by session",
      tubeOf(placed({ kind: "abscess drain", mode: "one-way valve" })),
      "Empty the bag at about",
    ],
    [
      "a cap",
      tubeOf(placed(), capped({ on: "2026-08-15" })),
      "The tube is capped now, and nothing is meant to come out. Write a line only for a time in which it was open.",
    ],
    ["a clamp", tubeOf(placed({ mode: "clamped" })), "The tube is clamped now, "],
    ["a trial", tubeOf(placed(), trialStarted({ on: "2026-08-15" })), "The tube is on a clamp trial now, "],
  ])("%s", (_, tube, says) => {
    expect(sheet(tube).howTo[0]).toContain(says);
  });

  it("a tube that only vents has a sheet", () => {
    expect(sheet(ofKind("venting gastrostomy")).howTo[0]).toContain("Empty the bag");
  });
});

describe("no sheet", () => {
  it.each<[string, TubeState, string]>([
    [
      "of a stent",
      ofKind("ureteral stent"),
      "This tube lies wholly inside the body: there is no output to write down.",
    ],
    [
      "of a drain that is internal now",
      tubeOf(placed({ kind: "internal-external biliary drain", mode: "internal" })),
      "This tube drains inside the body: there is no output to write down.",
    ],
    [
      "of a feeding tube",
      ofKind("balloon gastrostomy"),
      "This tube is for feeding: there is no output to write down.",
    ],
    [
      "of one that is set to feed",
      tubeOf(placed({ kind: "venting gastrostomy", mode: "to feed" })),
      "This tube is for feeding: there is no output to write down.",
    ],
    [
      "of a cecostomy",
      ofKind("cecostomy"),
      "What goes into this tube is treatment: there is no output to write down.",
    ],
    [
      "of one that is set to irrigate",
      tubeOf(placed({ kind: "cecostomy", role: "venting", mode: "to irrigate" })),
      "What goes into this tube is treatment: there is no output to write down.",
    ],
    [
      "of a tube that fell out",
      tubeOf(placed(), fellOut({ on: "2026-08-20" })),
      "This tube is out: there is nothing to print for it until somebody has decided.",
    ],
    [
      "of one that was removed",
      tubeOf(placed(), removed({ on: "2026-08-20" })),
      "The record of this tube has ended: there is nothing to print for it.",
    ],
  ])("%s", (_, tube, because) => {
    expect(diarySheet(tube, "mL")).toEqual({ kind: "nothing to write down", because });
  });
});

describe("what the patient may call it", () => {
  const called = (kind: TubeKind, side: "left" | "right" | "transplant" | "not sided"): string =>
    sheet(tubeOf(placed({ kind, side }))).called;

  it.each([
    ["nephrostomy", "left", "the tube in your left kidney"],
    ["nephroureteral catheter", "right", "the tube in your right kidney"],
    ["nephrostomy", "transplant", "the tube in your transplanted kidney"],
    ["nephrostomy", "not sided", "the tube in your kidney"],
    ["external biliary drain", "left", "the tube that drains your bile"],
    ["cholecystostomy", "not sided", "the tube that drains your bile"],
    ["venting gastrostomy", "not sided", "the tube in your stomach or bowel"],
    ["suprapubic catheter", "not sided", "the tube in your bladder"],
    ["chest tube", "right", "the tube in your chest on the right"],
    ["tunnelled pleural catheter", "left", "the tube in your chest on the left"],
    ["tunnelled peritoneal drain", "not sided", "the tube in your belly"],
    ["abscess drain", "right", "the drain on the right"],
    ["lymphocele drain", "not sided", "the drain"],
    ["conduit catheter", "left", "the tube"],
    ["other", "not sided", "the tube"],
  ] as const)("%s, %s", (kind, side, says) => {
    expect(called(kind, side)).toBe(says);
  });
});

it("what it looks like is in plain words, each with the trade's own", () => {
  const expectedFluid: TubeFacts["expectedFluid"] = [
    "serous",
    "serosanguineous",
    "bloody",
    "purulent",
    "bilious",
    "feculent",
    "chylous",
    "food",
    "debris",
    "clots",
  ];
  expect(sheet(ofKind("abscess drain", { expectedFluid })).howTo.at(-2)).toBe(
    "Looks like: in your own words, for example pale yellow and thin (serous); pink (serosanguineous); like blood (bloody); thick, like pus (purulent); green or golden (bilious); like stool (feculent); milky (chylous); like food (food); with bits in it (debris); with clots in it (clots).",
  );
  expect(sheet(ofKind("abscess drain", { expectedFluid: [] })).howTo.at(-2)).toBe(
    "Looks like: in your own words.",
  );
});

it("an amount of a row is told in mL, with ounces before it for who measures in them", () => {
  expect(rowAmount(1500, "mL")).toBe("1500 mL");
  // 1500 / 29.5735 = 50.72 (NIST Handbook 44, appendix C).
  expect(rowAmount(1500, "fl oz")).toBe("about 51 fl oz (1500 mL)");
});
