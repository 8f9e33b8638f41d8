import { describe, expect, it } from "vitest";
import { whenUnknown } from "#shared/day/when.ts";
import {
  amended,
  called,
  capped,
  checked,
  converted,
  died,
  type Entry,
  exchanged,
  fellOut,
  notReplaced,
  placed,
  removed,
  takenOver,
  uncapped,
  voided,
  when,
} from "#tests/support/factories.ts";
import { history } from "#tests/support/told.ts";
import { standingEvents } from "./history.ts";

const standing = (...entries: readonly Entry[]) => standingEvents(history(...entries));
const order = (...entries: readonly Entry[]) => standing(...entries).map(({ event }) => event.id);
const dayOf = (id: string, ...entries: readonly Entry[]) =>
  standing(...entries).find(({ event }) => event.id === id)?.when;

describe("an amendment", () => {
  const exchange = exchanged({ id: "x", on: "2026-08-20" });
  const moved = (id: string, on: string) => ({ ...amended("x", exchanged({ on })), id });

  it("puts day and content of another entry in its place; the entry itself stays the same one", () => {
    const [, { event, amendedBy } = {}] = standing(placed(), exchange, moved("a", "2026-08-21"));
    expect(event).toMatchObject({ id: "x", kind: "exchanged", when: when("2026-08-21"), seq: 2 });
    expect(amendedBy).toEqual(["a"]);
  });

  it("of the newest recording stands", () => {
    const twice = [placed(), exchange, moved("a", "2026-08-21"), moved("b", "2026-08-22")];
    expect(dayOf("x", ...twice)).toEqual(when("2026-08-22"));
  });

  it("may be amended: the amended amendment stands", () => {
    const again = amended("a", moved("", "2026-08-25"));
    expect(dayOf("x", placed(), exchange, moved("a", "2026-08-21"), again)).toEqual(when("2026-08-25"));
  });

  it("may be voided, which brings back what stood before it", () => {
    const twice = [placed(), exchange, moved("a", "2026-08-21"), moved("b", "2026-08-22")];
    expect(dayOf("x", ...twice, voided("b"))).toEqual(when("2026-08-21"));
    expect(dayOf("x", ...twice, voided("b"), voided("a"))).toEqual(when("2026-08-20"));
  });

  it("that voids takes the entry away; voiding the void brings it back", () => {
    expect(order(placed({ id: "p" }), exchange, voided("x", { id: "v" }))).toEqual(["p"]);
    expect(order(placed({ id: "p" }), exchange, voided("x", { id: "v" }), voided("v"))).toEqual(["p", "x"]);
  });

  it("whose content no longer reads leaves the entry as it was", () => {
    const odd = amended("x", checked());
    expect(dayOf("x", placed(), exchange, odd)).toEqual(when("2026-08-20"));
  });

  it("of an entry that is not there, or of itself, changes nothing", () => {
    expect(order(placed({ id: "p" }), voided("nothing"))).toEqual(["p"]);
    const [first] = history(placed({ id: "p" }));
    const [self] = history(voided("p", { id: "p" }));
    expect(standingEvents([first!, self!])).toHaveLength(1);
  });
});

describe("the order of entries", () => {
  it.each([
    ["by day", [capped({ on: "2026-08-21" }), checked({ on: "2026-08-20" })], ["b", "a"]],
    ["by clock time", [capped({ at: "10:00" }), checked({ at: "09:59" })], ["b", "a"]],
    ["by sequence within the day", [capped({ order: 2 }), checked({ order: 1 })], ["b", "a"]],
    ["as recorded", [capped(), checked()], ["a", "b"]],
    [
      "by clock time before sequence",
      [capped({ at: "10:00", order: 1 }), checked({ at: "09:00", order: 2 })],
      ["b", "a"],
    ],
  ])("%s", (_name, [a, b], ids) => {
    const open = placed({ id: "p", on: "2026-08-01" });
    expect(order(open, { ...a!, id: "a" }, { ...b!, id: "b" })).toEqual(["p", ...ids]);
  });

  it("leaves an entry without a time after what was put before it on that day", () => {
    const open = placed({ id: "p", at: "14:00" });
    expect(order(open, checked({ id: "c" }))).toEqual(["p", "c"]);
    expect(order(open, fellOut({ id: "f", at: "16:00" }), checked({ id: "c" }))).toEqual(["p", "f", "c"]);
  });

  it("starts each day anew", () => {
    const evening = placed({ id: "p", at: "22:00" });
    const next = [checked({ id: "c", on: "2026-08-15" }), capped({ id: "k", on: "2026-08-15", at: "01:00" })];
    expect(order(evening, ...next)).toEqual(["p", "c", "k"]);
  });
});

