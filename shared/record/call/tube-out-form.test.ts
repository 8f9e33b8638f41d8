import { describe, expect, it } from "vitest";
import { day } from "#shared/day/day.ts";
import { instant, zone } from "#shared/day/instant.ts";
import { onDay } from "#shared/day/when.ts";
import { exampleRedFlags } from "#shared/protocol/example-red-flags.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import { confirmed, unknownFact } from "#shared/tube/certainty.ts";
import type { OutContext, TubeThatMayBeOut } from "./out-context.ts";
import { tubeOutForm } from "./tube-out-form.ts";

const today = day("2026-11-15");
const [flag] = exampleRedFlags.filter(({ id }) => id === "out or partly out");
const left: TubeThatMayBeOut = {
  id: "tube-1",
  number: 1,
  kind: "nephrostomy",
  side: confirmed<"left">("left"),
  status: "in",
  inSince: day("2026-11-06"),
  tract: { since: day("2026-11-06"), ages: null },
  slow: { yes: [], unknown: [] },
  rows: { out: null, "part out": null },
  flag: flag ?? null,
  size: unknownFact,
  below: null,
};
const right = { ...left, id: "tube-2", number: 2, side: confirmed<"right">("right") };
/** Sunday 15 November 2026, 14:05 in London. */
const context: OutContext = {
  today,
  now: instant(Date.parse("2026-11-15T14:05:00Z")),
  zone: zone("Europe/London"),
  opens: { tubeId: "", number: 0 },
  staff: [],
  shelf: [],
  tubes: [left, right],
};
const at = (time: string) => ({ when: onDay(today), time });
const plain = { tube: "1", out: "out", when: "11:00", handedTo: "nobody yet" };
const read = (texts: Texts, of: OutContext = context) => tubeOutForm.read({ ...plain, ...texts }, of);
const refused = (texts: Texts, of: OutContext = context) => {
  const said = read(texts, of);
  return said.ok ? [] : said.refusals.map(({ code, field }) => [code, field]);
};

describe("a tube that is out is told", () => {
  it("wholly out, told by somebody: reported, with where the old tube is and its red flag", () => {
    const said = read({ whole: "no", oldTube: "kept", toldBy: "the son", note: "pulled while turning" });
    expect(said).toEqual({
      ok: true,
      entry: {
        tubeId: "tube-1",
        ofTube: [
          {
            kind: "fell out",
            ...at("11:00"),
            payload: {
              whole: { certainty: "reported", value: false },
              oldTube: "kept",
              toldBy: "the son",
              note: "pulled while turning",
            },
          },
        ],
        found: null,
        flag: {
          ...at("14:05"),
          row: "out or partly out",
          level: "same day",
          says: "tube out or partly out",
          untilReached: "keep the tube, do not put it back",
          of: { tube: "tube-1", number: 1 },
          toldBy: "the son",
          note: null,
          handed: null,
        },
      },
    });
  });

  it("part of the way: with its length outside, in place of whether it is whole", () => {
    expect(read({ out: "part out", externalLength: "12", whole: "" })).toMatchObject({
      ok: true,
      entry: {
        ofTube: [{ kind: "partly dislodged", payload: { externalLength: { certainty: "confirmed" } } }],
      },
    });
  });

  it("with how the patient is, and bleeding as an entry of the tube", () => {
    expect(read({ temperature: "38.4", bleeds: "heavy", toldBy: "the son" })).toMatchObject({
      ok: true,
      entry: {
        ofTube: [
          { kind: "fell out" },
          { kind: "bled", ...at("14:05"), payload: { heavy: { certainty: "reported", value: true } } },
        ],
        found: {
          kind: "clinical state noted",
          payload: { findings: { temperature: { certainty: "reported" } }, toldBy: "the son" },
        },
      },
    });
  });

  it("no bleeding, or nobody knows of any, is no entry of bleeding", () => {
    for (const bleeds of ["none", "?", ""])
      expect(read({ bleeds })).toMatchObject({ ok: true, entry: { ofTube: [{ kind: "fell out" }] } });
  });

  it("in own words and with a level of its own, where the table has no red flag for it", () => {
    const without = { ...context, tubes: [{ ...left, flag: null }] };
    expect(refused({}, without)).toEqual([["text-missing", "level"]]);
    expect(read({ level: "same day", out: "part out" }, without)).toMatchObject({
      ok: true,
      entry: { flag: { row: null, level: "same day", says: "tube partly out", untilReached: null } },
    });
  });
});

describe("it is refused with a sentence", () => {
  it.each<[string, Texts, readonly (readonly [string, string])[]]>([
    ["no tube chosen", { tube: "" }, [["text-missing", "tube"]]],
    ["a time to come", { when: "15:00" }, [["time-in-future", "when"]]],
    ["no time at all", { when: "" }, [["day-missing", "when"]]],
    ["before its placement", { when: "5 nov 2026" }, [["out-before-placed", "when"]]],
    ["nobody said to have it", { handedTo: "" }, [["text-missing", "handedTo"]]],
    [
      "handed over before it was told",
      { handedTo: "Dr Example", handedAt: "14:00" },
      [["before-flag-told", "handedAt"]],
    ],
  ])("%s", (_, texts, codes) => expect(refused(texts)).toEqual(codes));

  it("a tube that is out already", () => {
    const out = { ...context, tubes: [{ ...left, status: "out, undecided" as const }, right] };
    expect(refused({}, out)).toEqual([["tube-out-already", "tube"]]);
  });
});
