import { expect, it } from "vitest";
import type { Known } from "#shared/words/on-record.ts";
import { beforeLines } from "./day-sheet.ts";

const known: Known = {
  conditions: {},
  clinical: {} as Known["clinical"],
  contact: { language: "", needsInterpreter: null },
};

it("what is open stands first, then what is on record, then of what nothing is: an unknown is said", () => {
  const lines = beforeLines({ open: ["signed order", "blood thinners"], known, prepared: [] });
  expect(lines).toEqual([
    "Open: signed order, blood thinners.",
    "Interpreter: nobody has asked whether one is needed.",
    "Nothing on record: allergies; blood thinners; isolation, last of the list.",
  ]);
});

it("who agreed the plan of the blood thinners stands beside what is on record", () => {
  const conditions: Known["conditions"] = {
    bloodThinners: { certainty: "confirmed", value: "one a day" },
  };
  const prepared = [
    { thing: "blood thinners", state: "settled", by: "Dr Physick", says: "goes on", eventId: "event-1" },
  ] as const;
  const lines = beforeLines({ open: [], known: { ...known, conditions }, prepared });
  expect(lines[0]).toBe("All is settled that the rows ask for.");
  expect(lines).toContain(
    "Blood thinners: on record: one a day; for this visit: settled by Dr Physick, goes on.",
  );
});

it("isolation stands last of what is on record, as such a visit does of its day", () => {
  const conditions: Known["conditions"] = {
    isolation: { certainty: "reported", value: "contact" },
    allergies: { certainty: "confirmed", value: "latex" },
  };
  expect(beforeLines({ open: [], known: { ...known, conditions }, prepared: [] })).toEqual([
    "All is settled that the rows ask for.",
    "Allergies: on record: latex.",
    "Interpreter: nobody has asked whether one is needed.",
    "Isolation, last of the list: on record: contact (reported).",
    "Nothing on record: blood thinners.",
  ]);
});

it("a table without a row says that it has none", () => {
  expect(beforeLines({ open: null, known, prepared: [] })[0]).toBe(
    "The table has no row of what is settled before this visit.",
  );
});
