import { describe, expect, it } from "vitest";
import { exampleProtocol } from "#shared/protocol/example.ts";
import { exampleRedFlags } from "#shared/protocol/example-red-flags.ts";
import type { RedFlagRow } from "#shared/protocol/red-flag-rows.ts";
import { confirmed } from "#shared/tube/certainty.ts";
import type { TubeFacts } from "#shared/tube/facts.ts";
import { fold } from "#shared/tube/fold.ts";
import { type TubeKind, tubeKinds } from "#shared/tube/kind/kinds.ts";
import type { TubeState } from "#shared/tube/state.ts";
import type { DiaryUnit } from "#shared/words/diary-sheet.ts";
import { type Entry, placed, trialStarted } from "#tests/support/factories.ts";
import { history } from "#tests/support/told.ts";
import { homeFlags } from "./home-flags.ts";

const tubeOf = (...entries: readonly Entry[]): TubeState => fold(history(...entries)).tubes[0]!;
const ofKind = (kind: TubeKind, facts: TubeFacts = {}): TubeState => tubeOf(placed({ kind, facts }));

type Given = { rows?: readonly RedFlagRow[]; unit?: DiaryUnit; output?: typeof exampleProtocol.outputRows };

/** Each line as it reads, under the head of its level. */
const told = (tube: TubeState, given: Given = {}): Record<string, string[]> => {
  const { rows = exampleRedFlags, unit = "mL", output = exampleProtocol.outputRows } = given;
  return Object.fromEntries(
    homeFlags(rows, { tube, output, unit }).map(({ head, flags }) => [
      head,
      flags.map(({ says, untilReached }) => `${says}${untilReached === null ? "" : ` / ${untilReached}`}`),
    ]),
  );
};

const all = (tube: TubeState, given?: Given): string[] => Object.values(told(tube, given)).flat();

it("a nephrostomy's, by level, each with the clinic's act until somebody is reached", () => {
  expect(told(ofKind("nephrostomy"))).toEqual({
    "Call emergency services for": [
      "shortness of breath or chest pain",
      "heavy, bright red bleeding / keep the tube",
      "collapsing or passing out",
      "fever on chemotherapy, or when your defenses are weakened in another way / reconnect to bag",
      "shaking chills with confusion, feeling faint or breathing fast / reconnect to bag",
    ],
    "Call now, at any hour, for": [
      "nothing coming out for 6 hours, if this is your only kidney or a transplanted one, or no urine comes any other way / do not force the flush",
    ],
    "Call the same day for": [
      "a temperature of 38.0 °C (100.4 °F) or more, shaking chills, or feeling very unwell / reconnect to bag",
      "the tube out, or part of the way out / keep the tube, do not put it back",
      "nothing coming out for 6 hours / do not force the flush",
      "new blood, clots, bile, stool, pus, food or urine where there was none / keep the tube",
      "a leak that soaks the dressing / cover the site",
      "a flush that hurts or does not go in / do not force the flush",
    ],
    "Call on the next working day for": [
      "red skin round the tube / cover the site",
      "what holds the tube at the skin coming loose / keep the tube",
      "supplies running out",
    ],
  });
});

it("of two tubes at once each line stands once, in the order of one alone, with what speaks of either", () => {
  const [kidney, chest] = [ofKind("nephrostomy"), ofKind("chest tube")];
  const asked = { output: exampleProtocol.outputRows, unit: "mL" as const };
  const linesOf = (...tubes: readonly TubeState[]) =>
    homeFlags(
      exampleRedFlags,
      tubes.map((tube) => ({ ...asked, tube })),
    ).flatMap(({ head, flags }) => flags.map(({ says }) => `${head} ${says}`));
  const both = linesOf(kidney, chest);
  expect(new Set(both).size).toBe(both.length);
  expect(both.toSorted()).toEqual([...new Set([...linesOf(kidney), ...linesOf(chest)])].toSorted());
  expect(both.filter((line) => linesOf(kidney).includes(line))).toEqual(linesOf(kidney));
  expect(both).toContain("Call emergency services for the tube in your chest out or disconnected");
});