describe("a span is cut to what is possible", () => {
  const open = placed({ id: "p", on: "2026-03-10" });
  const march = "2026-03";

  it.each([
    ["an exchange after the placement", [exchanged({ id: "x", on: march })], "2026-03-10..2026-03-31"],
    ["a conversion after the placement", [converted({ id: "x", on: march })], "2026-03-10..2026-03-31"],
    [
      "a removal after the last thing that happened to the tube",
      [exchanged({ on: "2026-03-20" }), removed({ id: "x", on: march })],
      "2026-03-20..2026-03-31",
    ],
    [
      "a death after the last thing that happened to any tube",
      [placed({ tube: "tube-2", on: "2026-03-25" }), died({ id: "x", on: march })],
      "2026-03-25..2026-03-31",
    ],
    [
      "a decision not to replace after the loss",
      [fellOut({ on: "2026-03-20" }), notReplaced({ id: "x", on: march })],
      "2026-03-20..2026-03-31",
    ],
    [
      "a conversion after the last thing that happened to the old tube",
      [capped({ on: "2026-03-20" }), converted({ id: "x", on: march })],
      "2026-03-20..2026-03-31",
    ],
    [
      "what happens to the new tube after the conversion",
      [converted({ on: "2026-03-15" }), capped({ id: "x", tube: "tube-2", on: march })],
      "2026-03-15..2026-03-31",
    ],
    [
      "what happens to the last of a chain after the last conversion",
      [
        converted({ on: "2026-03-22", closes: "tube-2", opens: "tube-3" }),
        converted({ on: "2026-03-15" }),
        capped({ id: "x", tube: "tube-3", on: march }),
      ],
      "2026-03-22..2026-03-31",
    ],
    [
      "not by a call, which may follow the end",
      [called({ on: "2026-03-25" }), removed({ id: "x", on: march })],
      "2026-03-10..2026-03-31",
    ],
    [
      "not by what came later",
      [exchanged({ on: "2026-04-02" }), removed({ id: "x", on: march })],
      "2026-03-10..2026-03-31",
    ],
    [
      "not where nothing is left",
      [exchanged({ id: "x", on: "2026-02-01..2026-02-28" })],
      "2026-02-01..2026-02-28",
    ],
  ])("%s", (_name, entries, cut) => {
    expect(dayOf("x", open, ...entries)).toEqual(when(cut));
  });

  it.each([
    ["an exchange", [exchanged({ id: "x", on: "2026-03-01..2026-03-10" })], "2026-03-10"],
    ["a removal", [exchanged({ on: "2026-03-31" }), removed({ id: "x", on: march })], "2026-03-31"],
  ])("to one day where one is left: %s", (_name, entries, cut) => {
    expect(dayOf("x", open, ...entries)).toEqual(when(cut));
  });

  it("and stays a month where all of it is possible", () => {
    const first = placed({ on: "2026-03-01" });
    expect(dayOf("x", first, exchanged({ id: "x", on: march }))).toEqual(when(march));
  });
});

describe("an unknown date", () => {
  it("of a placement comes before everything", () => {
    const entries = [capped({ id: "c", on: "1990-01-01" }), takenOver({ id: "t", on: "?" })];
    expect(order(...entries)).toEqual(["t", "c"]);
  });

  it("of anything else lies before its recording, after what is dated until then", () => {
    const open = placed({ id: "p", on: "2026-08-01" });
    const undated = capped({ id: "c", on: "?", recordedOn: "2026-08-10" });
    expect(order(open, undated, checked({ id: "before", on: "2026-08-10" }))).toEqual(["p", "before", "c"]);
    expect(order(open, undated, uncapped({ id: "after", on: "2026-08-11" }))).toEqual(["p", "c", "after"]);
    expect(dayOf("c", open, undated)).toEqual(whenUnknown);
  });

  it("stays after the opening, even where that was dated later than the recording", () => {
    const open = placed({ id: "p", on: "2026-08-20" });
    expect(order(capped({ id: "c", on: "?", recordedOn: "2026-08-10" }), open)).toEqual(["p", "c"]);
  });
});
