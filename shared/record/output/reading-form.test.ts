import { describe, expect, it } from "vitest";
import { netVolume } from "#shared/output/net-volume.ts";
import { readingSchema } from "#shared/output/reading-schema.ts";
import { readField } from "#shared/record/field-spec.ts";
import type { ReadingBeside } from "#shared/record/output/reading-beside.ts";
import { formContext } from "#tests/factories/form-context.ts";
import { noOutputYet } from "#tests/factories/reading-beside.ts";
import { readingForm } from "./reading-form.ts";

/** Fri 6 Nov 2026, 15:30 in London. */
const context = formContext();
const read = (texts: Record<string, string>) => readingForm.read(texts, context);
const stored = (texts: Record<string, string>) => {
  const result = read(texts);
  if (!result.ok) throw new Error(result.refusals.map(({ code }) => code).join());
  return readingSchema.parse({ id: "reading-1", tubeId: "tube-1", ...result.entry });
};

describe("an emptying", () => {
  it("is logged with one figure; what was not typed is not recorded", () => {
    expect(read({ drained: "35" })).toEqual({
      ok: true,
      entry: {
        from: "since last emptying",
        to: Date.parse("2026-11-06T15:30Z"),
        zone: "Europe/London",
        gross: { certainty: "confirmed", value: 35_000 },
        basis: "gross",
        flushGiven: "not recorded",
        flushWithdrawn: "none",
        otherIn: [],
        measuredBy: "not recorded",
        characters: [],
        leak: "not recorded",
        airLeak: "not recorded",
        swing: "not recorded",
        symptoms: "not recorded",
        procedureAspirate: false,
        reportedBy: "seen here",
        asSpoken: "35",
      },
    });
  });

  it("keeps everything that is typed, told by the patient and so reported", () => {
    const texts = {
      drained: "2 oz",
      flushGiven: "~10",
      to: "yesterday 23:50",
      characters: "bil, deb",
      leak: "soaking",
      reportedBy: "patient",
      from: "yesterday 8:00",
      flushWithdrawn: "5",
      measuredBy: "syringe",
      otherIn: "contrast 20",
      procedureAspirate: "yes",
    };
    expect(stored(texts)).toEqual({
      id: "reading-1",
      tubeId: "tube-1",
      from: Date.parse("2026-11-05T08:00Z"),
      to: Date.parse("2026-11-05T23:50Z"),
      zone: "Europe/London",
      gross: { certainty: "reported", value: 59_147 },
      basis: "gross",
      flushGiven: { ul: 10_000, estimated: true },
      flushWithdrawn: { ul: 5_000, estimated: false },
      otherIn: [{ fluid: "contrast", ul: 20_000 }],
      measuredBy: "syringe",
      characters: ["bilious", "debris"],
      leak: "soaking",
      airLeak: "not recorded",
      swing: "not recorded",
      symptoms: "not recorded",
      procedureAspirate: true,
      reportedBy: "patient",
      asSpoken: "2 oz",
    });
  });

  it("35 mL emptied with 3 x 10 mL flush nets 5; 20 with 30 nets -10 and stands (hard case 6)", () => {
    const net = (drained: string) => netVolume(stored({ drained, flushGiven: "3 x 10" }), true);
    expect(net("35")).toEqual({ kind: "known", ul: 5_000 });
    expect(net("20")).toEqual({ kind: "known", ul: -10_000 });
  });

  it("writes zero as 0 and unknown as ?, an estimate stays one", () => {
    expect(stored({ drained: "0" }).gross).toEqual({ certainty: "confirmed", value: 0 });
    expect(stored({ drained: "?" }).gross).toEqual({ certainty: "unknown" });
    expect(stored({ drained: "~40", reportedBy: "patient" }).gross).toEqual({
      certainty: "estimated",
      value: 40_000,
    });
  });

  it("takes a negative figure only when it is net already", () => {
    expect(read({ drained: "-10" })).toMatchObject({
      ok: false,
      refusals: [{ field: "drained", code: "volume-negative" }],
    });
    expect(stored({ drained: "-10", basis: "already net" }).gross).toEqual({
      certainty: "confirmed",
      value: -10_000,
    });
  });
});