describe("a row that speaks of some tubes is printed for those alone", () => {
  const withLine = (says: string): TubeKind[] =>
    tubeKinds.filter((kind) => all(ofKind(kind)).some((line) => line.split(" / ")[0] === says));

  it.each<[string, readonly TubeKind[]]>([
    ["the tube in your chest out or disconnected", ["chest tube", "tunnelled pleural catheter"]],
    [
      "severe belly pain after a feed, or with fresh blood or feed leaking soon after the tube was placed",
      [
        "balloon gastrostomy",
        "loop gastrostomy",
        "bumper gastrostomy",
        "venting gastrostomy",
        "gastrojejunostomy",
        "jejunostomy",
      ],
    ],
    [
      "headache and sweating with a blocked bladder drain, if you have a spinal cord injury at T6 or above",
      ["suprapubic catheter"],
    ],
    ["nothing coming out for 6 hours", ["nephrostomy", "nephroureteral catheter", "suprapubic catheter"]],
    ["nothing coming out for 12 hours", ["external biliary drain", "internal-external biliary drain"]],
    [
      "more bile than 1500 mL in 24 hours, or dizziness",
      ["external biliary drain", "internal-external biliary drain"],
    ],
  ])("%s", (says, kinds) => {
    expect(withLine(says).toSorted()).toEqual(kinds.toSorted());
  });

  it("low output of a collection is in no row", () => {
    expect(all(ofKind("abscess drain")).join()).not.toContain("nothing coming out");
  });

  it("a flush only where one is ordered", () => {
    const line = "a flush that hurts or does not go in / do not force the flush";
    expect(all(ofKind("abscess drain"))).toContain(line);
    expect(all(ofKind("abscess drain", { flushOrder: confirmed("none") }))).not.toContain(line);
  });

  it("a trial only while it is shut", () => {
    const line = "pain, fever, yellow skin or eyes, or a leak while the tube is shut / reconnect to bag";
    expect(all(tubeOf(placed(), trialStarted({ on: "2026-08-15" })))).toContain(line);
    expect(all(tubeOf(placed({ mode: "capped" })))).toContain(line);
    expect(all(tubeOf(placed()))).not.toContain(line);
  });

  it("water of a balloon only where one holds it", () => {
    const line = "the balloon losing water while the tube sits firmly / keep the tube";
    expect(all(ofKind("suprapubic catheter"))).toContain(line);
    expect(all(ofKind("suprapubic catheter", { retention: confirmed("locking loop") }))).not.toContain(line);
  });
});

describe("rows of output behind it", () => {
  const bile = ofKind("external biliary drain");

  it("are told in ounces to who measures in them", () => {
    expect(all(bile, { unit: "fl oz" })).toContain(
      "more bile than about 51 fl oz (1500 mL) in 24 hours, or dizziness",
    );
  });

  it("that the clinic does not have give no figure", () => {
    expect(all(bile, { output: null })).toContain("dizziness");
    expect(all(bile, { output: null }).join()).not.toContain("nothing coming out");
  });
});

it("a row in the clinic's own words is printed as it stands, for any tube", () => {
  const own: RedFlagRow = {
    id: "fever",
    level: "same day",
    says: "39 C and over",
    untilReached: "drink",
    raisedBy: [],
    source: "ours",
  };
  for (const kind of tubeKinds)
    expect(told(ofKind(kind), { rows: [own] })).toEqual({
      "Call the same day for": ["39 C and over / drink"],
    });
});

it("every row of the example table is told in plain words to some tube", () => {
  const shut = [placed({ mode: "capped", kind: "suprapubic catheter" })].map((entry) => tubeOf(entry));
  const tubes = [...tubeKinds.map((kind) => ofKind(kind)), ...shut];
  for (const row of exampleRedFlags) {
    const lines = tubes.flatMap((tube) => all(tube, { rows: [row] }));
    expect(lines.length, row.id).toBeGreaterThan(0);
    for (const line of lines) expect(line.split(" / ")[0], row.id).not.toBe(row.says);
  }
});

it("no rows, no lines", () => {
  expect(homeFlags([], { tube: ofKind("nephrostomy"), output: null, unit: "mL" })).toEqual([]);
});
