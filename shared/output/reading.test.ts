import { describe, expect, it } from "vitest";
import { at, flush, gross, reading } from "#tests/factories/reading.ts";
import { millilitres } from "./microlitre.ts";
import { netVolume } from "./net-volume.ts";
import { readingSchema } from "./reading-schema.ts";

const message = (change: object) =>
  readingSchema.safeParse({ ...reading(), ...change }).error?.issues[0]?.message;

describe("the schema of a reading", () => {
  it("takes a plain one, and one whose beginning or volume is unknown", () => {
    expect(readingSchema.parse(reading())).toEqual(reading());
    expect(message({ from: "since last emptying", gross: { certainty: "unknown" } })).toBeUndefined();
  });

  it.each([
    ["a negative gross", { gross: gross(-1) }, "volume-negative"],
    ["a negative flush", { flushGiven: flush(-1) }, "volume-negative"],
    ["a reading that ends before it starts", { to: at("2026-11-02T05:00Z") }, "reading-ends-before-start"],
    ["half a microlitre", { gross: { certainty: "confirmed", value: 0.5 } }, "volume-not-understood"],
    ["a zone that does not exist", { zone: "America/Nowhere" }, "choice-unknown"],
    ["a reporter without a name", { reportedBy: " " }, "text-missing"],
    ["a field that it does not have", { note: "x" }, 'Unrecognized key: "note"'],
  ])("refuses %s", (_what, change, code) => {
    expect(message(change)).toBe(code);
  });

  it("a net taken from another chart may be negative", () => {
    expect(message({ basis: "already net", gross: gross(-10) })).toBeUndefined();
  });
});

describe("net volume", () => {
  const net = (change: Parameters<typeof reading>[0], ordered = true) => netVolume(reading(change), ordered);
  const known = (ml: number) => ({ kind: "known", ul: millilitres(ml) });

  it("25 mL emptied with 8 mL of flush are 17 (arithmetic)", () => {
    expect(net({ gross: gross(25), flushGiven: flush(8) })).toEqual(known(17));
  });

  it("hard case 6: 35 mL with 3 x 10 mL of flush are 5; 20 with 30 are -10 and stand", () => {
    expect(net({ gross: gross(35), flushGiven: flush(30) })).toEqual(known(5));
    expect(net({ gross: gross(20), flushGiven: flush(30) })).toEqual(known(-10));
  });

  it("hard case 6: an entry that is already net is not made net again", () => {
    expect(net({ gross: gross(20), flushGiven: flush(30), basis: "already net" })).toEqual(known(20));
    expect(net({ gross: gross(20), flushGiven: "not recorded", basis: "already net" })).toEqual(known(20));
  });

  it("flush ordered and not recorded: cannot tell; not ordered and not recorded: none was given", () => {
    const unrecorded = { flushGiven: "not recorded" } as const;
    expect(net(unrecorded)).toEqual({ kind: "cannot tell", because: ["flush-not-recorded"] });
    expect(net(unrecorded, false)).toEqual(known(25));
  });

  it("flush ordered is not flush given: none means none", () => {
    expect(net({ flushGiven: "none" })).toEqual(known(25));
  });

  it("what was drawn back counts as drained, and whether it was must be known", () => {
    const given = { gross: gross(25), flushGiven: flush(10) };
    expect(net({ ...given, flushWithdrawn: flush(10) })).toEqual(known(25));
    expect(net({ ...given, flushWithdrawn: "not recorded" })).toEqual({
      kind: "cannot tell",
      because: ["flush-withdrawn-not-recorded"],
    });
    expect(net({ gross: gross(25), flushWithdrawn: "not recorded" })).toEqual(known(25));
  });

  it("hard case 28: irrigation, enema, feed water, contrast, fibrinolytic and sclerosant are no flush", () => {
    const otherIn = (
      ["irrigation", "enema", "feed water", "contrast", "fibrinolytic", "sclerosant"] as const
    ).map((fluid) => ({ fluid, ul: millilitres(50) }));
    expect(net({ gross: gross(25), flushGiven: flush(8), otherIn })).toEqual(known(17));
  });

  it("an unknown volume is unknown, not zero; zero is a number", () => {
    expect(net({ gross: { certainty: "unknown" }, flushGiven: flush(8) })).toEqual({
      kind: "cannot tell",
      because: ["volume-unknown"],
    });
    expect(net({ gross: gross(0) })).toEqual(known(0));
  });
});