describe("what only some tubes show", () => {
  const beside = (group: ReadingBeside["group"]) =>
    readingForm.fields(formContext({ output: { ...noOutputYet, group } }));
  const asked = (group: ReadingBeside["group"]) => {
    const fields = beside(group);
    return (["airLeak", "swing", "symptoms"] as const).filter((name) => fields[name].belongs?.({}));
  };

  it.each([
    ["chest", ["airLeak", "swing"]],
    ["pleural", ["symptoms"]],
    ["peritoneal", ["symptoms"]],
    ["collection", []],
    [null, []],
  ] as const)("of the group %s are asked %j", (group, names) => {
    expect(asked(group)).toEqual(names);
  });

  it("is stored as typed; none is an answer, a blank or ? is not", () => {
    expect(stored({ drained: "0", airLeak: "present", swing: "not seen" })).toMatchObject({
      airLeak: "present",
      swing: "not seen",
      symptoms: "not recorded",
    });
    expect(stored({ drained: "700", symptoms: "sob, cough" }).symptoms).toEqual(["breathlessness", "cough"]);
    expect(stored({ drained: "700", symptoms: "none" }).symptoms).toEqual([]);
    expect(stored({ drained: "700", symptoms: "?" }).symptoms).toBe("not recorded");
    expect(readField(beside("pleural").symptoms, "none")).toEqual({ echo: "nothing felt" });
  });
});

it("a session counts since the last one, as any emptying: that is when the fluid gathered (hard case 18)", () => {
  expect(stored({ drained: "700", symptoms: "none" }).from).toBe("since last emptying");
});

describe("an hour that comes twice (hard case 8)", () => {
  it("is asked about at both ends, and nothing typed is lost", () => {
    const { to, from } = readingForm.fields(context);
    const doubt = '01:30 comes twice that night: the earlier was taken. Type "later" after it for the other.';
    expect(readField(to, "25 oct 1:30")).toEqual({ echo: "Sun 25 Oct 2026, 01:30", doubt });
    expect(readField(from, "25 oct 1:30")).toEqual({ echo: "Sun 25 Oct 2026, 01:30", doubt });
    expect(readField(to, "25 oct 1:30 later")).toEqual({
      echo: "Sun 25 Oct 2026, 01:30, later",
      doubt: "01:30 comes twice that night: the later was taken.",
    });
    expect(readField(to, "25 oct 2:30")).toEqual({ echo: "Sun 25 Oct 2026, 02:30" });
  });

  it("counts as an hour of its own", () => {
    const { from, to } = stored({ drained: "5", from: "25 oct 1:30", to: "25 oct 1:30 later" });
    expect(to - Number(from)).toBe(3_600_000);
  });

  it("an hour that clocks skip is refused, saying so", () => {
    expect(read({ drained: "5", to: "29 mar 1:30" })).toMatchObject({
      refusals: [{ field: "to", code: "time-does-not-exist" }],
    });
  });
});

it.each([
  ["drained", "", "volume-missing"],
  ["drained", "half a bag", "volume-by-vessel"],
  ["drained", "8,5", "volume-needs-unit"],
  ["drained", "1,500", "volume-comma-unclear"],
  ["flushGiven", "-5", "volume-negative"],
  ["flushWithdrawn", "-5", "volume-negative"],
  ["to", "yesterday", "time-missing"],
  ["to", "today 15:31", "time-in-future"],
  ["from", "today 15:30", "reading-ends-before-start"],
  ["characters", "purple", "word-unknown"],
  ["leak", "a bit", "choice-unknown"],
  ["otherIn", "tea 200", "word-unknown"],
  ["airLeak", "some", "choice-unknown"],
  ["symptoms", "happy", "word-unknown"],
  ["reportedBy", "x".repeat(121), "text-too-long"],
])("refuses %s %j: %s", (field, text, code) => {
  const beside = code === "reading-ends-before-start" ? "to" : field;
  expect(read({ drained: "35", [field]: text })).toMatchObject({
    ok: false,
    refusals: [{ field: beside, code }],
  });
});
